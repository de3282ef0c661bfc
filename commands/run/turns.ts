import {
  isFilmRun,
  isTankless,
  isTrayRun,
  isTrial,
  type Run,
  runNameOf,
  type TrayRun,
  waitsToBegin,
} from "../../store/shapes/run.ts";
import { makeMessageKey } from "../../store/shapes/message-key.ts";
import type { SchoolClass } from "../../store/shapes/school.ts";
import type { Stores } from "../../store/index.ts";
import { owe } from "../owe.ts";
import { holderBefore } from "../tank/holder.ts";
import { atLine, firstStart, givesWayAtMs, hasGivenWay, heldStaysOf, tooSmallFor } from "../tray/places.ts";
import { turnWords } from "./turn-words.ts";

/*
 * Whose turn it is, with a tank, at the sink and at each line of trays. Whoever finds no place when they want to begin waits for one and is
 * called when it is there, in the order in which they came. All of it inside `atomically`, with the change that makes the place.
 */

type Queued = NonNullable<Run["queued"]>;

const keyOf = (run: Run, { turn }: Queued): string => makeMessageKey({ kind: "turn", run: run.id, turn });

/** The run without its place in the queue, once it has begun or is over; a call that is still owed is taken back. */
export function leaveQueue(stores: Stores, run: Run, now: number): Run {
  const { queued, ...rest } = run;
  if (queued === undefined || waitsToBegin(run)) return run;
  stores.outbox.withdrawKey(keyOf(run, queued), now);
  return rest;
}

/** After `changed` has come to wait, has moved on or is over: who waits at the same place is told of it when it is their turn. */
export function callNext(stores: Stores, changed: Run, now: number): void {
  if (isTrial(changed) || !(isFilmRun(changed) || isTrayRun(changed))) return;
  callWaiting(stores, changed.classId, now, (run) => isAtSamePlace(run, changed));
}

/** The same after a class's places have changed: for those of `isMeant`, all if left out. */
export function callWaiting(
  stores: Stores,
  classId: number,
  now: number,
  isMeant: (run: Run) => boolean = (run) => !isTrial(run),
): void {
  const waiting = stores.runs.toBegin(classId).filter(isMeant);
  const school = waiting.length > 0 ? stores.classes.get(classId) : undefined;
  if (!school) return;
  const open = stores.runs.open(classId);
  const lines = new Set(waiting.filter(isTrayRun).map(({ plan }) => plan.line));
  const moments: Moments = new Map([
    ...(waiting.some(isFilmRun) ? momentsAtSink(open, school, now) : []),
    ...[...lines].flatMap((line) => [...momentsAtTrays(open, school, line, now)]),
  ]);
  for (const run of waiting) {
    const atMs = moments.get(run.id);
    if (atMs === undefined) continue;
    const next = nextQueued(run.queued, atMs, now);
    const isForTank = isTankless(run) || holderBefore(open, run) !== undefined;
    if (next !== run.queued) requeue(stores, run, next && isForTank ? { ...next, forTank: true } : next, now);
  }
}

function isAtSamePlace(run: Run, other: Run): boolean {
  if (isTrial(run)) return false;
  if (isTrayRun(run)) return isTrayRun(other) && run.plan.line === other.plan.line;
  return isFilmRun(run) && isFilmRun(other);
}

/**
 * What a waiting run's place in the queue becomes; `atMs` is when it may begin, null: not known. Whoever was called and finds
 * the place gone again waits anew, and is called anew.
 */
export function nextQueued(
  queued: Queued | undefined,
  atMs: number | null,
  nowMs: number,
): Queued | undefined {
  const hasPlace = atMs !== null && atMs <= nowMs;
  const isCalled = queued !== undefined && queued.dueAtMs !== null && queued.dueAtMs <= nowMs;
  if (hasPlace && (queued === undefined || isCalled)) return queued;
  const dueAtMs = hasPlace ? nowMs : atMs;
  if (queued?.dueAtMs === dueAtMs) return queued;
  const isCallKept = queued === undefined || queued.dueAtMs === null;
  return { turn: (queued?.turn ?? 1) + (isCallKept ? 0 : 1), dueAtMs };
}

function requeue(stores: Stores, run: Run, queued: Queued | undefined, now: number): void {
  if (queued === undefined) return;
  if (run.queued !== undefined) stores.outbox.withdrawKey(keyOf(run, run.queued), now);
  const kept = { ...run, queued };
  stores.runs.save(kept);
  if (queued.dueAtMs === null) return;
  owe(
    stores,
    {
      of: { kind: "turn", run: run.id, turn: queued.turn },
      classId: run.classId,
      personId: run.personId,
      run: runNameOf(run),
      dueAt: queued.dueAtMs,
      say: () => turnWords(kept),
    },
    now,
  );
}

type Moments = ReadonlyMap<number, number | null>;

/**
 * A film's tank stands at the sink until its fixer is poured back, and is free for the next film once this one hangs: only
 * somebody's word tells when that is.
 */
function momentsAtSink(open: readonly Run[], { habits }: SchoolClass, nowMs: number): Moments {
  const films = open.filter((run) => isFilmRun(run) && !isTrial(run));
  const free = habits.sinks - films.filter(isAtSink).length;
  const moments = new Map<number, number | null>();
  let ahead = 0;
  const givingWay: number[] = [];
  for (const run of films.filter(waitsToBegin)) {
    if (holderBefore(films, run)) {
      moments.set(run.id, null);
      continue;
    }
    // Into a tank that has become free a film is loaded first, wherever it will stand then.
    const hasPlace = ahead < free || isTankless(run);
    // Each who has a turn and does not come leaves a place to one more.
    const leftAt = givingWay.toSorted((a, b) => a - b)[ahead - free] ?? null;
    moments.set(run.id, hasPlace ? nowMs : leftAt);
    if (hasGivenWay(run, nowMs)) continue;
    if (hasPlace) givingWay.push(givesWayAtMs(run, nowMs));
    ahead += 1;
  }
  return moments;
}

function isAtSink(run: Run): boolean {
  const { phase, plan } = run;
  if (waitsToBegin(run) || (phase.kind !== "waiting" && phase.kind !== "running")) return false;
  // Until the next bath is in, the one before is still in the tank.
  const bath = phase.kind === "waiting" ? phase.step - 1 : phase.step;
  return bath <= plan.steps.findLastIndex(({ kind }) => kind === "fix");
}

/**
 * Only for the first who waits can it be said ahead when there is room: when the others begin is up to those before them. Whoever
 * was called and does not come gives way.
 */
function momentsAtTrays(
  open: readonly Run[],
  { habits }: SchoolClass,
  number: number,
  nowMs: number,
): Moments {
  const moments = new Map<number, number | null>();
  const line = habits.trayLines.find((each) => each.number === number);
  if (!line) return moments;
  const { inTrays, waiting } = atLine(open.filter(isTrayRun), number);
  const ahead: TrayRun[] = [];
  for (const run of waiting.filter(({ plan }) => tooSmallFor(line, plan) === null)) {
    const from = (those: readonly TrayRun[]): number | null =>
      firstStart(
        line,
        run.plan,
        inTrays,
        those.map(({ plan }) => plan),
        nowMs,
        heldStaysOf,
      );
    const fromMs = from(ahead);
    const isKnown = ahead.length === 0 || (fromMs !== null && fromMs <= nowMs);
    moments.set(run.id, isKnown ? fromMs : unlessTheyCome(ahead, from([])));
    if (!hasGivenWay(run, nowMs)) ahead.push(run);
  }
  return moments;

  /** Where all before them were called: once these have given way. */
  function unlessTheyCome(those: readonly TrayRun[], fromMs: number | null): number | null {
    const areCalled = those.every(({ id: each }) => (moments.get(each) ?? Infinity) <= nowMs);
    if (!areCalled || fromMs === null) return null;
    return Math.max(fromMs, ...those.map((each) => givesWayAtMs(each, nowMs)));
  }
}
