import type { Batch } from "../../store/shapes/batch.ts";
import { labelOf, wornWords } from "./batch-words.ts";
import type { Place } from "../../store/shapes/ledger.ts";
import { chooseBatch } from "./choose.ts";
import { changeBatch } from "./rebatch.ts";
import { stateOf, type BatchState } from "./state.ts";
import { movedUpWords, redirectedWords } from "./warn-words.ts";
import { owe } from "../owe.ts";
import { parseNumber } from "../speech/wording.ts";
import { candidatesFor, pendingNeeds } from "./candidates.ts";
import type { Stores } from "../../store/index.ts";
import { runNameOf } from "../../store/shapes/run.ts";

/**
 * A batch has gone bad: runs under way that were to use it get another, and their owners are told at once, silence or
 * not, since their film is in a tank. Who was allowed it by name keeps it.
 */
export function redirectRuns(stores: Stores, batch: Batch, state: BatchState, now: number): void {
  const why = (): string => wornWords(batch, state);
  turnRuns(stores, { batch, why, isGone: state.standing === "discarded", place: null }, now);
}

/** The second of two fixing baths has moved up: runs that were to use it as second get the fresh one. */
export function redirectSecond(stores: Stores, batch: Batch, now: number): void {
  turnRuns(stores, { batch, why: movedUpWords, isGone: true, place: 2 }, now);
}

interface Turn {
  readonly batch: Batch;
  /** In its reader's language. */
  why(): string;
  /** Nobody may have it any more, allowed by name or not. */
  readonly isGone: boolean;
  /** Only where it was to be this of two baths; null: wherever. */
  readonly place: Place | null;
}

function turnRuns(stores: Stores, { batch, why, isGone, place }: Turn, now: number): void {
  const habits = stores.classes.get(batch.classId)?.habits;
  if (!habits) return;
  for (const run of stores.runs.open(batch.classId)) {
    for (const { index, label, need } of pendingNeeds(stores, run)) {
      if (label !== labelOf(batch) || (place !== null && need.place !== place)) continue;
      const candidates = candidatesFor(stores, batch.classId, run.personId, now, run.id);
      const isAllowed = candidates.some((each) => each.batch.id === batch.id && each.isAllowed);
      if (isAllowed && !isGone) continue;
      const ready = candidates.filter((each) => each.state.standing === "ready");
      const chosen = chooseBatch(need, ready, null, true);
      const choice = chosen.ok ? chosen.value : null;
      const changed = choice ? changeBatch(run.plan, index, choice, need.isTabular, habits) : undefined;
      if (changed) stores.runs.save({ ...run, plan: changed });
      const to = changed && choice ? labelOf(choice.batch) : null;
      owe(
        stores,
        {
          of: { kind: "redirect", run: run.id, step: index, batch: batch.id, to },
          classId: run.classId,
          personId: run.personId,
          run: runNameOf(run),
          say: () => ({ text: redirectedWords(batch.kind, label, why(), to) }),
        },
        now,
      );
      break;
    }
  }
}

/** Something is ready again: runs that wait for a bottle gone bad may now have another. */
export function rescueRuns(stores: Stores, classId: number, now: number): void {
  const wanted = new Set(
    stores.runs.open(classId).flatMap((run) => pendingNeeds(stores, run).map(({ label }) => label)),
  );
  for (const label of wanted) {
    const batch = stores.batches.find(classId, parseNumber("batch", label) ?? 0);
    const state = batch && stateOf(batch, stores.batches.lines(batch.id), now);
    if (state && state.standing !== "ready") redirectRuns(stores, batch, state, now);
  }
}
