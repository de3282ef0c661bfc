import type { Print } from "../../../store/shapes/print.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeNumber } from "../../speech/wording.ts";
import { againAction, faultAction, fieldsOf, showAction } from "../recipe-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const notedReply = (print: Print): Reply => ({
  text: words().noted(makeNumber("print", print.number)),
  fields: fieldsOf(print),
  actions: [showAction(print)],
});

/** A low rating asks for its cause; a high one may be wanted again. */
export const ratedReply = (print: Print, rating: number): Reply => ({
  text: words().rated(makeNumber("print", print.number), rating),
  fields: fieldsOf(print),
  actions: [showAction(print), rating <= 3 ? faultAction(print) : againAction(print)],
});
