import type { ReadyWords } from "./ready.en.ts";

export const de: ReadyWords = {
  lampTest: (lamp) => `Dunkelkammerlicht ${lamp}`,
  strip: (bars) => `Teststreifen, ${bars} Felder`,
  prints: (count) => (count === 1 ? "1 Abzug" : `${count} Abzüge`),
};
