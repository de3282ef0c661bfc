import type { Stores } from "../../store/index.ts";
import type { Clock } from "../process/clock.ts";
import type { Log } from "../process/log.ts";
import { isQuiet } from "./quiet.ts";

/** The file is swept only where no call falls due meanwhile. */
const QUIET_MS = 15_000;
/** After this long it is swept all the same: a promise to erase comes before a call's last second. */
const LONGEST_WAIT_MS = 6 * 3600_000;
/** After an erasure, so that the answer to it is out and gone as well. */
const SETTLE_MS = 30_000;
const BEAT_MS = 60_000;

export interface Eraser {
  /** Erases classes whose days of grace are over, and sweeps the file where something was erased. */
  beat(): void;
  start(): void;
  stop(): void;
}

export interface EraserDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  /** Classes that are no more; their pages have nothing to show. */
  readonly onErased?: (classId: number) => void;
}

/** Does what was promised by `/mine erase` and `/class erase`, down to the file's free pages. */
export function createEraser({ stores, clock, log, onErased }: EraserDeps): Eraser {
  let timer: NodeJS.Timeout | undefined;

  function eraseDue(now: number): void {
    for (const { id, classId } of stores.erasures.due(now)) {
      stores.atomically(() => {
        if (classId !== null) stores.privacy.eraseClass(classId);
        stores.erasures.markDone(id, now);
      });
      log.warn({ classId }, "a class was erased, as planned");
      if (classId !== null) onErased?.(classId);
    }
  }

  function isTimeToSweep(now: number): boolean {
    const since = stores.erasures.unsweptSince();
    if (since === undefined || now < since + SETTLE_MS) return false;
    return isQuiet(stores, now, QUIET_MS) || now > since + LONGEST_WAIT_MS;
  }

  function beat(): void {
    const now = clock.now();
    try {
      eraseDue(now);
      if (!isTimeToSweep(now)) return;
      const startedAt = clock.now();
      stores.privacy.sweep();
      stores.erasures.markSwept(now);
      log.info({ ms: clock.now() - startedAt }, "the store was swept after an erasure");
    } catch (error) {
      log.error({ err: error }, "an erasure could not be finished; it is tried again in a minute");
    }
  }

  return {
    beat,
    start: () => void (timer = setInterval(beat, BEAT_MS).unref()),
    stop: () => clearInterval(timer),
  };
}
