import { threadNameOf } from "../../../commands/run/run-words.ts";
import { makeNumber } from "../../../commands/speech/wording.ts";
import { speaking } from "../../../commands/speech/language.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { Run } from "../../../store/shapes/run.ts";
import type { OpenThread, WantedThread } from "../../../store/run-threads.ts";
import type { Stores } from "../../../store/index.ts";
import type { Clock } from "../../process/clock.ts";

/** A thread that a run wants. */
export interface ThreadWish extends WantedThread {
  readonly classKey: string;
  readonly personId: string;
  /** By which it is known among others: `R7`, in front of its name. */
  readonly number: string;
  /** `R7, tank 3 · Lantern 400`. */
  readonly name: string;
  readonly language: Language;
}

/** What is kept of the threads in which runs are called. */
export interface ThreadBook {
  /** Of runs that are not over. */
  wanted(): readonly ThreadWish[];
  wantedOf(classKey: string, run: number): ThreadWish | undefined;
  openOf(classKey: string, run: number): string | null;
  saveAsked(runId: number, now: number): void;
  saveOpened(runId: number, threadId: string): void;
  /** Where a run's calls go; null: to its person as ever. */
  threadOf(runId: number): string | null;
  lose(runId: number): void;
  /** Threads of which nothing is wanted any more. */
  done(): readonly OpenThread[];
  saveClosed(runId: number): void;
}

/** In a closed thread no key can be pressed: what the end of a run offers is left this long. */
const LINGER_MS = 10 * 60_000;

export function createThreadBook(stores: Stores, clock: Clock): ThreadBook {
  const { runThreads, members, classes } = stores;

  /** None for a run that can't be read: its calls don't come either. */
  function wishOf(wanted: WantedThread): ThreadWish[] {
    try {
      const run = stores.runs.get(wanted.runId);
      const classKey = run && classes.addressOf(run.classId)?.key;
      if (!run || classKey === undefined) return [];
      const { personId } = run;
      const language = members.languageOf(run.classId, personId);
      const name = speaking(language, () => threadNameOf(run));
      return [{ ...wanted, classKey, personId, language, name, number: makeNumber("run", run.number) }];
    } catch {
      return [];
    }
  }

  function runOf(classKey: string, number: number): Run | undefined {
    const classId = classes.idOf(classKey);
    return classId === undefined ? undefined : stores.runs.find(classId, number);
  }

  return {
    wanted: () => runThreads.wanted().flatMap(wishOf),
    wantedOf(classKey, number) {
      const run = runOf(classKey, number);
      const wanted = run && runThreads.wantedOf(run.id);
      return wanted && wishOf(wanted)[0];
    },
    openOf(classKey, number) {
      const run = runOf(classKey, number);
      return run ? runThreads.refOf(run.id) : null;
    },
    saveAsked: runThreads.saveAsked,
    saveOpened: runThreads.saveOpened,
    threadOf: runThreads.refOf,
    lose: runThreads.lose,
    done: () => runThreads.over(clock.now() - LINGER_MS),
    saveClosed: runThreads.saveClosed,
  };
}
