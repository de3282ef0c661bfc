import { keepRun } from "../../commands/run/keep.ts";
import { oweCue } from "../../commands/owe.ts";
import { cueMessage } from "../../commands/run/cue-words.ts";
import { cuesOf } from "../../commands/run/cues.ts";
import { isMissed, settle, type Said } from "../../commands/run/settle.ts";
import type { DueCue } from "../../store/shapes/cue.ts";
import { runNameOf, type Run } from "../../store/shapes/run.ts";
import { tellLostRun } from "../../commands/class/mend/notice.ts";
import type { Stores } from "../../store/index.ts";
import type { Log } from "../process/log.ts";
import { eachApart } from "../../store/each-apart.ts";
import { isStorageFault } from "../../store/open.ts";

export interface TickDeps {
  readonly stores: Stores;
  readonly log: Log;
}

/** So many runs are settled in one transaction: enough to amortise its flush, few enough to let the loop breathe. */
const BATCH = 100;
/** A run that can't be read is looked at again after this long. */
const PUT_OFF_MS = 60_000;

/** Settles every cue to be decided by `now`; returns the classes whose runs spoke. */
export function settleDue(deps: TickDeps, now: number, ahead = now): Set<number> {
  const spoken = new Set<number>();
  while (deps.stores.atomically(() => settleSome(deps, now, ahead, spoken)));
  return spoken;
}

/**
 * Settles the cues to be decided by `now`, or, in chats with a lead, due by `ahead`, of `most` runs: reading a run, advancing
 * it, keeping it and owing what it says are one transaction, the caller's, with no await in it. A missed, late or doubled
 * call changes nothing. Adds the classes whose runs spoke to `spoken`. False where nothing was due.
 */
export function settleSome(
  { stores, log }: TickDeps,
  now: number,
  ahead: number,
  spoken: Set<number>,
  most = BATCH,
): boolean {
  const due = [...stores.cues.due(now, most, ahead)];
  eachApart(
    stores,
    due,
    ([id, cues]) => settleRun(stores, id, cues, now, spoken),
    ([id], error) => {
      stores.cues.putOff(id, now + PUT_OFF_MS);
      log.error({ run: id, err: error }, "a run could not be settled");
      tellLost(stores, log, id, now);
    },
  );
  return due.length > 0;
}

/** Its owner has a film in a tank, and must not wait for calls that never come. */
function tellLost(stores: Stores, log: Log, id: number, now: number): void {
  try {
    stores.atomically(() => tellLostRun(stores, id, now));
  } catch (error) {
    if (isStorageFault(error)) throw error;
    log.error({ run: id, err: error }, "the owner of a run could not be told");
  }
}

function settleRun(
  stores: Stores,
  id: number,
  cues: readonly DueCue[],
  now: number,
  touched: Set<number>,
): void {
  const run = stores.runs.get(id);
  if (!run) return;
  const due = withoutEnd(cues, now);
  const settled = settle(run, due, now);
  const said = settled.said.map(({ cue }) => cue.id);
  stores.cues.settle(said, "said", now);
  stores.cues.settle(
    due.map((cue) => cue.id).filter((each) => !said.includes(each)),
    "merged",
    now,
  );
  if (settled.moved) {
    // What its step still had to say was missed, however little: nobody has done it unasked.
    stores.outbox.withdraw(id, now, 0);
    keepRun(stores, settled.run, now);
  }
  for (const each of settled.said) say(stores, run, each, now);
  touched.add(run.classId);
}

/** The end of a step stands for all before it; while it is still ahead it must not, and is settled after them. */
function withoutEnd(due: readonly DueCue[], now: number): readonly DueCue[] {
  const others = due.filter(({ kind, dueAtMs }) => kind !== "next-bath" || dueAtMs <= now);
  return others.length > 0 ? others : due;
}

function say(stores: Stores, run: Run, said: Said, now: number): void {
  const { cue } = said;
  oweCue(
    stores,
    {
      of: { kind: "cue", run: run.id, cue: cue.key },
      cueKind: cue.kind,
      classId: run.classId,
      personId: run.personId,
      run: runNameOf(run),
      dueAt: Math.max(cue.dueAtMs, cue.madeAtMs),
      usefulUntil: usefulUntil(run, said),
      missed: said.merged.filter((each) => isMissed(each, now)).length,
      say: () => cueMessage(run, said, now),
    },
    now,
  );
}

/** A call to agitate helps nobody once the next call is due; pour-out and the next bath always help. */
function usefulUntil(run: Run, { cue }: Said): number | null {
  if (cue.kind === "pour-out" || cue.kind === "next-bath" || cue.kind === "nudge") return null;
  const following = cuesOf(run).find(({ dueAtMs }) => dueAtMs > cue.dueAtMs);
  return following?.dueAtMs ?? null;
}
