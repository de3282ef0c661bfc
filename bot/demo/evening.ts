import { commands } from "../../commands/index.ts";
import { parseLine } from "../../commands/speech/line.ts";
import { currentStep, isOver, type Run } from "../../store/shapes/run.ts";
import type { BatchKind } from "../../store/shapes/batch.ts";
import { lineFormsOf } from "../../commands/forms.ts";
import type { Role } from "../../store/shapes/person.ts";
import type { Stores } from "../../store/index.ts";
import type { Clock } from "../process/clock.ts";
import { DEMO_KEY, inventDemo } from "./demo.ts";
import { DEMO_NAME } from "./name.ts";
import { FILMS, PRINTING, PRINTS, type Turn } from "./turns.ts";
import { createDispatch, type Dispatch } from "../calls/dispatch.ts";
import type { Log } from "../process/log.ts";

/*
 * The last evening of the invented class, so that a fresh install has bottles, a ledger and a log to look at. Nobody in it
 * exists. It is played through the commands everybody uses, at instants a week ago.
 */

const WEEK_MS = 7 * 24 * 3_600_000;
const MINUTE_MS = 60_000;
const MOST_OWED = 100;
/** A step without a time of its own takes so long. */
const BY_HAND_MS = 4 * MINUTE_MS;

const MIXED: Readonly<Partial<Record<BatchKind, string>>> = {
  developer:
    "batch mix kind:developer product:House MQ volume:2 l bottle:2 l use:once full:6 months part:2 months source:invented for the demo",
  fixer:
    "batch mix kind:fixer product:Harbour Fix volume:1 l dilution:1+4 clearing:30 s capacity:12 films/l tabular:6 films/l full:2 months part:1 month source:invented for the demo",
  "wetting-agent":
    "batch mix kind:wetting-agent product:Gull Rinse volume:1 l dilution:1+200 full:1 month part:2 weeks source:invented for the demo",
};

/** A fresh bottle of a kind the demo class has; nothing where it has none. */
export function mixForDemo(kind: BatchKind, stores: Stores, clock: Clock, log: Log): void {
  const line = MIXED[kind];
  if (line === undefined) return;
  try {
    say(createDispatch({ commands, stores, clock, log }), "Jo", line, clock.now(), "aide");
  } catch (error) {
    log.warn({ err: error, kind }, "the demo class could not be given a fresh bottle");
  }
}

const TESTED = "batch test batch:B2 clearing:38 s";
const TESTED_AFTER_MINUTES = 150;
const PRINTING_AFTER_MINUTES = 152;

/** Makes the demo class with its last evening, where the store holds no class at all. */
export function openDemo(stores: Stores, zone: string, clock: Clock, log: Log): void {
  if (stores.classes.list().length > 0) return;
  stores.atomically(() => {
    inventDemo(stores, zone, clock.now());
    playDemoEvening(stores, clock, log);
  });
}

/** Plays all of it or, where that can't be, nothing: a class without a past works as well. */
export function playDemoEvening(stores: Stores, clock: Clock, log: Log): void {
  try {
    stores.atomically(() => play(stores, clock, log));
  } catch (error) {
    log.error({ err: error }, "the demo class starts without its last evening");
  }
}

function play(stores: Stores, clock: Clock, log: Log): void {
  const dispatch = createDispatch({ commands, stores, clock, log });
  const begunAt = clock.now() - WEEK_MS;
  for (const line of Object.values(MIXED)) say(dispatch, "Jo", line, begunAt - 30 * MINUTE_MS, "aide");
  playTurns(FILMS, stores, dispatch, begunAt);
  say(dispatch, "Jo", TESTED, begunAt + TESTED_AFTER_MINUTES * MINUTE_MS, "aide");
  for (const line of PRINTING)
    say(dispatch, "Petra", line, begunAt + PRINTING_AFTER_MINUTES * MINUTE_MS, "teacher");
  playTurns(PRINTS, stores, dispatch, begunAt);
  // Whatever had to be said was said that evening.
  const owed = stores.outbox.ready(clock.now(), MOST_OWED).map(({ id }) => id);
  stores.outbox.markEnded(owed, "stale", "of the demo's past", clock.now());
}

function playTurns(all: readonly Turn[], stores: Stores, dispatch: Dispatch, begunAt: number): void {
  const turns = all.map((turn) => {
    const at = begunAt + turn.afterMinutes * MINUTE_MS;
    return { at, calls: take(stores, dispatch, turn, at) };
  });
  // Whoever's turn it is: all that evening's calls in their order of time.
  for (;;) {
    const [next] = turns.sort((a, b) => a.at - b.at);
    if (!next || next.at === Infinity) break;
    const { value, done } = next.calls.next();
    next.at = done ? Infinity : value;
  }
}

/** One turn's calls, each at the instant the call before has given. */
function* take(stores: Stores, dispatch: Dispatch, turn: Turn, at: number): Generator<number, void> {
  const { person } = turn;
  for (const line of turn.before ?? []) say(dispatch, person, line, at);
  say(dispatch, person, turn.plan, at);
  say(dispatch, person, "run start", at);
  let now = at + 2 * MINUTE_MS;
  for (let run = runOf(stores, person); run && !isOver(run); run = runOf(stores, person)) {
    yield now;
    say(dispatch, person, `run next run:${run.number} sure:yes`, now);
    now += lengthOf(runOf(stores, person), turn);
  }
  yield now;
  for (const line of turn.afterwards) say(dispatch, person, line, now);
}

const runOf = ({ classes, runs }: Stores, person: string): Run | undefined =>
  runs.latest(classes.find(DEMO_KEY)?.id ?? 0, idOf(person));

/** How long the bath that has just gone in stays. */
function lengthOf(run: Run | undefined, { seconds }: Turn): number {
  const step = run && currentStep(run);
  if (!step || run.phase.kind !== "running") return BY_HAND_MS;
  return (seconds?.[step.kind] ?? step.seconds ?? 0) * 1000;
}

const idOf = (person: string): string => `room:demo-${person.toLowerCase()}`;

function say(dispatch: Dispatch, person: string, text: string, now: number, role: Role = "student"): void {
  const line = parseLine(`/${text}`, lineFormsOf(commands));
  if (!line.ok) throw new Error(`the demo's line is none: ${text}`);
  const { name, options } = line.value;
  const answered = dispatch.run(
    {
      callId: null,
      name,
      options,
      person: { id: idOf(person), name: person },
      role,
      place: { classKey: DEMO_KEY, className: DEMO_NAME, channelRef: null },
    },
    now,
  );
  if (answered.kind !== "done")
    throw new Error(`the demo's line was refused: ${text}: ${answered.reply.text}`);
}
