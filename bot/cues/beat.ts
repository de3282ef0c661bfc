import type { Stores } from "../../store/index.ts";
import type { Clock } from "../process/clock.ts";
import type { Deliverer } from "../deliver/deliver.ts";
import type { Log } from "../process/log.ts";
import { isStorageFault } from "../../store/open.ts";
import { settleSome } from "./tick.ts";

/** Never armed further ahead: a clock step or a suspended machine is noticed this soon. */
const LONGEST_WAIT_MS = 30_000;
const BEAT_MS = 1000;

/** After a fault of the disk it is tried again this soon, and told again after so many tries. */
const RETRY_MS = 1000;
const TOLD_EACH = 60;
/** Runs settled with one flush of the disk: a few at first, soon enough to amortise the flush, more where a wake-up stays short. */
const FIRST_PORTION = 10;
const FULL_PORTION = 100;
const MOST_PORTION = 400;
const AIM_MS = 7;
/** After a wake-up everything else has a turn of the loop; where it took long (a slow disk), a share of that time as well. */
const SHORT_MS = 20;
const REST_SHARE = 0.1;
const LONGEST_REST_MS = 25;
/** Nothing due for so long: time to tidy the store. Where it never is, it is tidied after so long all the same. */
const QUIET_MS = 200;
const MOST_UNTIDY_MS = 250;

const isDamage = /^SQLITE_(CORRUPT|NOTADB|IOERR_SHORT_READ)/;
const DAMAGED = "cues could not be settled: the store is damaged";
const DISK_FAULT =
  "cues could not be settled: the disk of the store is full or failing. Nobody is called until it can be written; free some space";

export interface Beat {
  start(): void;
  /** Looks again, before long, at what is due; to be called whenever that may have changed. */
  rearm(): void;
  stop(): void;
}

export interface BeatDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  readonly deliverer: Deliverer;
  /** The classes whose runs have just spoken. */
  readonly onSpoken: (classIds: ReadonlySet<number>) => void;
  /** Moves what was written lately into the database proper; must not take long. */
  readonly tidy: () => void;
  /** Since when nobody can be called, as the store can't be written; null: it can again. */
  readonly onTrouble?: (sinceMs: number | null) => void;
}

/**
 * Wakes the settling: one timer for the next due row, and a beat each second beside it that also sees what other
 * processes wrote. Both only ask the table what is due, so an extra or a missing wake-up changes nothing.
 */
export function createBeat({ stores, clock, log, deliverer, onSpoken, tidy, onTrouble }: BeatDeps): Beat {
  let timer: NodeJS.Timeout | undefined;
  let second: NodeJS.Timeout | undefined;
  let stopped = true;
  /** Many changes in one turn of the loop are looked at once. */
  let isLookPending = false;
  let look: NodeJS.Immediate | undefined;
  /** The first of what waits is committed soon, the rest in larger portions. */
  let most = FIRST_PORTION;
  let restUntil = -Infinity;
  /** All that was due by then is settled. */
  let settledUntil = -Infinity;
  /** Rows written by this process, as counted when it last looked. */
  let written = 0;
  /** When something was first written since the store was last tidied; Infinity: nothing was. */
  let untidyAt = Infinity;
  /** Tries in a row that the disk would not take. */
  let faults = 0;

  function wake(): void {
    if (stopped) return;
    clearTimeout(timer);
    // Whoever wakes it looks for all: else each would go on to a look of its own.
    clearImmediate(look);
    isLookPending = false;
    let waitMs = RETRY_MS;
    try {
      const now = clock.now();
      const spoken = new Set<number>();
      // Recording what came back, deciding, and taking up what leaves: one flush of the disk for all three.
      let settled = 0;
      const isEnough = (): boolean => {
        settled += 1;
        return clock.now() - now >= AIM_MS;
      };
      const lookAt = deliverer.pump(now, (say) =>
        settleSome({ stores, log }, now, deliverer.decideUntil(now), spoken, most, say, isEnough),
      );
      if (faults > 0) log.warn({ tries: faults }, "the disk can be written again; what is late says so");
      if (faults > 0) onTrouble?.(null);
      faults = 0;
      settledUntil = now;
      const nextCueAt = stores.cues.nextDecideAt() ?? Infinity;
      const nextAt = Math.min(nextCueAt, lookAt);
      if (spoken.size > 0) onSpoken(spoken);
      const after = clock.now();
      restUntil = after + restOf(after - now);
      most = nextCueAt <= now ? portionAfter(most, settled, after - now) : FIRST_PORTION;
      const isMoreDue = spoken.size > 0 && nextCueAt <= now && restUntil <= after;
      // Rounded up, and looked at again on waking: a timer may fire a moment early, a cue must not.
      waitMs = Math.min(LONGEST_WAIT_MS, Math.max(1, Math.ceil(Math.max(nextAt, restUntil) - after)));
      // Whoever wrote it: what people ask and what erases is moved as well as what is called.
      if (stores.upkeep.written() !== written) untidyAt = Math.min(untidyAt, after);
      written = stores.upkeep.written();
      const isQuiet = spoken.size === 0 && waitMs >= QUIET_MS;
      if (isQuiet ? untidyAt < Infinity : after - untidyAt >= MOST_UNTIDY_MS) {
        untidyAt = Infinity;
        tidy();
      }
      if (isMoreDue) return rearm();
    } catch (error) {
      // What can't be recorded is not said; the next beat tries again, and what is late then says so.
      tell(error);
    }
    timer = setTimeout(wake, waitMs);
  }

  /** Not each second: the log may lie on the same disk. */
  function tell(error: unknown): void {
    if (!isStorageFault(error)) return log.error({ err: error }, "cues could not be settled");
    const { code = "" } = error as { code?: string };
    if (faults % TOLD_EACH === 0) log.error({ err: error }, isDamage.test(code) ? DAMAGED : DISK_FAULT);
    if (faults === 0) onTrouble?.(settledUntil);
    faults += 1;
  }

  function rearm(): void {
    if (stopped || isLookPending) return;
    isLookPending = true;
    const restMs = restUntil - clock.now();
    // Longer than the longest rest: the clock was set.
    if (restMs <= 0 || restMs > LONGEST_REST_MS) return void (look = setImmediate(wake));
    clearTimeout(timer);
    timer = setTimeout(wake, Math.ceil(restMs));
  }

  return {
    start() {
      stopped = false;
      // By elapsed time: a wall clock that is set must neither still this beat nor make it catch up second by second.
      second = setInterval(wake, BEAT_MS);
      wake();
    },
    rearm,
    stop() {
      stopped = true;
      clearTimeout(timer);
      clearImmediate(look);
      clearInterval(second);
    },
  };
}

function portionAfter(most: number, settled: number, tookMs: number): number {
  const fitting = Math.floor((settled * AIM_MS) / Math.max(1, tookMs));
  return Math.min(most * 2, MOST_PORTION, Math.max(FULL_PORTION, fitting));
}

function restOf(tookMs: number): number {
  return tookMs < SHORT_MS ? 0 : Math.min(Math.round(tookMs * REST_SHARE), LONGEST_REST_MS);
}
