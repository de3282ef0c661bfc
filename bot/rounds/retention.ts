import type { Stores } from "../../store/index.ts";
import { CLEARED, type Cutoffs } from "../../store/retention.ts";
import type { Clock } from "../process/clock.ts";
import type { Log } from "../process/log.ts";
import { isQuiet } from "./quiet.ts";

const DAY_MS = 24 * 3_600_000;
/** From one round to the next. */
const ROUND_MS = 10 * 60_000;
/** A portion takes a few milliseconds; nobody is called meanwhile. */
const QUIET_MS = 500;
const MOST_ROWS = 100;
/** Between two portions, so that everything else gets its turn, and until it is looked at again whether it is quiet. */
const REST_MS = 50;
const LOOK_AGAIN_MS = 1000;
/** Where it is never quiet, a portion is cleared at each look from so long on. */
const LONGEST_WAIT_MS = 3_600_000;

/** README.md tells these to the operator. */
const DELIVERIES_DAYS = 14;
const ERASURES_DAYS = 365;
const IMPORTS_DAYS = 365;
const DEVICES_DAYS = 60;

export interface Ages {
  /** What was said on the page of the room, and whom a word to many has reached. */
  readonly messagesDays: number;
  /** Plans, and runs that are over. */
  readonly runsDays: number;
}

export interface Retention {
  /**
   * Clears one portion of what is finished and old enough, if nobody is called meanwhile. `portion`: there may be more.
   */
  beat(): "portion" | "not quiet" | "through";
  start(): void;
  stop(): void;
}

export interface RetentionDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  readonly ages: Ages;
  /** Moves what was written into the database proper. */
  readonly tidy: () => void;
}

export function cutoffsAt(now: number, { messagesDays, runsDays }: Ages): Cutoffs {
  const before = (days: number): number => now - days * DAY_MS;
  return {
    cues: before(DELIVERIES_DAYS),
    outbox: before(DELIVERIES_DAYS),
    calls: before(DELIVERIES_DAYS),
    messages: before(messagesDays),
    presses: before(messagesDays),
    says: before(messagesDays),
    plans: before(runsDays),
    runs: before(runsDays),
    imports: before(IMPORTS_DAYS),
    erasures: before(ERASURES_DAYS),
    sessions: before(DEVICES_DAYS),
  };
}

/**
 * Goes round what is kept and clears what is finished and old enough, in portions and in quiet moments. A portion is one
 * transaction, and what it leaves is found again: a process killed in between loses nothing, and the next one goes on.
 */
export function createRetention({ stores, clock, log, ages, tidy }: RetentionDeps): Retention {
  let timer: NodeJS.Timeout | undefined;
  let kind = 0;
  let after = 0;
  let cleared = 0;
  /** When this round was to begin; once it has, `isBegun`. */
  let roundAt = clock.now() + ROUND_MS;
  let isBegun = false;

  function clear(now: number): "portion" | "through" {
    const of = CLEARED[kind];
    if (of === undefined) return "through";
    const portion = stores.atomically(() =>
      stores.retention.clear(of, after, cutoffsAt(now, ages), now, MOST_ROWS),
    );
    cleared += portion.cleared;
    after = portion.next ?? 0;
    if (portion.next === undefined) kind += 1;
    if (portion.cleared > 0) tidy();
    return "portion";
  }

  function beat(): ReturnType<Retention["beat"]> {
    const now = clock.now();
    if (!isQuiet(stores, now, QUIET_MS) && now - roundAt < LONGEST_WAIT_MS) return "not quiet";
    const done = clear(now);
    if (done === "through") {
      if (cleared > 0) log.info({ rows: cleared }, "what is finished and old was cleared");
      kind = 0;
      cleared = 0;
    }
    return done;
  }

  function endRound(): void {
    kind = 0;
    after = 0;
    isBegun = false;
    roundAt = clock.now() + ROUND_MS;
    wait(ROUND_MS);
  }

  function goOn(): void {
    // The clock was set, or the computer slept: before so much is held to be old, there is time to set it right.
    if (!isBegun && Math.abs(clock.now() - roundAt) > ROUND_MS / 2) return endRound();
    isBegun = true;
    try {
      const done = beat();
      if (done === "through") endRound();
      else wait(done === "portion" ? REST_MS : LOOK_AGAIN_MS);
    } catch (error) {
      log.error({ err: error }, "what is finished could not be cleared; it is tried again in ten minutes");
      endRound();
    }
  }

  function wait(ms: number): void {
    timer = setTimeout(goOn, ms).unref();
  }

  return {
    beat,
    start: () => wait(ROUND_MS),
    stop: () => clearTimeout(timer),
  };
}
