import type { StrengthWords } from "./strength.en.ts";

export const de: StrengthWords = {
  noStrength: (typed) =>
    `${typed} geht mit Wasser allein nicht: Zuerst steht, was du hast, dann der kleinere Anteil, den du willst, wie 28% auf 2%.`,
};
