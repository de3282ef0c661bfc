import type { Basis } from "../../store/shapes/sheet.ts";

/* How long a film is fixed. */

/** Twice the clearing time: US Navy NAVEDTRA 14209. */
const CLEARING_TIMES = 2;
/** Thick or tabular-grain emulsions: at least three times (practitioners' pages). */
const CLEARING_TIMES_TABULAR = 3;
/** Exhausted at this many times the fresh clearing time: US Navy NAVEDTRA 14209. */
export const EXHAUSTED_TIMES = 2;
/** A rapid fixer clears film in 1 to 3 min (a practitioner's page); longer, and it is worn, cold or too weak. */
export const USUAL_CLEARING_SECONDS = 180;
/** Below 68 °F (20 °C) double the time for every 18 °F (10 °C): US Army TM 11-2323. */
const COLD_FROM_TENTHS_C = 200;
/** Over about ten minutes a rapid fixer may begin to bleach (one worker's page). */
export const LONG_FIX_SECONDS = 600;

export interface FixTime {
  readonly seconds: number;
  readonly basis: readonly Basis[];
  readonly isLong: boolean;
}

/**
 * Whole seconds, never under the house minimum. `clearingSeconds` is the batch's clearing time as tested near 20 °C;
 * null: not tested, the house minimum stands alone.
 */
export function fixTime(
  clearingSeconds: number | null,
  tabularGrain: boolean,
  houseMinSeconds: number,
  tenthsC: number,
): FixTime {
  const times = tabularGrain ? CLEARING_TIMES_TABULAR : CLEARING_TIMES;
  const cleared = clearingSeconds === null ? 0 : clearingSeconds * times;
  const cold = coldFactor(tenthsC);
  const seconds = Math.ceil(Math.max(cleared, houseMinSeconds) * cold);
  const basis: Basis[] =
    cleared > houseMinSeconds
      ? [
          {
            kind: "rule",
            rule: `${times === 2 ? "twice" : "three times"} the clearing time`,
            source: times === 2 ? "US Navy NAVEDTRA 14209" : "practitioners' pages, for tabular-grain film",
          },
        ]
      : [{ kind: "house", rule: "the house minimum of fixing" }];
  if (cold > 1) basis.push({ kind: "rule", rule: "longer in a cold fixer", source: "US Army TM 11-2323" });
  return { seconds, basis, isLong: seconds > LONG_FIX_SECONDS };
}

/** Two baths share the fixing: one of 5 to 10 min becomes two of 3 to 5 (a practitioner's page, for fibre prints). */
export const TWO_BATH_BASIS: Basis = {
  kind: "rule",
  rule: "two fixing baths, half the time in each",
  source: "a practitioner's page: 3 to 5 min in each in place of 5 to 10",
};

/** Whole seconds in each of so many baths, never less in all than in one. */
export function inEachBath(seconds: number, baths: number): number {
  return Math.ceil(seconds / baths);
}

/** 1 from 20 °C up; 2 at 10 °C. */
export function coldFactor(tenthsC: number): number {
  return 2 ** (Math.max(0, COLD_FROM_TENTHS_C - tenthsC) / 100);
}
