import type { Limits } from "../../store/shapes/limits.ts";
import { inEach } from "./language.ts";
import { formatBothScales, formatMl, formatSeconds } from "./wording.ts";
import { de } from "./words/limits.de.ts";
import { en } from "./words/limits.en.ts";

/* A quantity outside of sense is refused with the range that makes sense. */

const words = inEach({ en, de });

export const FORMATS = { tenthsC: formatBothScales, seconds: formatSeconds, ml: formatMl } as const;

export function outsideWords(
  value: number,
  { least, most }: Limits,
  format: (value: number) => string,
): string {
  return words().outside(format(value), format(least), format(most));
}

/** A bare number is ml, and some think in ounces: what they would write. */
export const ouncesWords = (written: string): string => words().ounces(written);
