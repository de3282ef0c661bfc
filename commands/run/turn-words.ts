import { doingOf } from "../sheet/step-words.ts";
import { isTrayRun, type Run, stepAt } from "../../store/shapes/run.ts";
import { inEach } from "../speech/language.ts";
import { nextAction } from "./reply.ts";
import type { CueMessage } from "./cue-words.ts";
import { de } from "./words/turn.de.ts";
import { en } from "./words/turn.en.ts";

const words = inEach({ en, de });

/** To whoever waited for a place, when there is one. */
export function turnWords(run: Run): CueMessage {
  const first = stepAt(run, 0);
  const call = isTrayRun(run) ? words().atTrays : words().atSink;
  return { text: `${call} ${first ? doingOf(first) : ""}`.trim(), actions: nextAction(run, 0) };
}
