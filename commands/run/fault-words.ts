import { isTrayRun, type Run, stepAt } from "../../store/shapes/run.ts";
import { isStripPlan } from "../../store/shapes/tray.ts";
import type { Action } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { formatSeconds } from "../speech/wording.ts";
import type { RunFault } from "./machine.ts";
import { actionsOf, statusAction } from "./reply.ts";
import { titled } from "./where.ts";
import { nameOf } from "./run-words.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";
import type { Titled } from "./words/titled.ts";

/* Why a run does not change as it was asked to, and the button that helps. */

const words = inEach({ en, de });

type FaultWords = { [Fault in RunFault as Fault["code"]]: (fault: Fault, run: Run) => string };

const FAULT_WORDS: FaultWords = {
  ERR_RUN_OVER: (_, run) => wordsFor(run).over(nameOf(run)),
  ERR_OLD_BUTTON: ({ step }, run) => words().oldButton(nameOf(run), titledAt(run, step)),
  ERR_ALREADY_RUNNING: ({ step, leftSeconds }, run) =>
    words().alreadyRunning(titledAt(run, step), leftSeconds),
  ERR_TOO_EARLY: ({ step, leftSeconds }, run) =>
    isTrayRun(run) && stepAt(run, step)?.kind === "develop"
      ? words().tray.tooEarlyToPull(leftSeconds, formatSeconds(run.plan.leastSeconds))
      : wordsFor(run).tooEarly(titledAt(run, step), leftSeconds),
  ERR_BEFORE_LAST_STEP: ({ step, mostSeconds }, run) =>
    words().beforeLastStep(titledAt(run, step), mostSeconds),
  ERR_NOTHING_RUNNING: ({ step }, run) => words().nothingRunning(nameOf(run), titledAt(run, step)),
  ERR_POURING_OUT: (_, run) => (isTrayRun(run) ? words().tray : words()).pouringOut(nameOf(run)),
  ERR_NOT_DEVELOPING: (_, run) => words().tray.notDeveloping(nameOf(run)),
  ERR_ALREADY_SEEN: () => words().tray.alreadySeen,
};

const wordsFor = (run: Run) =>
  isTrayRun(run) ? words().tray : isStripPlan(run.plan) ? words().strip : words();

function titledAt(run: Run, step: number): Titled | null {
  const at = stepAt(run, step);
  return at ? titled(at) : null;
}

/** The sentence for a refused change, with the button that helps. */
export function faultWords(fault: RunFault, run: Run, now: number): { text: string; actions: Action[] } {
  const word = FAULT_WORDS[fault.code] as (fault: RunFault, run: Run) => string;
  const actions =
    fault.code === "ERR_TOO_EARLY"
      ? [
          {
            label: wordsFor(run).yesItIsIn,
            line: makeLine("run next", { run: run.number, step: fault.step + 1, sure: "yes" }),
            weight: "danger" as const,
          },
          statusAction(run),
        ]
      : actionsOf(run, now);
  return { text: word(fault, run), actions };
}
