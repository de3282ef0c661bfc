import type { Basis } from "../../store/shapes/sheet.ts";

/* How long a film is washed, and what that leaves in it. */

export type WashMethod = "running" | "fill-dump";

/** In direct running water half of the hypo is gone each minute: US Navy NAVEDTRA 14209. */
const HALF_LIFE_SECONDS = 60;
/** Without a wash aid handbooks ask for 20 min (NAVEDTRA 14209) to 30 min (US Army SS0509-8; Johnson 1955). */
export const HANDBOOK_SECONDS = 1200;
export const HANDBOOK_MOST_SECONDS = 1800;
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

/** Told once, where the class sets it; a plan only names it beside its number. */
const SHORT_RULE = "the house minimum of washing; handbooks ask for 20 to 30 min of running water";

export interface WashTime {
  readonly seconds: number;
  /** Fills of fresh water; null: water runs through. */
  readonly changes: number | null;
  readonly basis: readonly Basis[];
  /** Handbooks ask for more than this. Never where it is longer than the longest of them. */
  readonly isShort: boolean;
  /** Share of the hypo left by the model, at this water's temperature; diffusion out of the film is slower. */
  readonly hypoLeft: number;
}

/** `houseMinSeconds`: what the class has set for running water; null: it has set nothing, and the handbooks' least holds. */

export function washTime(
  method: WashMethod,
  hasAid: boolean,
  houseMinSeconds: number | null,
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
  const handbook = hasAid ? AFTER_AID_SECONDS : HANDBOOK_SECONDS;
  const least =
    houseMinSeconds === null || (hasAid && houseMinSeconds < handbook) ? handbook : houseMinSeconds;
  const seconds = Math.ceil(least * cold);
  const isShort = !hasAid && seconds < Math.min(HANDBOOK_SECONDS * cold, HANDBOOK_MOST_SECONDS);
  const basis: Basis =
    least === houseMinSeconds
      ? { kind: "house", rule: isShort ? SHORT_RULE : "the house minimum of washing" }
      : hasAid
        ? { kind: "rule", rule: "5 min after a wash aid", source: "US Army SS0509-8" }
        : {
            kind: "rule",
            rule: "20 min of running water, a full change every 3 min",
            source: "US Navy NAVEDTRA 14209; US Army SS0509-8 has 30 min",
          };
  return {
    seconds,
    changes: null,
    basis: [basis, ...coldBasis],
    isShort,
    hypoLeft: hypoLeftAfter(seconds, tenthsC),
  };
}

/** Share left after running water of this temperature for so long: in cold water each half takes longer. */
export function hypoLeftAfter(seconds: number, tenthsC: number): number {
  return 0.5 ** (seconds / (HALF_LIFE_SECONDS * coldWashFactor(tenthsC)));
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
