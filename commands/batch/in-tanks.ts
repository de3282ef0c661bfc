import type { Batch } from "../../store/shapes/batch.ts";
import { isFilmRun, isTrial, stepAt } from "../../store/shapes/run.ts";
import type { Stores } from "../../store/index.ts";
import { labelOf } from "./batch-words.ts";

/** How many films stand in a bath from this bottle that was to be poured back into it. */
export function filmsInTanks(stores: Stores, batch: Batch): number {
  const isInIt = (step: ReturnType<typeof stepAt>): boolean =>
    step?.batch === labelOf(batch) && step.isPouredBack === true;
  return stores.runs
    .open(batch.classId)
    .filter(isFilmRun)
    .filter((run) => !isTrial(run))
    .filter((run) => run.marks.some(({ step, endedAtMs }) => endedAtMs === null && isInIt(stepAt(run, step))))
    .reduce((films, { plan }) => films + plan.rolls, 0);
}
