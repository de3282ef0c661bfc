import type { Action, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { doingOf, labelOf as buttonOf, titleInText } from "../../sheet/step-words.ts";
import { stepAt, type Run } from "../../../store/shapes/run.ts";
import { formatSeconds, makeNumber, plain } from "../../speech/wording.ts";
import type { Batch } from "../../../store/shapes/batch.ts";
import { labelOf, nameOf } from "../batch-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const noRun = (): string => words().noRun;
export const whichRun = (): string => words().whichRun;
export const unknownRun = (text: string): string => words().unknownRun(plain(text));
export const notYours = (): string => words().notYours;
export const noBathToCome = (run: number, batch: Batch): string =>
  words().noBathToCome(makeNumber("run", run), batch.kind, nameOf(batch));
export const planAgain = (batch: Batch): string => words().planAgain(nameOf(batch), labelOf(batch));

export function takenReply(run: Run, index: number, label: string): Reply {
  const step = stepAt(run, index);
  const title = step ? titleInText(step) : words().bath;
  const time = step?.seconds ? formatSeconds(step.seconds) : null;
  const taken = words().taken(label, title, makeNumber("run", run.number), time);
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
    text: isNext ? `${taken} ${doingOf(step)}` : taken,
    fields: { run: run.number, step: index, batch: label, seconds: step?.seconds ?? null },
    actions,
  };
}
