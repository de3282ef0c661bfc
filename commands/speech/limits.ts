import { z } from "zod";
import type { Limits } from "../../store/shapes/limits.ts";
import { inEach } from "./language.ts";
import { formatBothScales, formatMl, formatSeconds } from "./wording.ts";
import { de } from "./words/limits.de.ts";
import { en } from "./words/limits.en.ts";

/* A quantity outside of sense is refused with the range that makes sense. */

const words = inEach({ en, de });

const FORMATS = { tenthsC: formatBothScales, seconds: formatSeconds, ml: formatMl } as const;

/** The option, with its value held to `limits` (both ends belong to them). */
export function within<T extends z.ZodType<number>>(option: T, limits: Limits, unit: keyof typeof FORMATS) {
  return option.superRefine((value, context) => {
    if (value >= limits.least && value <= limits.most) return;
    context.addIssue({
      code: "custom",
      message: outsideWords(value, limits, FORMATS[unit]),
      params: { code: "ERR_OUTSIDE" },
    });
  });
}

export function outsideWords(
  value: number,
  { least, most }: Limits,
  format: (value: number) => string,
): string {
  return words().outside(format(value), format(least), format(most));
}
