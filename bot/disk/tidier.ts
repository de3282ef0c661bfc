import { once } from "node:events";
import type { Worker } from "node:worker_threads";
import { builtPath } from "../process/built.ts";

export interface Tidier {
  /** Moves what was written lately into the database proper, before long and beside everything else. */
  tidy(): void;
  stop(): Promise<void>;
}

/** Whoever is told to stop is not waited for any longer. */
const STOP_MS = 1000;

/**
 * Tidies a store in a thread of its own, with a connection of its own: on a slow disk it takes long, and no call may wait
 * for it. `onFault` hears what went wrong; all of it is recorded then, only not where it belongs yet. `onFirst` is called once
 * it has tried for the first time, well or not.
 */
export function createTidier(path: string, onFault: (detail: string) => void, onFirst?: () => void): Tidier {
  let thread: Worker | undefined;
  let isFirst = true;
  let isBusy = false;
  let isOver = false;

  function begin(): Worker {
    // Read now: it takes a while, and calls are made before anything is to be tidied.
    const { Worker } = process.getBuiltinModule("node:worker_threads");
    const begun = new Worker(builtPath("tidy-thread.js"), { workerData: { path } });
    begun.unref();
    begun.on("message", (fault: string | null) => {
      if (fault !== null) onFault(fault);
      end();
    });
    begun.on("error", (error) => onFault(String(error)));
    begun.on("exit", () => {
      if (thread === begun) thread = undefined;
      end();
    });
    return begun;
  }

  function end(): void {
    isBusy = false;
    if (isFirst) onFirst?.();
    isFirst = false;
  }

  return {
    tidy() {
      if (isBusy || isOver) return;
      isBusy = true;
      thread ??= begin();
      thread.postMessage("tidy");
    },
    async stop() {
      isOver = true;
      const ending = thread;
      if (!ending) return;
      const ended = once(ending, "exit");
      const late = setTimeout(() => void ending.terminate(), STOP_MS);
      ending.postMessage("stop");
      await ended;
      clearTimeout(late);
    },
  };
}
