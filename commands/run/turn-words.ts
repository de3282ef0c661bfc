import { doingOf } from "../sheet/step-words.ts";
import { isTrayPlan } from "../../store/shapes/tray.ts";
import { type Run, stepAt } from "../../store/shapes/run.ts";
import { inEach } from "../speech/language.ts";
import { nextAction } from "./reply.ts";
import type { CueMessage } from "./cue-words.ts";
import type { CallWords } from "./run-view.ts";
import { de } from "./words/turn.de.ts";
import { en } from "./words/turn.en.ts";

const words = inEach({ en, de });

/** To whoever waited for a place, when there is one. */
export function turnWords(run: Run): CueMessage {
  const { does, how, actions } = turnCall(run);
  return { text: `**${does}** ${how}`, actions };
}

/** The same as a page calls it. */
export function turnCall(run: Run): CallWords {
  const first = stepAt(run, 0);
  const { does, how } = placeWords(run);
  return {
    does,
    how: first ? `${how} ${doingOf(first)}` : how,
    spoken: does,
    seconds: null,
    brief: words().brief,
    actions: nextAction(run, 0),
  };
}

function placeWords({ queued, plan }: Run): { readonly does: string; readonly how: string } {
  const { atTank } = words();
  if (queued?.forTank && plan.tank !== null) return { ...atTank, does: atTank.does(plan.tank) };
  return isTrayPlan(plan) ? words().atTrays : words().atSink;
}

export const waitForTurn = (): string => words().wait;
