import { mean, sampleVariance } from "simple-statistics";
import { SQ_IN_PER_ROLL } from "./area.ts";
import type { BatchState } from "./state.ts";

/* How long a batch lasts at the class's pace. */

const WEEK_MS = 7 * 24 * 3_600_000;
const MOST_WEEKS = 8;
const LEAST_WEEKS = 2;
/** Half-width of an 80 % range, in standard deviations of the normal law. */
const Z_80 = 1.2816;

export interface Use {
  readonly atMs: number;
  readonly areaSqIn: number;
}

export interface UseRate {
  readonly rollsPerWeek: number;
  /** 80 % range of it. */
  readonly low: number;
  readonly high: number;
  /** Weeks it rests on. */
  readonly weeks: number;
}

/** Rolls a week over the last eight weeks at most; null where less than two weeks are known. */
export function paceOf(uses: readonly Use[], nowMs: number): UseRate | null {
  const firstMs = Math.min(...uses.map(({ atMs }) => atMs));
  const weeks = Math.min(MOST_WEEKS, Math.floor((nowMs - firstMs) / WEEK_MS));
  if (!Number.isFinite(firstMs) || weeks < LEAST_WEEKS) return null;
  const byWeek = Array.from({ length: weeks }, (_, index) => {
    const [from, to] = [nowMs - (index + 1) * WEEK_MS, nowMs - index * WEEK_MS];
    const area = uses
      .filter(({ atMs }) => atMs > from && atMs <= to)
      .reduce((sum, use) => sum + use.areaSqIn, 0);
    return area / SQ_IN_PER_ROLL;
  });
  const rollsPerWeek = mean(byWeek);
  if (rollsPerWeek === 0) return null;
  // Rolls come in lumps, class by class: counts scatter more than single chance events would.
  const lumps = Math.max(1, sampleVariance(byWeek) / rollsPerWeek);
  const events = (rollsPerWeek * weeks) / lumps;
  return {
    rollsPerWeek,
    low: (lumps * chiSquare(2 * events, -Z_80)) / 2 / weeks,
    high: (lumps * chiSquare(2 * events + 2, Z_80)) / 2 / weeks,
    weeks,
  };
}

/** A quantile of the chi-square law, by Wilson and Hilferty's cube (1931). */
export function chiSquare(degrees: number, z: number): number {
  const share = 2 / (9 * degrees);
  return degrees * Math.max(0, 1 - share + z * Math.sqrt(share)) ** 3;
}

export interface Forecast {
  /** The first of being used up and out of date; null: neither is in sight. */
  readonly endsAtMs: number | null;
  readonly ends: "used-up" | "out-of-date" | null;
  readonly usedUpAtMs: number | null;
  /** 80 % range of it. */
  readonly earliestMs: number | null;
  readonly latestMs: number | null;
}

/** As if this batch alone served the class from now on. */
export function forecastOf(state: BatchState, pace: UseRate | null, nowMs: number): Forecast {
  const { leftRolls: rolls, expiresAtMs } = state;
  const after = (perWeek: number): number => Math.round(nowMs + ((rolls ?? 0) / perWeek) * WEEK_MS);
  const known = rolls !== null && pace !== null;
  const usedUpAtMs = known ? after(pace.rollsPerWeek) : null;
  const isDateFirst = expiresAtMs !== null && (usedUpAtMs === null || expiresAtMs < usedUpAtMs);
  const endsAtMs = isDateFirst ? expiresAtMs : usedUpAtMs;
  return {
    endsAtMs,
    ends: endsAtMs === null ? null : isDateFirst ? "out-of-date" : "used-up",
    usedUpAtMs,
    earliestMs: known ? after(pace.high) : null,
    latestMs: known && pace.low > 0 ? after(pace.low) : null,
  };
}
