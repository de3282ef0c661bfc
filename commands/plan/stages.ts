import type { Step } from "../../store/shapes/plan.ts";
import type { Run } from "../../store/shapes/run.ts";

/* A plan or a run as the darkroom sees it: so long at the sink, so long in the wash, so long drying. */

/** Emptying, rinsing out, filling: added to each bath, since a plan counts only what acts. Our estimate, no source. */
const HANDLING_SECONDS = 20;
/** To cut and sleeve one film. Our estimate, no source. */
const CUT_SECONDS = 180;

export interface Stages {
  /** Pour-in to the fixer poured back: here a film can't wait. */
  readonly sinkSeconds: number;
  /** To the film hung up: here it can. */
  readonly washSeconds: number;
  readonly drySeconds: number;
  readonly cutSeconds: number;
}

/** What has stages: a film's plan, or one for prints, which are not cut. */
export interface Staged {
  readonly steps: readonly Step[];
  readonly rolls?: number;
}

export function stagesOf(plan: Staged): Stages {
  return sumStages(plan, (step) => step.seconds ?? 0);
}

/** What is left of a run at `nowMs`; a step that waits for its bath is still whole. */
export function stagesLeft({ phase, plan }: Run, nowMs: number): Stages {
  if (phase.kind !== "waiting" && phase.kind !== "running") return sumStages(plan, () => null);
  return sumStages(plan, (step, at) => {
    if (at < phase.step) return null;
    if (at > phase.step || phase.kind === "waiting") return step.seconds ?? 0;
    return Math.max(0, Math.ceil((phase.endsAtMs - nowMs) / 1000));
  });
}

/** `leftOf` says how many seconds a step still takes; null where it is behind. */
function sumStages({ steps, rolls = 0 }: Staged, leftOf: (step: Step, at: number) => number | null): Stages {
  const sums = { sinkSeconds: 0, washSeconds: 0, drySeconds: 0, cutSeconds: 0 };
  const lastFix = steps.findLastIndex(({ kind }) => kind === "fix");
  for (const [at, step] of steps.entries()) {
    const left = leftOf(step, at);
    if (left === null) continue;
    if (step.kind === "dry") sums.drySeconds += left;
    else if (step.kind === "cut") sums.cutSeconds += CUT_SECONDS * rolls;
    else if (at <= lastFix) sums.sinkSeconds += left + HANDLING_SECONDS;
    else sums.washSeconds += left + HANDLING_SECONDS;
  }
  return sums;
}
