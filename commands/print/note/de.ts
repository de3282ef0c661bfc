import type { NoteWords } from "./en.ts";

export const de: NoteWords = {
  noted: (print) => `Bei ${print} notiert. Mit diesen Wörtern findest du den Abzug jetzt.`,
  rated: (print, rating) => `${print} hat die Wertung ${rating} von 5.`,
};
