import type { TakenWords } from "./taken.en.ts";

export const de: TakenWords = {
  taken: (typed, value) => `„${typed}“ habe ich als ${value} verstanden.`,
};
