import type { Batch } from "../../store/shapes/batch.ts";
import { type FilmRun, isFilmRun, isTrial, type Run, secondsIn } from "../../store/shapes/run.ts";
import type { Habits } from "../../store/shapes/school.ts";
import type { Stores } from "../../store/index.ts";
import { labelOf } from "../batch/batch-words.ts";
import { hasTabularFilm } from "../batch/candidates.ts";
import { changeBatch } from "../batch/rebatch.ts";
import type { UnderWay } from "../batch/under-way.ts";
import { stateOf } from "../batch/state.ts";
import { tellOfFixing } from "../batch/tell-fixing.ts";
import { keepRun } from "./keep.ts";
import { fixAgainWords, stayLongerWords } from "./longer-words.ts";
import { advance } from "./machine.ts";

/** A shorter lack is how people are: they press a moment after they pour. */
const WORTH_TELLING_SECONDS = 5;

/**
 * A fixer was found to clear more slowly than it was thought to: films under way that come into it are fixed as long as that
 * needs, one that is in it stays, and whose film has left it is told to fix it again. `line`: of the ledger, that says so.
 * Inside `atomically`.
 */
export function fixLonger(stores: Stores, batch: Batch, line: number, now: number): UnderWay {
  const habits = stores.classes.get(batch.classId)?.habits;
  const { clearing } = stateOf(batch, stores.batches.lines(batch.id), now);
  const found = { longer: 0, again: 0 };
  if (!habits || !clearing) return found;
  const tested = { batch, clearingSeconds: Math.ceil(clearing.fromSeconds), filmsDone: 0 };
  for (const run of stores.runs.open(batch.classId)) {
    if (!isFilmRun(run) || isTrial(run)) continue;
    const plan = planWith(stores, run, tested, habits);
    const short = shortIn(run, plan);
    if (short !== undefined) {
      found.again += 1;
      tellOfFixing(stores, run, line, () => fixAgainWords(labelOf(batch), short), now);
    }
    const isLonger = run.plan.steps.some(
      ({ seconds }, at) => !isOut(run, at) && seconds !== plan.steps[at]?.seconds,
    );
    const result = advance(run, { kind: "longer", plan, atMs: now });
    if (!isLonger || !result.ok) continue;
    found.longer += 1;
    const changed = result.value;
    const { phase } = changed;
    if (changed.schedule === run.schedule || phase.kind !== "running") {
      stores.runs.save(changed);
      continue;
    }
    keepRun(stores, changed, now);
    const seconds = secondsIn(changed, phase.endsAtMs - phase.startedAtMs);
    tellOfFixing(stores, changed, line, () => stayLongerWords(labelOf(batch), seconds, phase.endsAtMs), now);
  }
  return found;
}

/** Whether the next bath is in after this step's. */
const isOut = (run: Run, step: number): boolean =>
  run.marks.some((mark) => mark.step === step && mark.endedAtMs !== null);

type Tested = Parameters<typeof changeBatch>[2];

/** Its fixing baths from this bottle, as long as that one needs. */
function planWith(stores: Stores, run: FilmRun, tested: Tested, habits: Habits): FilmRun["plan"] {
  const isTabular = hasTabularFilm(stores, run.classId, run.plan);
  return run.plan.steps.reduce(
    (plan, step, at) =>
      step.kind === "fix" && step.batch === labelOf(tested.batch)
        ? (changeBatch(plan, at, tested, isTabular, habits) ?? plan)
        : plan,
    run.plan,
  );
}

/** How long it should have been in the fixer that it has left too soon. */
function shortIn(run: FilmRun, plan: FilmRun["plan"]): number | undefined {
  for (const { step, startedAtMs, endedAtMs } of run.marks) {
    const needed = plan.steps[step]?.seconds ?? 0;
    if (endedAtMs === null || needed === run.plan.steps[step]?.seconds) continue;
    if (secondsIn(run, endedAtMs - startedAtMs) < needed - WORTH_TELLING_SECONDS) return needed;
  }
  return undefined;
}
