import { fail, ok, type Result } from "../result.ts";
import { type Curve, makeCurve } from "./curve.ts";
import type { Basis, Sheet } from "../../store/shapes/sheet.ts";
import { spreadBetween } from "./spread.ts";
import { MOST_STOPS_DOWN, MOST_STOPS_UP, PUSH_SOURCE, pushRange } from "./push.ts";

/* The developing time a sheet gives, what it rests on, and where the sheet says nothing. */

/** Without a stated range: common practice, no source. Colder is slow and risks incomplete work (US Army SS0509-8). */
export const HOUSE_MIN_TENTHS_C = 160;
/** Without a stated range: film "with care" up to 80 °F (US Army SS0509-8, 1988). */
export const HOUSE_MAX_TENTHS_C = 267;

/** Tables are printed to a quarter or half minute (Kodak F-32): a row alone may be off by half of that before it is carried on. */
const PRINT_ROUNDING_SECONDS = 15;

export type TimeFault =
  | { readonly code: "ERR_TOO_COLD"; readonly tenthsC: number; readonly nearestTenthsC: number }
  | { readonly code: "ERR_TOO_HOT"; readonly tenthsC: number; readonly nearestTenthsC: number }
  | { readonly code: "ERR_PULLED_TOO_FAR"; readonly exposureIndex: number; readonly nearest: number }
  | { readonly code: "ERR_PUSHED_TOO_FAR"; readonly exposureIndex: number; readonly nearest: number };

export interface SheetTime {
  /** Not rounded. */
  readonly seconds: number;
  /** Between these the estimate lies; equal to `seconds` at a row of the sheet. */
  readonly lowSeconds: number;
  readonly highSeconds: number;
  readonly basis: readonly Basis[];
  /** Seconds at any temperature (°C) for this exposure index, never refusing: for the drift. */
  secondsAt(celsius: number): number;
}

export interface Range {
  readonly min: number;
  readonly max: number;
}

/** The temperatures the sheet allows, tenths °C. */
export function temperatureRange(sheet: Sheet): Range {
  const tenths = sheet.points.map(({ tenthsC }) => tenthsC);
  return {
    min: sheet.minTenthsC ?? Math.min(HOUSE_MIN_TENTHS_C, ...tenths),
    max: sheet.maxTenthsC ?? Math.max(HOUSE_MAX_TENTHS_C, ...tenths),
  };
}

/** The exposure indexes the sheet has points for, or the rule of thumb reaches. */
export function exposureRange(sheet: Sheet): Range {
  const known = sheet.points.map(({ exposureIndex }) => exposureIndex);
  return {
    min: Math.min(Math.ceil(sheet.boxSpeed / 2 ** MOST_STOPS_DOWN), ...known),
    max: Math.max(Math.min(102_400, sheet.boxSpeed * 2 ** MOST_STOPS_UP), ...known),
  };
}

export function timeFor(
  sheet: Sheet,
  tenthsC: number,
  exposureIndex: number,
  curve: Curve = makeCurve(sheet),
): Result<SheetTime, TimeFault> {
  const warmth = temperatureRange(sheet);
  if (tenthsC < warmth.min) return fail({ code: "ERR_TOO_COLD", tenthsC, nearestTenthsC: warmth.min });
  if (tenthsC > warmth.max) return fail({ code: "ERR_TOO_HOT", tenthsC, nearestTenthsC: warmth.max });
  const speeds = exposureRange(sheet);
  if (exposureIndex < speeds.min)
    return fail({ code: "ERR_PULLED_TOO_FAR", exposureIndex, nearest: speeds.min });
  if (exposureIndex > speeds.max)
    return fail({ code: "ERR_PUSHED_TOO_FAR", exposureIndex, nearest: speeds.max });
  return ok(readTime(sheet, tenthsC, exposureIndex, curve));
}

function readTime(sheet: Sheet, tenthsC: number, exposureIndex: number, curve: Curve): SheetTime {
  const known = sheet.points.map((point) => point.exposureIndex);
  const anchor = Math.min(Math.max(exposureIndex, Math.min(...known)), Math.max(...known));
  const celsius = tenthsC / 10;
  const seconds = curve.secondsAt(celsius, anchor);
  const ends = [curve.lowFactor, curve.highFactor].map((factor) => curve.secondsAt(celsius, anchor, factor));
  const isBeyond = ends.some((end) => end !== seconds);
  const rounding = isBeyond ? PRINT_ROUNDING_SECONDS : 0;
  const between = spreadBetween(sheet, tenthsC, anchor, seconds);
  const shortest = Math.min(between.low, ...ends);
  const low = shortest - Math.min(rounding, shortest / 2);
  const high = Math.max(between.high, ...ends) + rounding;
  const basis = [basisAt(sheet, tenthsC, anchor, { low, high, factor: curve.factorPer10C })];
  if (anchor === exposureIndex) {
    const secondsAt = (at: number): number => curve.secondsAt(at, anchor);
    return { seconds, lowSeconds: low, highSeconds: high, basis, secondsAt };
  }
  const stopsAbove = (index: number): number => Math.log2(index / sheet.boxSpeed);
  const push = pushRange(stopsAbove(anchor), stopsAbove(exposureIndex));
  const [lowSeconds, highSeconds] = [low * push.lowFactor, high * push.highFactor];
  basis.push({
    kind: "rule-of-thumb",
    lowSeconds: Math.round(lowSeconds),
    highSeconds: Math.round(highSeconds),
    source: PUSH_SOURCE,
  });
  return {
    seconds: seconds * push.factor,
    lowSeconds,
    highSeconds,
    basis,
    secondsAt: (at) => curve.secondsAt(at, anchor) * push.factor,
  };
}

function basisAt(
  sheet: Sheet,
  tenthsC: number,
  exposureIndex: number,
  spread: { low: number; high: number; factor: number },
): Basis {
  const exact = sheet.points.find(
    (point) => point.tenthsC === tenthsC && point.exposureIndex === exposureIndex,
  );
  if (exact) return { kind: "point", source: exact.source };
  const rows = rowsAround(sheet, exposureIndex);
  const used = sheet.points.filter((point) => rows.includes(point.exposureIndex));
  const isBeyond = rows.some((row) => {
    const tenths = used.filter((point) => point.exposureIndex === row).map((point) => point.tenthsC);
    return tenthsC < Math.min(...tenths) || tenthsC > Math.max(...tenths);
  });
  const sources = [...new Set(used.map(({ source }) => source))];
  if (!isBeyond) return { kind: "between", sources };
  return {
    kind: sheet.points.length === 1 ? "one-point" : "beyond",
    source: sources.join("; "),
    factorPer10C: Math.round(spread.factor * 100) / 100,
    lowSeconds: Math.round(spread.low),
    highSeconds: Math.round(spread.high),
  };
}

/** The exposure indexes of the sheet that a time at this one comes from: itself, or its two neighbours. */
function rowsAround(sheet: Sheet, exposureIndex: number): number[] {
  const known = sheet.points.map((point) => point.exposureIndex);
  const below = Math.max(...known.filter((index) => index <= exposureIndex));
  const above = Math.min(...known.filter((index) => index >= exposureIndex));
  return below === above ? [below] : [below, above];
}
