/* What is seen on a print in white light. The words are in look-words.ts. */

export const PRINT_LOOKS = [
  "mottled",
  "pale",
  "dark",
  "flat",
  "grey",
  "hard",
  "greenish",
  "veiled",
  "dull-highlights",
  "yellow",
  "white-patches",
  "brown-patch",
  "round-marks",
  "bleached",
  "stained",
  "yellow-later",
  "light-specks",
  "dark-specks",
  "rings",
  "unsharp",
  "reversed",
] as const;
export type PrintLook = (typeof PRINT_LOOKS)[number];
