import type { ReadyWords } from "./ready.en.ts";

export const de: ReadyWords = {
  lampTest: (lamp) => `Dunkelkammerlicht ${lamp}`,
  prints: (count) => (count === 1 ? "1 Abzug" : `${count} Abzüge`),
};
