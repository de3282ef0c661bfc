import { keepRun } from "../../commands/run/keep.ts";
import { PRIORITY_OF_CUE } from "../../commands/owe.ts";
import { cueMessage } from "../../commands/run/cue-words.ts";
import { cuesOf } from "../../commands/run/cues.ts";
import { isMissed, LATE_FROM_MS, settle, type Said } from "../../commands/run/settle.ts";
import { speaking } from "../../commands/speech/language.ts";
import type { CueState } from "../../store/cues.ts";
import type { DueRun } from "../../store/due.ts";
import type { Cue, DueCue } from "../../store/shapes/cue.ts";
import { makeMessageKey } from "../../store/shapes/message-key.ts";
import { lastingMs, runNameOf, type Run, stepAt } from "../../store/shapes/run.ts";
import { tellLostRun } from "../../commands/class/mend/notice.ts";
import type { Stores } from "../../store/index.ts";
import type { NewCall, Say } from "../deliver/at-once.ts";
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

/**
 * Settles the cues to be decided by `now`, or, in chats with a lead, due by `ahead`, of `most` runs: reading a run, advancing
 * it, keeping it and owing what it says are one transaction, the caller's, with no await in it. A missed, late or doubled
 * call changes nothing. Adds the classes whose runs spoke to `spoken`. With `say`, all is said by it until `isEnough`, and one
 * that fails fails all; without, each run stands by itself and owes what it says. Returns what is to be done after the commit;
 * undefined where nothing was due.
 */
export function settleSome(
  { stores, log }: TickDeps,
  now: number,
  ahead: number,
  spoken: Set<number>,
  most = BATCH,
  say?: Say,
  isEnough: () => boolean = () => false,
): (() => void)[] | undefined {
  const due = [...stores.cues.due(now, most, ahead)];
  if (due.length === 0) return undefined;
  const settling = { stores, now, ahead, spoken };
  if (say) return settleAll({ ...settling, say }, due, isEnough);
  const settleOne = (each: Due): (() => void)[] =>
    settleAll({ ...settling, say: stores.outbox.owe }, [each], isEnough);
  return eachApart(stores, due, settleOne, ([id], error) => {
    stores.cues.putOff(id, now + PUT_OFF_MS);
    log.error({ run: id, err: error }, "a run could not be settled");
    tellLost(stores, log, id, now);
    return [];
  }).flat();
}

type Due = readonly [runId: number, DueRun];
type Marks = Record<CueState, number[]>;

interface Settling {
  readonly stores: Stores;
  readonly now: number;
  readonly ahead: number;
  readonly spoken: Set<number>;
  readonly say: Say;
}

/** What became of their cues is written at the end, of all at once. One run at least, however little time there is. */
function settleAll(settling: Settling, due: readonly Due[], isEnough: () => boolean): (() => void)[] {
  const marks: Marks = { said: [], merged: [] };
  const after: (() => void)[] = [];
  for (const each of due) {
    after.push(...settleRun(settling, each, marks));
    if (isEnough()) break;
  }
  mark(settling, marks);
  return after;
}

function mark({ stores: { cues }, now }: Settling, { said, merged }: Marks): void {
  cues.settle(said, "said", now);
  cues.settle(merged, "merged", now);
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

function settleRun(settling: Settling, [id, found]: Due, marks: Marks): (() => void)[] {
  const { stores, now, spoken, say } = settling;
  const read = found.run();
  const schedule = cuesOf(read);
  const due = withoutEnd(allDue(settling, id, found, schedule), now);
  // Who moves on is read anew: others have moved on before it.
  const run = due.some(({ kind }) => kind === "next-bath") ? stores.runs.get(id) : read;
  if (!run) return [];
  const settled = settle(run, due, now);
  const said = settled.said.map(({ cue }) => cue.id);
  const merged = due.map((cue) => cue.id).filter((each) => !said.includes(each));
  if (settled.moved) {
    // Before its new schedule drops what is pending.
    mark(settling, { said, merged });
    // What its step still had to say was missed, however little: nobody has done it unasked.
    keepRun(stores, settled.run, now, 0);
  } else {
    marks.said.push(...said);
    marks.merged.push(...merged);
  }
  spoken.add(run.classId);
  return settled.said.flatMap((each) => say(callOf(run, each, schedule, found, now)) ?? []);
}

/** Of few runs more is due than was found: what is late stands for what came before it, so that a run is taken with all of it. */
function allDue(
  { stores, now, ahead }: Settling,
  id: number,
  { cues, leadMs }: DueRun,
  schedule: readonly Cue[],
): readonly DueCue[] {
  const last = cues.at(-1);
  const until = Math.max(now, ahead) + leadMs;
  const isMore = schedule.some(
    ({ key, dueAtMs }) => last && dueAtMs >= last.dueAtMs && dueAtMs <= until && key !== last.key,
  );
  return isMore ? stores.cues.dueOf(id, now, ahead) : cues;
}

/** The end of a step stands for all before it; while it is still ahead it must not, and is settled after them. */
function withoutEnd(due: readonly DueCue[], now: number): readonly DueCue[] {
  const others = due.filter(({ kind, dueAtMs }) => kind !== "next-bath" || dueAtMs <= now);
  return others.length > 0 ? others : due;
}

function callOf(
  run: Run,
  said: Said,
  schedule: readonly Cue[],
  { language, reach, place }: DueRun,
  now: number,
): NewCall {
  const { cue } = said;
  const { id: runId, classId, personId } = run;
  const { text, actions } = speaking(language, () => cueMessage(run, said, now));
  return {
    key: makeMessageKey({ kind: "cue", run: runId, cue: cue.key }),
    classId,
    personId,
    runId,
    priority: PRIORITY_OF_CUE[cue.kind],
    dueAt: Math.max(cue.dueAtMs, cue.madeAtMs),
    decidedAt: now,
    usefulUntil: usefulUntil(run, schedule, said),
    missed: said.merged.filter((each) => isMissed(each, now)).length,
    reach,
    place,
    body: { text, language, run: runNameOf(run), actions: [...actions], mentions: [] },
  };
}

/**
 * A call to agitate helps nobody once the next call is due, nor where there is no time left to do it before; pour-out and the
 * next bath always help.
 */
function usefulUntil(run: Run, schedule: readonly Cue[], { cue }: Said): number | null {
  if (cue.kind === "pour-out" || cue.kind === "next-bath" || cue.kind === "nudge") return null;
  const following = schedule.find(({ dueAtMs }) => dueAtMs > cue.dueAtMs);
  if (!following) return null;
  const agitation = stepAt(run, cue.step)?.agitation;
  const lasts = {
    "agitate-first": agitation?.initialSeconds,
    agitate: agitation?.burstSeconds,
    "get-ready": 0,
  };
  const lastsMs = lastingMs(run, lasts[cue.kind] ?? 0);
  return Math.min(
    following.dueAtMs,
    Math.max(cue.dueAtMs + Math.max(lastsMs, LATE_FROM_MS), following.dueAtMs - lastsMs),
  );
}
