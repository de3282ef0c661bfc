import type { Print } from "../../../store/shapes/print.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { makeNumber, plain } from "../../speech/wording.ts";
import { againAction, faultAction, fieldsOf, headLine, recipeLines } from "../recipe-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const noExposure = (): string => words().noExposure;
export const unknownRoll = (typed: string): string => words().unknownRoll(plain(typed));

export function loggedReply(print: Print): Reply {
  const label = makeNumber("print", print.number);
  return {
    text: [words().logged(label), headLine(print), ...recipeLines(print.body), words().rate].join("\n"),
    fields: fieldsOf(print),
    actions: [
      ...[1, 2, 3, 4, 5].map((rating) => ({
        label: `${rating}`,
        line: makeLine("print rate", { print: label, rating }),
      })),
      againAction(print),
      faultAction(print),
    ],
  };
}
