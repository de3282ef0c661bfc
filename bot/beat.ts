import type { Stores } from "../store/index.ts";
import type { Clock } from "./clock.ts";
import type { Deliverer } from "./deliver.ts";
import type { Log } from "./log.ts";
import { settleDue } from "./tick.ts";

/** Never armed further ahead: a clock step or a suspended machine is noticed this soon. */
const LONGEST_WAIT_MS = 30_000;
const BEAT_MS = 1000;

/** After a fault of the disk it is tried again this soon. */
const RETRY_MS = 1000;

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
}

/**
 * Wakes the settling: one timer for the next due row, and a beat each second beside it that also sees what other
 * processes wrote. Both only ask the table what is due, so an extra or a missing wake-up changes nothing.
 */
export function createBeat({ stores, clock, log, deliverer, onSpoken }: BeatDeps): Beat {
  let timer: NodeJS.Timeout | undefined;
  let second: NodeJS.Timeout | undefined;
  let stopped = true;
  /** Many changes in one turn of the loop are looked at once. */
  let isLookPending = false;

  function wake(): void {
    if (stopped) return;
    clearTimeout(timer);
    isLookPending = false;
    let waitMs = RETRY_MS;
    try {
      const now = clock.now();
      const spoken = settleDue({ stores, log, keep: deliverer.keep }, now, deliverer.decideUntil(now));
      const nextAt = Math.min(deliverer.pump(), stores.cues.nextDecideAt() ?? Infinity);
      // Rounded up, and looked at again on waking: a timer may fire a moment early, a cue must not.
      waitMs = Math.min(LONGEST_WAIT_MS, Math.max(1, Math.ceil(nextAt - clock.now())));
      if (spoken.size > 0) onSpoken(spoken);
    } catch (error) {
      // What can't be recorded is not said; the next beat tries again, and what is late then says so.
      log.error({ err: error }, "cues could not be settled");
    }
    timer = setTimeout(wake, waitMs);
  }

  function rearm(): void {
    if (stopped || isLookPending) return;
    isLookPending = true;
    setImmediate(wake);
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
      clearInterval(second);
    },
  };
}
