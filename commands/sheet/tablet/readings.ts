import { fail, ok, type Result } from "../../result.ts";
import { pointDecimal } from "../../speech/decimal.ts";
import { parseDuration } from "../../speech/measure.ts";

/*
 * Readings of a step tablet as people type or paste them: a developing time, then the densities from the least exposed step on,
 * one line (or one part between semicolons) for each time: `8:00: 0.02 0.11 0.21`. Without a densitometer a step is matched
 * under the enlarger: `13/10` is a step that needs 13 s where clear film needs 10, log10(1.3) = 0.11 (Z2T, grade C).
 */

export interface Strip {
  /** Developing time. */
  readonly seconds: number;
  /** From the least exposed step to the most. */
  readonly densities: readonly number[];
}

export type ReadingFault =
  | { readonly code: "ERR_NO_STRIP_TIME"; readonly typed: string }
  | { readonly code: "ERR_NO_DENSITY"; readonly typed: string }
  | { readonly code: "ERR_FEW_STEPS"; readonly seconds: number; readonly count: number };

const LEAST_STEPS = 6;
const MOST_DENSITY = 4.5;

export function readStrips(text: string): Result<Strip[], ReadingFault> {
  const strips: Strip[] = [];
  for (const part of text.split(/[;\n]/).map((each) => each.trim())) {
    if (part === "") continue;
    const read = readStrip(part);
    if (!read.ok) return read;
    strips.push(read.value);
  }
  if (strips.length === 0) return fail({ code: "ERR_NO_STRIP_TIME", typed: text.slice(0, 40) });
  return ok(strips.toSorted((a, b) => a.seconds - b.seconds));
}

function readStrip(part: string): Result<Strip, ReadingFault> {
  const match = /^(\d{1,3}:\d\d|\d{1,4} ?(?:s|min))\s*[:=]?\s+(.*)$/is.exec(part);
  const time = match ? parseDuration(match[1] ?? "") : undefined;
  if (!match || !time?.ok) return fail({ code: "ERR_NO_STRIP_TIME", typed: part.slice(0, 40) });
  const densities: number[] = [];
  for (const word of (match[2] ?? "").split(/[\s|]+/).filter(Boolean)) {
    const density = readDensity(word);
    if (density === undefined) return fail({ code: "ERR_NO_DENSITY", typed: word.slice(0, 20) });
    densities.push(density);
  }
  if (densities.length < LEAST_STEPS)
    return fail({ code: "ERR_FEW_STEPS", seconds: time.value, count: densities.length });
  const isFalling = (densities[0] ?? 0) > (densities.at(-1) ?? 0);
  return ok({ seconds: time.value, densities: isFalling ? densities.toReversed() : densities });
}

/** `0.62`, `0,62`, `.62`, or `13/10`: seconds under the enlarger for the step and for clear film. */
function readDensity(word: string): number | undefined {
  const matched = /^(\d{1,4}(?:[.,]\d)?)\/(\d{1,4}(?:[.,]\d)?)$/.exec(word);
  const density = matched
    ? Math.log10(Number(pointDecimal(matched[1] ?? "")) / Number(pointDecimal(matched[2] ?? "")))
    : /^\d?[.,]\d{1,3}$|^\d$/.test(word)
      ? Number(word.replace(",", "."))
      : Number.NaN;
  return density >= 0 && density <= MOST_DENSITY ? density : undefined;
}
