import type { CauseListWords } from "./cause-list.en.ts";

export const de: CauseListWords = {
  unknownToo: "Notieren, Ursache unbekannt",
  likelihoods: { likely: "wahrscheinlich", possible: "möglich", unlikely: "weniger wahrscheinlich" },
  speaksFor: (findings) => `Dafür: ${findings}.`,
  speaksAgainst: (findings) => `Dagegen: ${findings}.`,
  now: (what) => `Jetzt: ${what}`,
  next: (what) => `Nächstes Mal: ${what}`,
  source: (source) => `_Quelle: ${source}_`,
};
