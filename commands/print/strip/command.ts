import { z } from "zod";
import { STRIP_WAYS, type Strip, stripSchema } from "../../../store/shapes/print.ts";
import { enlargerSchema } from "../../../store/shapes/enlarger.ts";
import { defineCommand, UserError } from "../../define.ts";
import { numberIn, wholeIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { barsOf } from "../bars.ts";
import {
  completeEnlarger,
  completePaper,
  enlargerFor,
  enlargerOption,
  paperFor,
  paperOption,
  readBy,
  USUAL_TIMER_TENTHS,
} from "../options.ts";
import { parseAperture, parseExposure, parseGrade } from "../stops.ts";
import { tooFine } from "../strip-words.ts";
import * as words from "./reply.ts";
import { STEPS, twelfthsOf } from "./steps.ts";

export const printStrip = defineCommand({
  name: "print strip",
  summary: "A test strip: what to set the timer to, bar after bar, and what each bar gets",
  options: () => ({
    base: readBy(parseExposure).default(80).describe("The shortest time on the strip, in seconds: 8, 5.6"),
    step: z.enum(STEPS).default("1/2").describe("From bar to bar, in stops"),
    seconds: readBy(parseExposure)
      .optional()
      .describe("In place of stops, so many seconds more for each bar: 5"),
    bars: wholeIn(stripSchema.shape.bars).default(5).describe("How many bars"),
    way: z.enum(STRIP_WAYS).default("cover").describe("What the card does each time"),
    enlarger: enlargerOption
      .optional()
      .describe("Which enlarger, for its timer; the class's only one if left out"),
    timer: numberIn(enlargerSchema.shape.timerTenths, 10)
      .optional()
      .describe("The finest step of your timer in seconds, if it is not the enlarger's: 0.1"),
    paper: paperOption.optional().describe("Which box of paper, like 2 or X2"),
    grade: readBy(parseGrade).optional().describe("Filter or grade: 00, 2, 2 1/2"),
    aperture: readBy(parseAperture).optional().describe("The lens's f-number, like 8"),
  }),
  who: whoMay("print strip"),
  visibility: "private",
  first: ["base", "step", "bars", "enlarger"],
  complete: { enlarger: completeEnlarger, paper: completePaper },
  handle({ base, step, seconds, bars, way, timer, ...input }, context) {
    const enlarger = enlargerFor(context, input.enlarger);
    const paper = paperFor(context, input.paper);
    const strip: Strip = {
      baseTenths: base,
      step:
        seconds === undefined
          ? { kind: "stops", twelfths: twelfthsOf(step) }
          : { kind: "seconds", tenths: seconds },
      bars,
      way,
      timerTenths:
        timer === undefined ? (enlarger?.timerTenths ?? USUAL_TIMER_TENTHS) : Math.round(timer * 10),
      enlarger: enlarger?.number ?? null,
      paper: paper?.number ?? null,
      gradeTenths: input.grade ?? paper?.gradeTenths ?? null,
      apertureTenths: input.aperture ?? null,
    };
    const made = barsOf(strip);
    if (!made.ok) throw new UserError(made.fault.code, tooFine(strip, made.fault.bar));
    if ((made.value.at(-1)?.totalTenths ?? 0) > words.MOST_TENTHS)
      throw new UserError("ERR_STRIP_LONG", words.tooLong());
    context.stores.prints.keepStrip(context.class.id, context.person.id, strip, context.now);
    return words.stripReply(strip, made.value, enlarger === null && timer === undefined);
  },
});
