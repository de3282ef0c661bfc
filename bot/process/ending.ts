import { setTimeout as sleep } from "node:timers/promises";
import type { Log } from "./log.ts";

/**
 * Waits until all these parts of the process have ended, at most `ms`, and says which have not, or not well. It never
 * rejects: whatever became of them, the store is to be closed next.
 */
export async function endAll(
  parts: Readonly<Record<string, Promise<unknown> | undefined>>,
  ms: number,
  log: Log,
): Promise<void> {
  const waiting = new Set(Object.keys(parts));
  const ends = Object.entries(parts).map(async ([part, ending]) => {
    try {
      await ending;
    } catch (error) {
      log.error({ part, err: error }, "a part of the process did not end well");
    }
    waiting.delete(part);
  });
  const inTime = new AbortController();
  const late = sleep(ms, undefined, { signal: inTime.signal }).catch(() => undefined);
  await Promise.race([Promise.all(ends), late]);
  inTime.abort();
  if (waiting.size > 0)
    log.warn({ parts: [...waiting] }, "not all has ended in time; the process ends without it");
}
