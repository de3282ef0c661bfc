import { createTask } from "node-cron";

/* Work by the wall clock, as cron writes it. */

/** Never armed further ahead: a clock that is set or a machine that slept is noticed this soon. */
const LONGEST_WAIT_MS = 30_000;

export interface WallTimer {
  stop(): void;
}

/**
 * Does `work` at each match of a cron pattern on the wall clock of `zone` (absent: the computer's). Matches that were passed
 * over, asleep or by a clock set forward, come to one call. node-cron reads the pattern and tells the next match; its own timer
 * would walk through every match in between, and a clock that is set by years, as on a small computer that learns the date from
 * the network, held all calls up for minutes.
 */
export function onWallClock(pattern: string, zone: string | undefined, work: () => unknown): WallTimer {
  const task = createTask(pattern, () => {}, zone === undefined ? {} : { timezone: zone });
  const nextMatch = (): number => task.getNextRuns(1)[0]?.getTime() ?? Infinity;
  let next = nextMatch();
  let timer: NodeJS.Timeout | undefined;

  function look(): void {
    const isDue = Date.now() >= next;
    // Sooner than before where the clock was set back.
    next = isDue ? nextMatch() : Math.min(next, nextMatch());
    arm();
    if (isDue) work();
  }

  function arm(): void {
    timer = setTimeout(look, Math.min(LONGEST_WAIT_MS, Math.max(1, next - Date.now()))).unref();
  }

  arm();
  return {
    stop() {
      clearTimeout(timer);
      void task.destroy();
    },
  };
}
