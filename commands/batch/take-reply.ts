import type { Action, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { doingOf, labelOf as buttonOf, titleOf } from "../plan/step-words.ts";
import { stepAt, type Run } from "../run/run.ts";
import { formatSeconds, makeNumber, plain } from "../wording.ts";
import type { Batch } from "./batch.ts";
import { KIND_WORDS, nameOf } from "./batch-words.ts";

export const NO_RUN = "You have no run going. Name the bottle when you plan: `/plan fixbatch:B5`.";
export const WHICH_RUN = "You have several runs going. Say which: `run:R7`.";
export const UNKNOWN_RUN = (text: string): string =>
  `I know no run ${plain(text)}. See yours with \`/run status\`.`;
export const NOT_YOURS =
  "That run belongs to somebody else. Only its owner, an aide or the teacher can change it.";
export const NO_BATH_TO_COME = (run: number, batch: Batch): string =>
  `${makeNumber("run", run)} has no ${KIND_WORDS[batch.kind]} from a bottle still to come, so ${nameOf(batch)} is not needed. Nothing is changed.`;
export const PLAN_AGAIN = (batch: Batch): string =>
  `${nameOf(batch)} asks for another developing time. Make a new plan with it: \`/plan devbatch:${makeNumber("batch", batch.number)}\`.`;

export function takenReply(run: Run, index: number, label: string): Reply {
  const step = stepAt(run, index);
  const title = step ? titleOf(step).toLowerCase() : "bath";
  const time = step?.seconds ? ` for ${formatSeconds(step.seconds)}` : "";
  const isNext = run.phase.kind === "waiting" && run.phase.step === index && step;
  const actions: Action[] = isNext
    ? [
        {
          label: buttonOf(step),
          line: makeLine("run next", { run: run.number, step: index }),
          weight: "main",
        },
      ]
    : [];
  return {
    text: `**${label}** for the ${title} of ${makeNumber("run", run.number)}${time}.${isNext ? ` ${doingOf(step)}` : ""}`,
    fields: { run: run.number, step: index, batch: label, seconds: step?.seconds ?? null },
    actions,
  };
}
