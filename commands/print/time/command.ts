import { enlargerSchema } from "../../../store/shapes/enlarger.ts";
import { defineCommand, UserError } from "../../define.ts";
import { numberIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { NOTHING_KNOWN, sumOf } from "../adjust.ts";
import { adjustBy, CHANGE_OPTIONS } from "../adjust-options.ts";
import { factorOf, onTimer } from "../light.ts";
import { parseLocals } from "../locals.ts";
import { localsFrom } from "../local-options.ts";
import { completeEnlarger, enlargerFor, enlargerOption, readBy, USUAL_TIMER_TENTHS } from "../options.ts";
import { parseExposure } from "../stops.ts";
import * as words from "./reply.ts";

/** As long as a shape keeps. */
const MOST_SECONDS = 3600;

export const printTime = defineCommand({
  name: "print time",
  summary: "An exposure anew when something changes: size, height, aperture, grade, paper, dry-down",
  options: () => ({
    seconds: readBy(parseExposure).describe("The exposure so far, in seconds: 12.5"),
    ...CHANGE_OPTIONS,
    burn: readBy(parseLocals("burn"))
      .optional()
      .describe("Places to burn in and how much: sky 1/2, corner 3 s"),
    dodge: readBy(parseLocals("dodge"))
      .optional()
      .describe("Places to dodge and how much: face 1/3, hand 20 %"),
    enlarger: enlargerOption.optional().describe("Which enlarger; the class's only one if left out"),
    timer: numberIn(enlargerSchema.shape.timerTenths, 10)
      .optional()
      .describe("The finest step of your timer in seconds, if it is not the enlarger's: 0.1"),
  }),
  who: whoMay("print time"),
  visibility: "private",
  rest: "seconds",
  first: ["seconds", "size", "height", "aperture", "grade", "dry"],
  complete: { enlarger: completeEnlarger },
  handle({ seconds: tenths, burn = [], dodge = [], timer, enlarger: number, ...changes }, context) {
    const enlarger = enlargerFor(context, number);
    const timerTenths =
      timer === undefined ? (enlarger?.timerTenths ?? USUAL_TIMER_TENTHS) : Math.round(timer * 10);
    const parts = adjustBy(changes, NOTHING_KNOWN, context, { enlarger, negative: null });
    const locals = localsFrom([...burn, ...dodge], tenths / 10);
    const exact = (tenths / 10) * factorOf(sumOf(parts));
    if (exact > MOST_SECONDS) throw new UserError("ERR_EXPOSURE_LONG", words.tooLong());
    const setTenths = onTimer(exact, timerTenths);
    return words.timeReply({ fromTenths: tenths, exact, setTenths, timerTenths, parts, locals, enlarger });
  },
});
