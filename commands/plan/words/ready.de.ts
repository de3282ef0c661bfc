import type { ReadyWords } from "./ready.en.ts";

export const de: ReadyWords = {
  prints: (count) => (count === 1 ? "1 Abzug" : `${count} Abzüge`),
};
