import type { Batch } from "../../store/shapes/batch.ts";
import type { LedgerLine } from "../../store/shapes/ledger.ts";
import { MARKS, newsOf, reachedMarks, type Reached } from "./marks.ts";
import { afterSilence } from "./silence.ts";
import { stateOf } from "./state.ts";
import { classWarning, teacherWarning, type Warning } from "./warn-words.ts";
import { owe, oweTeachers } from "../owe.ts";
import type { NewLedgerLine } from "../../store/batches.ts";
import { placeIn } from "./pairs.ts";
import { candidatesFor } from "./candidates.ts";
import type { Stores } from "../../store/index.ts";
import { redirectRuns, rescueRuns } from "./redirect.ts";

/**
 * Writes a line into a batch's ledger together with the warnings it causes and the runs it turns to another bottle;
 * inside `atomically` only. undefined: a line of this key was there, and nothing is changed.
 */
export function enterLine(
  stores: Stores,
  batch: Batch,
  line: NewLedgerLine,
  now: number,
): LedgerLine | undefined {
  const kept = stores.batches.append(line);
  if (!kept) return undefined;
  warnOf(stores, batch, now);
  if (line.body.kind !== "used") rescueRuns(stores, batch.classId, now);
  return kept;
}

/** Owes every warning this batch has come to and not given; each once. Returns how many. */
export function warnOf(stores: Stores, batch: Batch, now: number): number {
  const lines = stores.batches.lines(batch.id);
  const state = stateOf(batch, lines, now);
  if (state.standing !== "ready") redirectRuns(stores, batch, state, now);
  const { say, remember } = newsOf(reachedMarks(batch, lines, now), ({ mark, arm }) =>
    stores.batches.isMarked(batch.id, mark, arm),
  );
  for (const { mark, arm } of remember) stores.batches.mark(batch.id, mark, arm, now);
  for (const reached of say)
    oweWarning(
      stores,
      { batch, state, instead: insteadOf(stores, batch, now), isFirstOfTwo: isFirst(stores, batch), now },
      reached,
    );
  return say.length;
}

function isFirst(stores: Stores, { classId, number }: Batch): boolean {
  return placeIn(stores.classes.get(classId)?.habits.fixPairs ?? [], number) === 1;
}

function insteadOf(stores: Stores, batch: Batch, now: number): Batch | null {
  const others = candidatesFor(stores, batch.classId, null, now).filter(
    (each) =>
      each.batch.id !== batch.id &&
      each.place === null &&
      each.batch.kind === batch.kind &&
      each.state.standing === "ready" &&
      each.state.leftRolls !== 0 &&
      (batch.kind !== "developer" || each.batch.product.toLowerCase() === batch.product.toLowerCase()),
  );
  return others[0]?.batch ?? null;
}

function oweWarning(stores: Stores, warning: Warning, { mark, arm }: Reached): void {
  const { batch, now } = warning;
  const found = stores.classes.get(batch.classId);
  if (!found) return;
  const dueAt = afterSilence(now, found.zone, found.habits);
  const of = (teacher: number | null) =>
    ({ kind: "warning", batch: batch.id, mark: MARKS.indexOf(mark), arm, teacher }) as const;
  const { classId } = batch;
  owe(stores, { of: of(null), classId, personId: null, dueAt, say: () => classWarning(mark, warning) }, now);
  oweTeachers(stores, { of, classId, dueAt, say: () => teacherWarning(mark, warning) }, now);
}
