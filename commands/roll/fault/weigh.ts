import { CAUSES, type Cause } from "./cause-table.ts";
import { FACTORS, type Finding } from "./evidence.ts";
import type { Answers } from "../looks.ts";

/* Causes in order of how well they explain what was seen, weighed by what the record says: of a roll, and of a print. */

export type Likelihood = "likely" | "possible" | "unlikely";

export interface Weighed<C = Cause, F = Finding> {
  readonly cause: C;
  readonly likelihood: Likelihood;
  /** What the record has for it and against it. */
  readonly speaksFor: readonly F[];
  readonly speaksAgainst: readonly F[];
}

/** At this share of all weight a cause is likely, below the other it is unlikely. Our judgement, no source. */
const LIKELY_SHARE = 0.45;
const UNLIKELY_SHARE = 0.1;
/** Less than this is not worth a line. */
const LEAST_SHARE = 0.02;

/**
 * Each cause by how well it explains what is seen (`explains`; 0: not at all), times the `factor` of each finding for it:
 * above 1 it speaks for the cause, below 1 against it. The best first.
 */
export function weigh<C, F>(
  causes: readonly C[],
  findings: readonly F[],
  explains: (cause: C) => number,
  factor: (cause: C, finding: F) => number,
): Weighed<C, F>[] {
  const scored = causes
    .map((cause) => ({
      cause,
      score: findings.reduce((product, finding) => product * factor(cause, finding), explains(cause)),
    }))
    .filter(({ score }) => score > 0);
  const all = scored.reduce((sum, { score }) => sum + score, 0);
  return scored
    .sort((a, b) => b.score - a.score)
    .filter(({ score }, at) => at === 0 || score / all >= LEAST_SHARE)
    .map(({ cause, score }) => ({
      cause,
      likelihood: likelihoodOf(score / all),
      speaksFor: findings.filter((finding) => factor(cause, finding) > 1),
      speaksAgainst: findings.filter((finding) => factor(cause, finding) < 1),
    }));
}

function likelihoodOf(share: number): Likelihood {
  if (share >= LIKELY_SHARE) return "likely";
  return share < UNLIKELY_SHARE ? "unlikely" : "possible";
}

export function weighCauses(answers: Answers, findings: readonly Finding[]): Weighed[] {
  return weigh(CAUSES, findings, (cause) => answered(cause, answers), factorOf);
}

function answered(cause: Cause, { look, edge, margin, place }: Answers): number {
  return (
    (cause.looks[look] ?? 0) *
    ((edge && cause.edge?.[edge]) ?? 1) *
    ((margin && cause.margin?.[margin]) ?? 1) *
    ((place && cause.place?.[place]) ?? 1)
  );
}

function factorOf({ code }: Cause, { kind }: Finding): number {
  const factors: Readonly<Record<string, number>> = FACTORS[kind];
  return factors[code] ?? 1;
}
