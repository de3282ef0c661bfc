import type { RecipeWords } from "./recipe.en.ts";

export const de: RecipeWords = {
  noPrintYet: "Von dir steht noch kein Abzug im Buch der Abzüge. `/print log seconds:12,5` trägt einen ein.",
  unknownPrint: (typed) => `Einen Abzug ${typed} gibt es nicht. Such ihn mit \`/print find\`.`,
  notYourPrint: "Zu diesem Abzug schreiben nur, wer ihn gemacht hat, eine Hilfskraft oder die Lehrkraft.",
  head: (print, person, on) => `**${print}** ${person}, ${on}`,
  frame: (frame) => `Bild ${frame}`,
  headAt: (height) => `Kopf auf ${height}`,
  size: (size) => `auf ${size}`,
  developed: (how) => `entwickelt: ${how}`,
  rated: (rating) => `Wertung: ${rating} von 5.`,
  fault: (fault, cause) => `Fehler: ${fault}.${cause === undefined ? "" : ` Ursache: ${cause}.`}`,
  note: (note) => `Notiz: ${note}`,
  again: "Noch einmal machen",
  looksWrong: "Etwas sieht falsch aus",
};
