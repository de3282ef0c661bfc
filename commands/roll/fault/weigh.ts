import { CAUSES, type Cause } from "./cause-table.ts";
import { FACTORS, type Finding } from "./evidence.ts";
import type { Answers } from "../looks.ts";

/* Causes in order of how well they explain what was seen, weighed by what the roll's own record says. */

export type Likelihood = "likely" | "possible" | "unlikely";

export interface Weighed {
  readonly cause: Cause;
  readonly likelihood: Likelihood;
  /** What the record has for it and against it. */
  readonly speaksFor: readonly Finding[];
  readonly speaksAgainst: readonly Finding[];
}

/** At this share of all weight a cause is likely, below the other it is unlikely. Our judgement, no source. */
const LIKELY_SHARE = 0.45;
const UNLIKELY_SHARE = 0.1;
/** Less than this is not worth a line. */
const LEAST_SHARE = 0.02;

export function weighCauses(answers: Answers, findings: readonly Finding[]): Weighed[] {
  const scored = CAUSES.map((cause) => ({ cause, score: scoreOf(cause, answers, findings) })).filter(
    ({ score }) => score > 0,
  );
  const all = scored.reduce((sum, { score }) => sum + score, 0);
  return scored
    .sort((a, b) => b.score - a.score)
    .filter(({ score }, at) => at === 0 || score / all >= LEAST_SHARE)
    .map(({ cause, score }) => ({
      cause,
      likelihood: likelihoodOf(score / all),
      speaksFor: findings.filter(({ kind }) => factorOf(cause, kind) > 1),
      speaksAgainst: findings.filter(({ kind }) => factorOf(cause, kind) < 1),
    }));
}

function scoreOf(cause: Cause, { look, edge, margin, place }: Answers, findings: readonly Finding[]): number {
  const answered =
    ((edge && cause.edge?.[edge]) ?? 1) *
    ((margin && cause.margin?.[margin]) ?? 1) *
    ((place && cause.place?.[place]) ?? 1);
  const recorded = findings.reduce((product, { kind }) => product * factorOf(cause, kind), 1);
  return (cause.looks[look] ?? 0) * answered * recorded;
}

function factorOf({ code }: Cause, kind: Finding["kind"]): number {
  const factors: Readonly<Record<string, number>> = FACTORS[kind];
  return factors[code] ?? 1;
}

function likelihoodOf(share: number): Likelihood {
  if (share >= LIKELY_SHARE) return "likely";
  return share < UNLIKELY_SHARE ? "unlikely" : "possible";
}
