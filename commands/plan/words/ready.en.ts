import { countOf } from "../../speech/wording.ts";

export const en = {
  /** What goes through the trays together, where a film's plan has its film. */
  lampTest: (lamp: string) => `Safelight ${lamp}`,
  strip: (bars: number) => `Test strip, ${countOf(bars, "bar")}`,
  prints: (count: number) => countOf(count, "print"),
};
export type ReadyWords = typeof en;
