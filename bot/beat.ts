import { schedule, type ScheduledTask } from "node-cron";
import type { Stores } from "../store/index.ts";
import type { Clock } from "./clock.ts";
import type { Deliverer } from "./deliver.ts";
import type { Log } from "./log.ts";
import { settleDue } from "./tick.ts";

/** Never armed further ahead: a clock step or a suspended machine is noticed this soon. */
const LONGEST_WAIT_MS = 30_000;

export interface Beat {
  start(): void;
  /** Looks again at what is due next; to be called whenever that may have changed. */
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
  let second: ScheduledTask | undefined;
  let stopped = true;

  function wake(): void {
    if (stopped) return;
    try {
      const spoken = settleDue({ stores, log }, clock.now());
      deliverer.pump();
      if (spoken.size > 0) onSpoken(spoken);
    } catch (error) {
      // What can't be recorded is not said; the next beat tries again and what is late then says so.
      log.error({ err: error }, "cues could not be settled");
    }
    rearm();
  }

  function rearm(): void {
    if (stopped) return;
    clearTimeout(timer);
    let waitMs = LONGEST_WAIT_MS;
    try {
      const next = Math.min(stores.cues.nextDueAt() ?? Infinity, stores.outbox.nextReadyAt() ?? Infinity);
      // Rounded up, and looked at again on waking: a timer may fire a moment early, a cue must not.
      waitMs = Math.min(LONGEST_WAIT_MS, Math.max(1, Math.ceil(next - clock.now())));
    } catch (error) {
      log.error({ err: error }, "the next cue could not be looked up");
    }
    timer = setTimeout(wake, waitMs);
  }

  return {
    start() {
      stopped = false;
      second = schedule("* * * * * *", wake, { noOverlap: true });
      wake();
    },
    rearm,
    stop() {
      stopped = true;
      clearTimeout(timer);
      void second?.destroy();
    },
  };
}
