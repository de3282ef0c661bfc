import { z } from "zod";
import { FRAME_SIZES, SHEET_FORMATS } from "../../store/shapes/film.ts";
import { paperSchema } from "../../store/shapes/paper.ts";
import { type Context, UserError } from "../define.ts";
import { negativeMm } from "../plan/frames.ts";
import { limitsOf, numberIn } from "../speech/shaped.ts";
import { adjust, type Around, type Changes, type Part, type Start } from "./adjust.ts";
import { faultOfAdjust } from "./adjust-words.ts";
import type { Change } from "./change.ts";
import { changeBy, findPaper } from "./options.ts";
import { parseSize } from "./sizes.ts";
import { parseAperture, parseDistance, parseGrade, parseNumberUpTo } from "./stops.ts";
import { fail, ok } from "../result.ts";
import type { Parse } from "./stops.ts";

/* What can be said of a change, by every command that works an exposure out anew. */

const parseBox: Parse<number> = (text) => {
  const match = /^\s*x?\s*(\d{1,2})\s*$/i.exec(text);
  const number = Number(match?.[1]);
  const { least, most } = limitsOf(paperSchema.shape.number);
  return match && number >= least && number <= most
    ? ok(number)
    : fail({ code: "ERR_NO_NUMBER", typed: text });
};

/** Enlargements, meters' seconds and densities as anybody has them. */
const MOST_TIMES = 60;
const MOST_METER = 3600;
const MOST_DENSITY = 4;

export const CHANGE_OPTIONS = {
  aperture: changeBy(parseAperture).optional().describe("The f-number, like 8 to 11"),
  grade: changeBy(parseGrade).optional().describe("Filter or grade, like 2 to 3 1/2"),
  paper: changeBy(parseBox).optional().describe("Box of paper, like 1 to 2"),
  height: changeBy(parseDistance).optional().describe("From the negative to the paper, like 40 cm to 55 cm"),
  lens: changeBy(parseDistance).optional().describe("From the lens to the paper, like 30 cm to 42 cm"),
  size: changeBy(parseSize).optional().describe("Size of the print, like 8x10 to 11x14"),
  times: changeBy(parseNumberUpTo(MOST_TIMES)).optional().describe("How many times enlarged, like 4 to 8"),
  negative: z
    .enum([...FRAME_SIZES, ...SHEET_FORMATS])
    .optional()
    .describe("What the negative is, so that sizes tell how much it is enlarged"),
  meter: changeBy(parseNumberUpTo(MOST_METER))
    .optional()
    .describe("A light meter on the paper, in seconds: 15 to 12"),
  density: changeBy(parseNumberUpTo(MOST_DENSITY))
    .optional()
    .describe("Density of the place that matters, like 1.5 to 1.9"),
  dry: numberIn(paperSchema.shape.dryDownPercent)
    .optional()
    .describe("Judged wet: how much darker it dries, per cent: 10"),
} as const;

type ChangeInput = z.output<z.ZodObject<typeof CHANGE_OPTIONS>>;

/**
 * @param boxToday what has become of the box, where nobody names another.
 * @throws UserError where a change can't be told, or a box of paper is not known.
 */
export function adjustBy(
  { negative, paper, ...changes }: ChangeInput,
  start: Start,
  context: Context,
  around: Around,
  boxToday?: Changes["paper"],
): Part[] {
  const box = (change: Change<number>): Changes["paper"] => ({
    from: change.from === null ? null : findPaper(context, change.from),
    to: findPaper(context, change.to),
  });
  const given = { ...changes, paper: paper === undefined ? boxToday : box(paper) };
  const parts = adjust(given, start, {
    ...around,
    negative: negative === undefined ? around.negative : negativeMm(negative),
  });
  if (!parts.ok) throw new UserError(parts.fault.code, faultOfAdjust(parts.fault));
  return parts.value;
}
