/*
 * Whether a class's negatives say that its time should move. Looks that follow from the developing time are counted, each roll
 * once; rolls that were not developed as planned explain themselves and are left out. A proposal is made by published steps:
 * steadily too flat, add 10 to 15 %, too hard, take 10 to 15 % off (Kodak F-4016). It is a proposal, never a change.
 */

export const WEAK_LOOKS = ["thin", "flat"] as const;
export const STRONG_LOOKS = ["dense", "contrasty"] as const;

export interface LookedAt {
  /** Its look, by its code; empty: in order. */
  readonly look: string;
  readonly rating: number | null;
  /** The dose of development really given, thousandths of the plan's; null: not known. */
  readonly dosePerMille: number | null;
  /** Its developer was exhausted or out of date by its ledger when the film went in. */
  readonly isDeveloperWorn: boolean;
}

export interface Verdict {
  /** Looked at, and developed as planned. */
  readonly rolls: number;
  readonly weak: number;
  readonly strong: number;
  /** Of the weak (or strong) ones, those whose shadows (or lights) alone may be the camera's doing. */
  readonly maybeCamera: number;
  /** Left out: too cold, too warm, too short or too long explains them. */
  readonly explained: number;
  /** Left out as well: the ledger had their developer exhausted or out of date. */
  readonly worn: number;
  /** Chance of so one-sided a count, were both sides alike (sign test). */
  readonly chance: number;
  /** Per cent of the time to add, below 0 to take off; 0: nothing is proposed. */
  readonly percent: number;
}

/** A dose so far off the plan's explains a look by itself: half of the smallest published correction. */
const EXPLAINED_PER_MILLE = 50;
/** Fewer say nothing. House rule, no source. */
const LEAST_ROLLS = 4;
const CHANCE = 0.05;
/** Steps of Kodak F-4016; the larger where most rolls show it. */
const STEPS = { small: 10, large: 15 } as const;

export function weigh(all: readonly LookedAt[]): Verdict {
  const known = all.filter(({ look, rating }) => look !== "" || rating !== null);
  const fresh = known.filter(({ isDeveloperWorn }) => !isDeveloperWorn);
  const fair = fresh.filter(
    ({ dosePerMille }) => dosePerMille === null || Math.abs(dosePerMille - 1000) <= EXPLAINED_PER_MILLE,
  );
  const having = (looks: readonly string[]): number => fair.filter(({ look }) => looks.includes(look)).length;
  const [weak, strong] = [having(WEAK_LOOKS), having(STRONG_LOOKS)];
  const chance = signTest(Math.max(weak, strong), weak + strong);
  const isSure = Math.max(weak, strong) >= LEAST_ROLLS && chance <= CHANCE;
  const size = Math.max(weak, strong) * 2 > fair.length ? STEPS.large : STEPS.small;
  return {
    rolls: fair.length,
    weak,
    strong,
    maybeCamera: having([weak >= strong ? "thin" : "dense"]),
    explained: fresh.length - fair.length,
    worn: known.length - fresh.length,
    chance,
    percent: isSure ? (weak > strong ? size : -size) : 0,
  };
}

/** One-sided: as many of `count` or more on one side, each side as likely. */
export function signTest(most: number, count: number): number {
  let sum = 0;
  for (let k = most; k <= count; k += 1) {
    let ways = 1;
    for (let at = 1; at <= k; at += 1) ways *= (count - k + at) / at;
    sum += ways;
  }
  return Math.min(1, sum / 2 ** count);
}
