import { z } from "zod";
import { enlargerSchema } from "../../../store/shapes/enlarger.ts";
import { FILM_FORMATS, isSheetFilm } from "../../../store/shapes/film.ts";
import type { PaperSize } from "../../../store/shapes/paper.ts";
import type { Print } from "../../../store/shapes/print.ts";
import { type Context, defineCommand, UserError } from "../../define.ts";
import { negativeMm } from "../../plan/frames.ts";
import { numberIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { type BoxOfPaper, sumOf } from "../adjust.ts";
import { adjustBy, CHANGE_OPTIONS } from "../adjust-options.ts";
import type { Change } from "../change.ts";
import { completePrint, findPrint } from "../find-print.ts";
import { factorOf, onTimer } from "../light.ts";
import { completeEnlarger, enlargerFor, enlargerOption, USUAL_TIMER_TENTHS } from "../options.ts";
import * as words from "./reply.ts";

const MOST_SECONDS = 3600;

export const printAgain = defineCommand({
  name: "print again",
  summary: "Make a print again: its whole recipe, adjusted to today's paper, size, height, aperture or grade",
  options: () => ({
    print: z.string().min(1).max(12).optional().describe("Which print, like V7; your newest if left out"),
    ...CHANGE_OPTIONS,
    enlarger: enlargerOption.optional().describe("Today's enlarger; that of the print if left out"),
    timer: numberIn(enlargerSchema.shape.timerTenths, 10)
      .optional()
      .describe("The finest step of your timer in seconds, if it is not the enlarger's: 0.1"),
  }),
  who: whoMay("print again"),
  visibility: "private",
  rest: "print",
  first: ["print", "paper", "size", "height", "grade"],
  complete: { print: completePrint, enlarger: completeEnlarger },
  handle({ print: text, enlarger: number, timer, ...changes }, context) {
    const print = findPrint(context, text);
    const { body } = print;
    const enlarger = enlargerFor(context, number ?? enlargerOf(context, print)) ?? body.enlarger;
    const parts = adjustBy(
      changes,
      body,
      context,
      { enlarger, negative: negativeOf(context, print) },
      boxToday(context, print),
    );
    const exact = (body.exposureTenths / 10) * factorOf(sumOf(parts));
    if (exact > MOST_SECONDS) throw new UserError("ERR_EXPOSURE_LONG", words.tooLong());
    const timerTenths =
      timer === undefined ? (enlarger?.timerTenths ?? USUAL_TIMER_TENTHS) : Math.round(timer * 10);
    return words.againReply({
      print,
      exact,
      setTenths: onTimer(exact, timerTenths),
      timerTenths,
      parts,
      enlarger,
    });
  },
});

/** The enlarger it was made with, where the class still has it. */
function enlargerOf({ stores, class: school }: Context, { body }: Print): number | undefined {
  const number = body.enlarger?.number;
  return number === undefined ? undefined : stores.enlargers.find(school.id, number)?.number;
}

/** What the negative is, by its roll; null: nobody can tell. */
function negativeOf({ stores, class: school }: Context, { roll }: Print): PaperSize | null {
  const body = roll === null ? undefined : stores.rolls.find(school.id, roll)?.body;
  const format = FILM_FORMATS.find((each) => each === body?.format);
  if (format === undefined) return null;
  if (isSheetFilm(format)) return negativeMm(format);
  // What a camera put on roll film is not in the log; on 135 it is nearly always this.
  return format === "135" ? negativeMm("24x36") : null;
}

/** The same box, where another lot is in it by now, or its speed has been measured anew. */
function boxToday({ stores, class: school }: Context, { body }: Print): Change<BoxOfPaper> | undefined {
  const then = body.paper;
  const today = then === null ? undefined : stores.papers.find(school.id, then.number);
  if (then === null || today === undefined) return undefined;
  const isSame =
    then.name === today.name && then.lot === today.lot && then.speed?.tenths === today.speed?.tenths;
  return isSame ? undefined : { from: then, to: today };
}
