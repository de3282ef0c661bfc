import { isFilmRun, isTrial, pourOutAtMs, type Run, stepAt } from "../../store/shapes/run.ts";
import type { TrayPlan } from "../../store/shapes/tray.ts";
import { makeNumber } from "../speech/wording.ts";

/* Prints beside a film in a tank: one pair of hands. */

/** To lay out the print and put it in. Our estimate, no source. */
const GETTING_READY_SECONDS = 60;

/** Until the last fixing bath is over a print can't be left alone. */
export function secondsToFixed({ steps }: Pick<TrayPlan, "steps">): number {
  const last = steps.findLastIndex(({ kind }) => kind === "fix");
  return steps.slice(0, last + 1).reduce((sum, { seconds }) => sum + (seconds ?? 0), 0);
}

/** `R7`: the person's own film whose bath ends before prints begun now would be fixed; null: none. */
export function filmCallingBefore(own: readonly Run[], plan: TrayPlan, nowMs: number): string | null {
  const untilMs = nowMs + (GETTING_READY_SECONDS + secondsToFixed(plan)) * 1000;
  const film = own.filter(isFilmRun).find((run) => {
    if (isTrial(run)) return false;
    const { phase } = run;
    if (phase.kind === "waiting") return phase.step > 0 && run.plan.steps[phase.step]?.kind !== "cut";
    if (phase.kind !== "running") return false;
    const step = stepAt(run, phase.step);
    const isUrgent = step !== undefined && ["develop", "stop", "rinse", "fix"].includes(step.kind);
    return isUrgent && pourOutAtMs(run, step, phase.endsAtMs) < untilMs;
  });
  return film ? makeNumber("run", film.number) : null;
}
