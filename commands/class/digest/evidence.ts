import { gammaln } from "simple-statistics";

/*
 * Whether rolls through one batch show a fault more often than chance explains: Fisher's exact test, one-sided, against
 * the class's other rolls of the same weeks.
 */

/**
 * At most one false alarm in a hundred looks, all batches and faults looked at together (Bonferroni); the five kinds of
 * batch are looked at apart.
 */
const ALARM = 0.01 / 5;
const LEAST_FAULTY = 3;
/** With fewer rolls to compare with, nothing can be told. */
const LEAST_OTHERS = 5;

export interface JudgedRoll {
  readonly labels: readonly string[];
  /** As said by whoever looked at it; empty: none. */
  readonly fault: string;
}

export interface Evidence {
  readonly label: string;
  readonly fault: string;
  readonly faulty: number;
  readonly rolls: number;
  readonly otherFaulty: number;
  readonly otherRolls: number;
  /** Chance of as many or more, were the batch like the others. */
  readonly chance: number;
}

/** Every batch and fault where chance is no explanation, the clearest first. */
export function evidenceOf(rolls: readonly JudgedRoll[], labels: readonly string[]): Evidence[] {
  const faults = [...new Set(rolls.map(({ fault }) => fault).filter((fault) => fault !== ""))];
  const looks = labels.length * faults.length;
  return labels
    .flatMap((label) => faults.map((fault) => judge(rolls, label, fault)))
    .filter(
      ({ faulty, otherRolls, chance }) =>
        faulty >= LEAST_FAULTY && otherRolls >= LEAST_OTHERS && chance * looks < ALARM,
    )
    .sort((a, b) => a.chance - b.chance);
}

function judge(rolls: readonly JudgedRoll[], label: string, fault: string): Evidence {
  const inside = rolls.filter(({ labels }) => labels.includes(label));
  const faulty = inside.filter((roll) => roll.fault === fault).length;
  const allFaulty = rolls.filter((roll) => roll.fault === fault).length;
  return {
    label,
    fault,
    faulty,
    rolls: inside.length,
    otherFaulty: allFaulty - faulty,
    otherRolls: rolls.length - inside.length,
    chance: chanceOf(faulty, inside.length, allFaulty, rolls.length),
  };
}

/** P(at least `faulty` of `drawn` are faulty) when `drawn` are taken blindly from `all`, of which `allFaulty` are. */
export function chanceOf(faulty: number, drawn: number, allFaulty: number, all: number): number {
  let chance = 0;
  for (let count = faulty; count <= Math.min(drawn, allFaulty); count += 1)
    chance += Math.exp(
      choose(allFaulty, count) + choose(all - allFaulty, drawn - count) - choose(all, drawn),
    );
  return Math.min(1, chance);
}

/** ln of n over k; minus infinity where there is no way. */
function choose(n: number, k: number): number {
  if (k < 0 || k > n) return -Infinity;
  return gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1);
}
