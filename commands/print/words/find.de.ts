import type { FindOptionWords } from "./find.en.ts";

export const de: FindOptionWords = {
  noSuchRoll: (typed) => `${typed} kann ich nicht als Film lesen. Schreib ihn so: L12.`,
};
