import type { WordingWords } from "./wording.en.ts";

export const de: WordingWords = {
  decimalMark: ",",
  stock: "Stammlösung",
  and: "und",
  or: "oder",
  quoted: (text) => `„${text}“`,
  // Nobody who reads German here reads Fahrenheit.
  bothScales: (celsius) => celsius,
  locale: "de-DE",
  ahead: (duration) => `in ${duration}`,
  day: "T",
  ago: (duration) => `vor ${duration}`,
};
