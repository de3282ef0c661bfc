import type { PrintLook } from "../looks.ts";
import { type Cause, CAUSES } from "./cause-table.ts";
import { FACTORS, type Finding } from "./evidence.ts";

/* Causes in order of how well they explain what was seen, weighed by what the print's own record says. */

export type Likelihood = "likely" | "possible" | "unlikely";

export interface Weighed {
  readonly cause: Cause;
  readonly likelihood: Likelihood;
  readonly speaksFor: readonly Finding[];
  readonly speaksAgainst: readonly Finding[];
}

/** As with rolls: shares of all weight from which on a cause is likely, below which unlikely, and not worth a line. */
const LIKELY_SHARE = 0.45;
const UNLIKELY_SHARE = 0.1;
const LEAST_SHARE = 0.02;

export function weighCauses(look: PrintLook, findings: readonly Finding[]): Weighed[] {
  const scored = CAUSES.map((cause) => ({
    cause,
    score: findings.reduce((product, { kind }) => product * factorOf(cause, kind), cause.looks[look] ?? 0),
  })).filter(({ score }) => score > 0);
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

const factorOf = ({ code }: Cause, kind: Finding["kind"]): number => FACTORS[kind][code] ?? 1;

function likelihoodOf(share: number): Likelihood {
  if (share >= LIKELY_SHARE) return "likely";
  return share < UNLIKELY_SHARE ? "unlikely" : "possible";
}
