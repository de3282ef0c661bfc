import { nameOfChat, type LostWords } from "./lost.en.ts";

export const de: LostWords = {
  lost: (chat, why) =>
    `**${nameOfChat(chat)} ist abgeschaltet: Dort bekommt niemand mehr ein Signal.** Der Raum läuft weiter. Grund: „${why}“`,
};
