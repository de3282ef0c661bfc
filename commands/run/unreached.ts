import { oweTeachers } from "../owe.ts";
import { inEach } from "../speech/language.ts";
import { plain } from "../speech/wording.ts";
import { runNameOf } from "../../store/shapes/run.ts";
import type { Stores } from "../../store/index.ts";
import { nameOf } from "./run-words.ts";
import { de } from "./words/unreached.de.ts";
import { en } from "./words/unreached.en.ts";

const words = inEach({ en, de });

/** What stands with a run whose calls reach nobody; `isOwn`: its owner reads it. */
export const unreachedWords = (isOwn: boolean): string => (isOwn ? words().own : words().others);

/** Calls of this run reach nobody: its teachers learn it, once for each run. Inside `atomically`. */
export function tellUnreached(stores: Stores, runId: number, now: number): void {
  const run = stores.runs.get(runId);
  if (!run) return;
  const person = stores.members.find(run.classId, run.personId)?.name ?? "?";
  oweTeachers(
    stores,
    {
      classId: run.classId,
      of: (teacher) => ({ kind: "unreached", run: run.id, teacher }),
      run: runNameOf(run),
      say: () => ({ text: words().teacher(nameOf(run), plain(person)) }),
    },
    now,
  );
}
