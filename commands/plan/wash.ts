import type { Basis } from "../../store/shapes/plan.ts";

/* How long a film is washed, and what that leaves in it. */

export type WashMethod = "running" | "fill-dump";

/** In direct running water half of the hypo is gone each minute: US Navy NAVEDTRA 14209. */
const HALF_LIFE_SECONDS = 60;
/** Without a wash aid handbooks ask for 20 min (NAVEDTRA 14209) to 30 min (US Army SS0509-8). */
export const HANDBOOK_SECONDS = 1200;
/** After a wash aid: 5 min (US Army SS0509-8). */
const AFTER_AID_SECONDS = 300;
/** Rinse 30 s, wash aid 2 min (US Army SS0509-8). */
export const BEFORE_AID_SECONDS = 30;
export const AID_SECONDS = 120;
/** Fill and empty: 8 to 10 refills within 30 min, so 3 min each (Johnson, The Complete Photobook, 1955). */
const CHANGE_SECONDS = 180;
const CHANGES = 10;
/** After a wash aid fewer and shorter: the same share of a wash as 5 min is of 20. Derived, no source. */
const CHANGES_AFTER_AID = 5;
const CHANGE_SECONDS_AFTER_AID = 60;
/** Liquid that stays in tank, reel and film when it is emptied. Common practice, no source. */
const CARRY_OVER_ML = 20;

export interface WashTime {
  readonly seconds: number;
  /** Fills of fresh water; null: water runs through. */
  readonly changes: number | null;
  readonly basis: readonly Basis[];
  /** Handbooks ask for more than this. */
  readonly isShort: boolean;
  /** Share of the hypo left by the model; diffusion out of the film is slower. */
  readonly hypoLeft: number;
}

export function washTime(
  method: WashMethod,
  hasAid: boolean,
  houseMinSeconds: number,
  tenthsC: number,
  volumeMl: number,
): WashTime {
  const cold = coldWashFactor(tenthsC);
  const coldBasis: Basis[] =
    cold > 1 ? [{ kind: "rule", rule: "longer in cold water", source: "US Army TM 11-2323" }] : [];
  if (method === "fill-dump") {
    const changes = hasAid ? CHANGES_AFTER_AID : CHANGES;
    const each = Math.ceil((hasAid ? CHANGE_SECONDS_AFTER_AID : CHANGE_SECONDS) * cold);
    const source = hasAid
      ? "derived from US Army SS0509-8, no source of its own"
      : "Johnson, The Complete Photobook, 1955";
    return {
      seconds: changes * each,
      changes,
      basis: [{ kind: "rule", rule: `fill and empty ${changes} times`, source }, ...coldBasis],
      isShort: false,
      hypoLeft: hypoLeftByChanges(changes, volumeMl),
    };
  }
  const least = hasAid ? Math.max(houseMinSeconds, AFTER_AID_SECONDS) : houseMinSeconds;
  const seconds = Math.ceil(least * cold);
  const basis: Basis =
    least > houseMinSeconds
      ? { kind: "rule", rule: "5 min after a wash aid", source: "US Army SS0509-8" }
      : { kind: "house", rule: "the house minimum of washing" };
  return {
    seconds,
    changes: null,
    basis: [basis, ...coldBasis],
    isShort: !hasAid && seconds < HANDBOOK_SECONDS * cold,
    hypoLeft: hypoLeftAfter(seconds),
  };
}

/** Share left after running water for so long. */
export function hypoLeftAfter(seconds: number): number {
  return 0.5 ** (seconds / HALF_LIFE_SECONDS);
}

/** Share left after so many changes: each leaves v/(V+v). Ideal mixing, ignores slow diffusion. */
export function hypoLeftByChanges(
  changes: number,
  volumeMl: number,
  carryOverMl: number = CARRY_OVER_ML,
): number {
  return (carryOverMl / (volumeMl + carryOverMl)) ** changes;
}

/** Twice the washing time at 50 °F (10 °C), four times at 35 °F (1.7 °C), said of prints: US Army TM 11-2323. */
export function coldWashFactor(tenthsC: number): number {
  if (tenthsC >= 200) return 1;
  if (tenthsC >= 100) return 2 ** ((200 - tenthsC) / 100);
  return 2 * 2 ** ((100 - tenthsC) / 83);
}

/** Baths that differ by more than 5 °F wrinkle the gelatin: US Army SS0509-8. */
export const RETICULATION_TENTHS = 28;
/** The looser limit makers give, from memory: all baths within 5 °C. */
export const RETICULATION_LOOSE_TENTHS = 50;

/** The largest step between two baths that follow each other, tenths °C. */
export function largestStepTenths(bathsTenthsC: readonly number[]): number {
  return bathsTenthsC.reduce(
    (most, tenthsC, at) => Math.max(most, Math.abs(tenthsC - (bathsTenthsC[at - 1] ?? tenthsC))),
    0,
  );
}
