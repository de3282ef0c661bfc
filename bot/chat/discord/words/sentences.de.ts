import type { SentenceWords } from "./sentences.en.ts";

export const de: SentenceWords = {
  noClass:
    "Ich weiß noch nicht, zu welchem Kurs du gehörst. Gib einen Befehl auf dem Server deines Kurses, dann schreib mir hier.",
  whichClass: "Du bist in mehreren Kursen. Um welchen geht es?",
  ofClass: (name) => `_${name}_`,
  broken: "Es ist ein Fehler aufgetreten. Sieh nach, wo dein Lauf steht, bevor du es noch einmal versuchst.",
};
