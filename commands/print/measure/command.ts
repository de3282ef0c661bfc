import { type Paper, paperSchema } from "../../../store/shapes/paper.ts";
import { defineCommand, UserError } from "../../define.ts";
import { limitsOf, wholeIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { stopsBetween } from "../light.ts";
import { completePaper, enlargerOption, findEnlarger, findPaper, paperOption, readBy } from "../options.ts";
import { parseExposure, parseGrade } from "../stops.ts";
import * as words from "./reply.ts";

export const printMeasure = defineCommand({
  name: "print measure",
  summary: "Tell what your strips showed: a filter's light, a new box's speed, how much a paper dries darker",
  options: () => ({
    paper: paperOption.describe("The box that was measured, like 2 or X2"),
    grade: readBy(parseGrade).optional().describe("The filter that was measured beside grade 2: 3 1/2"),
    beside: paperOption.optional().describe("The box it was compared with, like 1 or X1"),
    seconds: readBy(parseExposure)
      .optional()
      .describe("The time that gave the same grey with this filter or box: 12.5"),
    was: readBy(parseExposure).optional().describe("The time with grade 2, or with the other box: 10"),
    dry: wholeIn(paperSchema.shape.dryDownPercent)
      .optional()
      .describe("How much less light matched the wet print, per cent: 10"),
    enlarger: enlargerOption
      .optional()
      .describe("With which enlarger a filter was measured; any if left out"),
  }),
  who: whoMay("print measure"),
  visibility: "private",
  complete: { paper: completePaper, beside: completePaper },
  handle({ paper: number, grade, beside, seconds, was, dry, enlarger }, context) {
    const paper = findPaper(context, number);
    const isPair = grade !== undefined || beside !== undefined;
    if (!isPair && dry === undefined) throw new UserError("ERR_NOTHING_MEASURED", words.nothing());
    if (isPair && (seconds === undefined || was === undefined))
      throw new UserError("ERR_NOTHING_MEASURED", words.bothTimes());
    if (grade !== undefined && paper.gradeTenths !== null)
      throw new UserError("ERR_GRADED_PAPER", words.isGraded());
    if (enlarger !== undefined) findEnlarger(context, enlarger);
    const stops = seconds === undefined || was === undefined ? 0 : stopsBetween(was, seconds);
    let measured: Paper = dry === undefined ? paper : { ...paper, dryDownPercent: dry };
    if (grade !== undefined) measured = withFilter(measured, grade, enlarger ?? null, stops);
    if (beside !== undefined) measured = withSpeed(measured, findPaper(context, beside), stops);
    context.stores.papers.save(context.class.id, measured);
    return words.measuredReply(measured, grade ?? null, beside ?? null, stops);
  },
});

function withFilter(paper: Paper, gradeTenths: number, enlarger: number | null, stops: number): Paper {
  const milliStops = Math.round(stops * 1000);
  if (Math.abs(milliStops) > 4000) throw new UserError("ERR_MEASURED_FAR", words.far());
  const others = paper.filters.filter(
    (each) => each.gradeTenths !== gradeTenths || each.enlarger !== enlarger,
  );
  const filters = [...others, { gradeTenths, enlarger, milliStops }].slice(-60);
  return { ...paper, filters };
}

/** Twice the time for the same grey is half the speed. */
function withSpeed(paper: Paper, other: Paper, stops: number): Paper {
  if (other.speed === null) throw new UserError("ERR_PAPER_SPEED", words.noSpeed(other.number));
  const tenths = Math.round(other.speed.tenths / 2 ** stops);
  const { least, most } = limitsOf(paperSchema.shape.speed.unwrap().shape.tenths);
  if (tenths < least || tenths > most) throw new UserError("ERR_MEASURED_FAR", words.far());
  return { ...paper, speed: { tenths, basis: "measured" } };
}
