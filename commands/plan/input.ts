import { z } from "zod";
import type { Context, InputOf } from "../define.ts";
import { developerOption, filmOption, sheetDilutionOption } from "../sheet/options.ts";
import {
  agitationOption,
  durationIn,
  temperatureIn,
  temperatureOption,
  volumeIn,
} from "../speech/quantity.ts";
import { limitsOf, wholeIn } from "../speech/shaped.ts";
import {
  BATH_TENTHS_C,
  CLEARING_SECONDS,
  ROOM_TENTHS_C,
  TANK_ML,
  WATER_TENTHS_C,
} from "../../store/shapes/limits.ts";
import { planSchema } from "../../store/shapes/plan.ts";
import { FRAME_SIZES, FRAMES_135, type FilmFormat, type FrameSize } from "../../store/shapes/film.ts";
import { habitsSchema } from "../../store/shapes/school.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import type { Tank } from "../../store/shapes/tank.ts";
import type { PlanRequest } from "./request.ts";

/* What /plan takes, and what is asked by it. */

const { shape } = planSchema;
const label = z.string().trim().min(1).max(40);
const yesNo = z.enum(["yes", "no"]);

export const planOptions = () => ({
  film: filmOption.describe("The film's name, as on its data sheet"),
  temp: temperatureOption.describe("Temperature of the developer in the tank, like 20C or 68F"),
  developer: developerOption
    .optional()
    .describe("The developer's name; needed if the film has several data sheets"),
  dilution: sheetDilutionOption.optional().describe("Concentrate + water, like 1+9, or stock"),
  ei: wholeIn(shape.exposureIndex)
    .optional()
    .describe("Exposure index the film was shot at; its own speed if left out"),
  tank: z.string().trim().min(1).max(8).optional().describe("The tank's number, like T4"),
  rolls: wholeIn(shape.rolls).default(1).describe("How many films go into the tank"),
  format: shape.format.optional().describe("The film's format; 135 if left out"),
  frame: z
    .enum(FRAME_SIZES)
    .optional()
    .describe("What the camera makes: half frame on 135, 6x4.5 to 6x24 on 120"),
  frames: z.coerce
    .number()
    .multipleOf(0.5)
    .min(0.5)
    .max(limitsOf(shape.frames).most)
    .optional()
    .describe("Frames on each film, a cut one as a half: 36, 37.5; the usual number if left out"),
  sleeve: wholeIn(habitsSchema.shape.stripFrames)
    .optional()
    .describe("Frames in a strip of your sleeves for 135: 4, 5, 6; the class's if left out"),
  volume: volumeIn(TANK_ML)
    .optional()
    .describe("Developer in the tank, like 300 ml; the tank's own if left out"),
  agitation: agitationOption.optional().describe("first/each/every, in seconds, like 30/5/60, or continuous"),
  stop: z.enum(["water", "acid"]).optional().describe("What stops the developer"),
  wash: z.enum(["running", "fill-dump"]).optional().describe("How film is washed"),
  washaid: yesNo.optional().describe("A wash aid is used"),
  clearing: durationIn(CLEARING_SECONDS)
    .optional()
    .describe("The fixer's clearing time as tested, like 45 s"),
  room: temperatureIn(ROOM_TENTHS_C).optional().describe("Room temperature, to allow for the tank's drift"),
  fixtemp: temperatureIn(BATH_TENTHS_C).optional().describe("Temperature of the fixer, if it differs"),
  watertemp: temperatureIn(WATER_TENTHS_C)
    .optional()
    .describe("Temperature of rinse and wash water, if it differs"),
  filmsdone: z.coerce
    .number()
    .int()
    .min(0)
    .max(200)
    .default(0)
    .describe("Films each litre of this developer has done before"),
  also: z
    .string()
    .trim()
    .min(1)
    .max(200)
    .optional()
    .describe("Other films in the same tank, with commas between"),
  devbatch: label.optional().describe("Label of the developer bottle, like B3"),
  fixbatch: label.optional().describe("Label of the fixer bottle, like B4"),
});

export type PlanInput = InputOf<typeof planOptions>;

/** What is asked, with the class's habits and the tank's own where nothing is said. */
export function toRequest(
  input: PlanInput,
  context: Context,
  sheet: Sheet,
  tank: Tank | null,
  others: readonly Sheet[],
): PlanRequest {
  return {
    sheet,
    tenthsC: input.temp,
    exposureIndex: input.ei ?? null,
    tank,
    format: input.format ?? formatOf(input.frame, tank),
    rolls: input.rolls,
    frames: input.frames ?? null,
    frame: input.frame ?? null,
    stripFrames: input.sleeve ?? null,
    volumeMl: input.volume ?? null,
    agitation: input.agitation ?? context.class.habits.agitation,
    stop: input.stop ?? null,
    washMethod: input.wash ?? null,
    washAid: input.washaid === undefined ? null : input.washaid === "yes",
    clearingSeconds: input.clearing ?? null,
    freshClearingSeconds: null,
    roomTenthsC: roomFor(input.room, context, tank),
    fixTenthsC: input.fixtemp ?? null,
    waterTenthsC: input.watertemp ?? null,
    filmsDone: input.filmsdone,
    batches: {
      ...(input.devbatch === undefined ? {} : { develop: input.devbatch }),
      ...(input.fixbatch === undefined ? {} : { fix: input.fixbatch }),
    },
    shortBottles: [],
    others,
  };
}

/** A tank for one format says it; else the frame does: what is no 135 frame lies on 120. */
function formatOf(frame: FrameSize | undefined, tank: Tank | null): FilmFormat {
  if (tank && tank.format !== "any") return tank.format;
  return frame && !(FRAMES_135 as readonly string[]).includes(frame) ? "120" : "135";
}

/** The class's room counts where the tank was measured; else only a room that is named: a guess must not shift a time. */
function roomFor(named: number | undefined, context: Context, tank: Tank | null): number | null {
  if (named !== undefined) return named;
  return tank?.timeConstantSeconds ? context.class.habits.roomTenthsC : null;
}
