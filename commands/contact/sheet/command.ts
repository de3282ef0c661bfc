import { z } from "zod";
import { FILM_FORMATS, type FilmFormat } from "../../../store/shapes/film.ts";
import type { PaperSize } from "../../../store/shapes/paper.ts";
import type { Roll } from "../../../store/shapes/roll.ts";
import { type Context, defineCommand, UserError } from "../../define.ts";
import { completeRoll, findRoll } from "../../roll/options.ts";
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
import { parseSize } from "../../print/sizes.ts";
import { parseAperture, parseDistance, parseGrade } from "../../print/stops.ts";
import { correct } from "../correct.ts";
import { type Film, layOut, piecesOf } from "./layout.ts";
import * as words from "./reply.ts";

/** As many films go on one sheet as a class would lay. */
const MOST_ROLLS = 12;
const EIGHT_BY_TEN: PaperSize = { shortMm: 203, longMm: 254 };

export const contactSheet = defineCommand({
  name: "contact sheet",
  summary: "A contact sheet of rolls: how the strips lie on the paper, and how long to expose it",
  options: () => ({
    roll: z
      .string()
      .trim()
      .min(1)
      .max(80)
      .optional()
      .describe("Which roll, like L12, or several: L12, L13; your newest if left out"),
    sleeves: z.enum(["in", "out"]).default("out").describe("Where the strips are while they are exposed"),
    paper: paperOption.optional().describe("Box of paper, by its number"),
    size: readBy(parseSize).optional().describe("Size of the paper, like 8x10 or 24x30, if not the box's"),
    enlarger: enlargerOption.optional().describe("Which enlarger; the class's only one if left out"),
    height: readBy(parseDistance)
      .optional()
      .describe("From the negative carrier to the paper, if it changed: 55 cm"),
    aperture: readBy(parseAperture).optional().describe("The f-number, if it changed: 11"),
    grade: readBy(parseGrade).optional().describe("Filter or grade, if it changed: 2"),
  }),
  who: whoMay("contact sheet"),
  visibility: "private",
  rest: "roll",
  complete: { roll: completeRoll, paper: completePaper, enlarger: completeEnlarger },
  handle({ roll: text, sleeves, paper: number, size: asked, enlarger: which, ...changes }, context) {
    const rolls = findRolls(context, text);
    const { stripFrames: of135, stripFrames120: of120 } = context.class.habits;
    const pieces = rolls.flatMap((roll) => piecesOf(filmOf(roll), { of135, of120 }));
    if (pieces.length === 0) throw new UserError("ERR_NOTHING_TO_LAY", words.nothingToLay());
    const enlarger = enlargerFor(context, which);
    const box = number ?? enlarger?.standing?.paper ?? null;
    const size = asked ?? (box === null ? EIGHT_BY_TEN : findPaper(context, box).size);
    const layout = layOut(pieces, size, sleeves);
    if (!layout.ok) throw new UserError(layout.fault.code, words.paperSmall(layout.fault, size));
    const exposure = enlarger?.standing
      ? correct(context, enlarger, { ...changes, ...(number === undefined ? {} : { paper: number }) })
      : null;
    const hasEnlargers = context.stores.enlargers.list(context.class.id).length > 0;
    return words.contactReply({
      rolls,
      layout: layout.value,
      size,
      sleeves,
      enlarger,
      hasEnlargers,
      exposure,
    });
  },
});

function findRolls(context: Context, text: string | undefined): Roll[] {
  const named = (text ?? "").split(/[,; ]+/).filter(Boolean);
  if (named.length > MOST_ROLLS) throw new UserError("ERR_TOO_MANY_ROLLS", words.tooManyRolls(MOST_ROLLS));
  if (named.length === 0) return [findRoll(context, undefined)];
  return [...new Set(named)].map((each) => findRoll(context, each));
}

function filmOf({ number, body }: Roll): Film {
  const format: FilmFormat = FILM_FORMATS.find((each) => each === body.format) ?? "135";
  return {
    roll: number,
    format,
    frame: body.frame,
    frames: body.frames,
    strips: body.strips,
    marks: body.frameMarks,
  };
}
