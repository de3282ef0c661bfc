import type { Action, Reply } from "../define.ts";
import { inEach } from "../speech/language.ts";
import type { Run } from "../../store/shapes/run.ts";
import { changedReply, startedReply } from "./reply.ts";
import { whereIs } from "./where.ts";
import { nameOf } from "./run-words.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

const words = inEach({ en, de });

export const noTrialTime = (): { text: string; actions: Action[] } => ({
  text: words().noTrialTime,
  actions: [{ label: words().addTime, line: "sheet add", weight: "main" }],
});

/** One at a time is enough to try. */
export function trialGoing(run: Run, now: number): Reply {
  return { ...changedReply(run, now), text: `${words().trialGoing(nameOf(run))}\n${whereIs(run, now)}` };
}

export const trialStarted = (run: Run): Reply => startedReply(run);
