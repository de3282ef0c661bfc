import type { Enlarger } from "../../../store/shapes/enlarger.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeNumber } from "../../speech/wording.ts";
import { enlargerFields } from "../enlarger-fields.ts";
import { enlargerLine, gearAction } from "../print-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const nameless = (number: number): string => words().nameless(number);

export function savedReply(enlarger: Enlarger, isGuessed: boolean): Reply {
  return {
    text: [`${enlargerLine(enlarger)}.`, ...(isGuessed ? [words().check] : [])].join("\n"),
    fields: enlargerFields(enlarger),
    actions: [gearAction()],
  };
}

export function removedReply(number: number): Reply {
  return {
    text: words().removed(makeNumber("enlarger", number)),
    fields: { enlarger: number, removed: true },
    actions: [gearAction()],
  };
}
