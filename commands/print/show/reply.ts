import type { Print } from "../../../store/shapes/print.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { againAction, faultAction, fieldsOf, headLine, judgedLines, recipeLines } from "../recipe-words.ts";
import { causeTitle } from "../fault/causes.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export function shownReply(print: Print): Reply {
  const cause = print.body.cause === null ? undefined : causeTitle(print.body.cause);
  const judged = judgedLines(print, cause);
  return {
    text: [
      headLine(print),
      ...recipeLines(print.body),
      ...(judged.length === 0 ? [words().unjudged] : judged),
    ].join("\n"),
    fields: fieldsOf(print),
    actions: [{ ...againAction(print), weight: "main" }, faultAction(print)],
  };
}
