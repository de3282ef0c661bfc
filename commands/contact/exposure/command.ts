import { type Standing, standingSchema } from "../../../store/shapes/enlarger.ts";
import { type Context, defineCommand, UserError } from "../../define.ts";
import { limitsOf } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import {
  completeEnlarger,
  completePaper,
  enlargerFor,
  enlargerOption,
  findPaper,
  paperOption,
  readBy,
} from "../../print/options.ts";
import { parseAperture, parseDistance, parseExposure, parseGrade } from "../../print/stops.ts";
import { correct, type Otherwise } from "../correct.ts";
import * as words from "./reply.ts";

const { shape } = standingSchema;

export const contactExposure = defineCommand({
  name: "contact exposure",
  summary: "The exposure at which an enlarger makes your contact sheets: sets it, corrects it, shows it",
  options: () => ({
    enlarger: enlargerOption.optional().describe("Which enlarger; the class's only one if left out"),
    seconds: readBy(parseExposure)
      .optional()
      .describe("The least time at which the clear film edge prints black, like 12.5"),
    lighter: readBy(parseExposure)
      .optional()
      .describe("The longest time tried whose edge was still lighter than black, like 11"),
    height: readBy(parseDistance).optional().describe("From the negative carrier to the paper, like 50 cm"),
    aperture: readBy(parseAperture).optional().describe("The f-number, like 8"),
    grade: readBy(parseGrade).optional().describe("Filter or grade, like 2"),
    paper: paperOption.optional().describe("Box of paper it was tried on"),
  }),
  who: whoMay("contact exposure"),
  visibility: "private",
  complete: { enlarger: completeEnlarger, paper: completePaper },
  handle({ enlarger: number, seconds, lighter, ...now }, context) {
    const enlarger = enlargerFor(context, number);
    if (!enlarger) throw new UserError("ERR_UNKNOWN_ENLARGER", words.whichEnlarger());
    if (now.paper !== undefined) findPaper(context, now.paper);
    if (seconds !== undefined && lighter !== undefined && lighter >= seconds)
      throw new UserError("ERR_LIGHTER", words.lighterShort());
    const known = enlarger.standing ?? null;
    const standing =
      seconds === undefined
        ? reckon(context, enlarger, now)
        : tried(known, { seconds, lighter, ...now }, context.now);
    if (standing === null) return words.standingReply(enlarger, known, false);
    context.stores.enlargers.save(context.class.id, { ...enlarger, standing });
    return words.standingReply(enlarger, standing, true);
  },
});

/** @throws UserError where something of the set-up is neither said nor known. */
function tried(
  known: Standing | null,
  said: Otherwise & { readonly seconds: number; readonly lighter: number | undefined },
  now: number,
): Standing {
  const headMm = said.height ?? known?.headMm;
  const apertureTenths = said.aperture ?? known?.apertureTenths;
  const gradeTenths = said.grade ?? known?.gradeTenths;
  if (headMm === undefined || apertureTenths === undefined || gradeTenths === undefined)
    throw new UserError("ERR_STANDING_PARTS", words.needParts());
  return {
    headMm,
    apertureTenths,
    gradeTenths,
    tenths: said.seconds,
    paper: said.paper ?? known?.paper ?? null,
    lighterTenths: said.lighter ?? null,
    isTried: true,
    setAtMs: now,
  };
}

/** What is otherwise now, worked out from what was tried; null: nothing is. */
function reckon(context: Context, enlarger: Parameters<typeof correct>[1], now: Otherwise): Standing | null {
  const isOtherwise = Object.values(now).some((value) => value !== undefined);
  if (!isOtherwise) return null;
  const corrected = correct(context, enlarger, now);
  if (corrected === null) throw new UserError("ERR_STANDING_PARTS", words.needParts());
  const { most } = limitsOf(shape.tenths);
  if (corrected.setTenths > most) throw new UserError("ERR_EXPOSURE_LONG", words.tooLong());
  return { ...corrected.now, lighterTenths: null, isTried: false, setAtMs: context.now };
}
