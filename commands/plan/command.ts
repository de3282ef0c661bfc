import { z } from "zod";
import { bathsFor, withBottles } from "../batch/for-plan.ts";
import { completeBatchOf } from "../batch/options.ts";
import { defineCommand, UserError, type Completer, type Context } from "../define.ts";
import { wholeIn } from "../speech/shaped.ts";
import {
  agitationOption,
  durationIn,
  temperatureIn,
  temperatureOption,
  volumeIn,
} from "../speech/quantity.ts";
import {
  completeDeveloper,
  completeDilution,
  completeFilm,
  developerOption,
  filmOption,
  sheetDilutionOption,
  sheetsOf,
} from "../sheet/options.ts";
import { matchSheets } from "../sheet/find.ts";
import { pickSheet } from "../sheet/pick.ts";
import {
  BATH_TENTHS_C,
  CLEARING_SECONDS,
  ROOM_TENTHS_C,
  TANK_ML,
  WATER_TENTHS_C,
} from "../../store/shapes/limits.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import { planSchema } from "../../store/shapes/plan.ts";
import type { Tank } from "../../store/shapes/tank.ts";
import { parseNumber } from "../speech/wording.ts";
import { isSameBath } from "./develop.ts";
import { sayPlanFault } from "./fault-words.ts";
import { makePlan } from "./process.ts";
import type { PlanRequest } from "./request.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import * as words from "./reply.ts";

const { shape } = planSchema;
const label = z.string().trim().min(1).max(40);
const yesNo = z.enum(["yes", "no"]);

const completeTank: Completer = (typed, context) =>
  context.stores.tanks
    .list(context.class.id)
    .map((tank) => ({
      label: words.tankOffer(tank.number, tank.reels, tank.volumeMl, Boolean(tank.condition)),
      value: String(tank.number),
    }))
    .filter((each) => each.label.toLowerCase().includes(typed.toLowerCase()));

const options = z.object({
  film: filmOption.describe("The film's name, as on its sheet"),
  temp: temperatureOption.describe("Temperature of the developer in the tank, like 20C or 68F"),
  developer: developerOption
    .optional()
    .describe("The developer's name; needed if the film has several sheets"),
  dilution: sheetDilutionOption.optional().describe("Concentrate + water, like 1+9, or stock"),
  ei: wholeIn(shape.exposureIndex)
    .optional()
    .describe("Exposure index the film was shot at; its own speed if left out"),
  tank: z.string().trim().min(1).max(8).optional().describe("The tank's number, like T4"),
  rolls: wholeIn(shape.rolls).default(1).describe("How many films go into the tank"),
  format: shape.format.optional().describe("The film's format; 135 if left out"),
  frames: wholeIn(shape.frames).optional().describe("Frames on each film; 36 on 135, 12 on 120"),
  volume: volumeIn(TANK_ML)
    .optional()
    .describe("Developer in the tank, like 300 ml; the tank's own if left out"),
  agitation: agitationOption.optional().describe("first/each/every, in seconds, like 30/5/60, or continuous"),
  stop: z.enum(["water", "acid"]).optional().describe("water: two rinses; acid: a stop bath"),
  wash: z.enum(["running", "fill-dump"]).optional().describe("running water, or fill and empty"),
  washaid: yesNo.optional().describe("yes: a wash aid is used"),
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

export const plan = defineCommand({
  name: "plan",
  summary: "Work out times, volumes and steps for one tank of film",
  options,
  who: "student",
  visibility: "private",
  complete: {
    film: completeFilm,
    developer: completeDeveloper,
    dilution: completeDilution,
    tank: completeTank,
    devbatch: completeBatchOf("developer"),
    fixbatch: completeBatchOf("fixer"),
  },
  handle(input, context) {
    const picked = pickSheet(sheetsOf(context), input);
    if (!picked.ok) throw new UserError(picked.fault.code, picked.fault.text);
    const tank = findTank(context, input.tank);
    const made = makeWithBaths(toRequest(input, context, picked.value, tank), context);
    if (!made.ok) throw new UserError(made.fault.code, sayPlanFault(made.fault));
    const { number } = context.stores.plans.add(context.class.id, context.person.id, made.value, context.now);
    const holds = whatBottleHolds(context, made.value);
    return words.plannedReply(number, made.value, input.dilution?.wasRatio ?? false, holds);
  },
});

function whatBottleHolds({ stores, class: { id } }: Context, { steps }: Plan): words.BottleHolds {
  const bottle = steps.find(({ kind }) => kind === "develop")?.batch ?? null;
  const number = bottle === null ? undefined : parseNumber("batch", bottle);
  const batch = number === undefined ? undefined : stores.batches.find(id, number);
  if (batch?.kind !== "developer") return null;
  return batch.dilution.waterParts === 0 ? "stock" : "bath";
}

/** Made once to know its baths, then with the bottles they come from: a fixer's state decides how long it must act. */
function makeWithBaths(request: PlanRequest, context: Context): ReturnType<typeof makePlan> {
  const { habits } = context.class;
  const bare = makePlan(request, habits);
  if (!bare.ok) return bare;
  const baths = bathsFor(context, bare.value, request.batches);
  const clearingSeconds = request.clearingSeconds ?? baths.clearingSeconds;
  const filmsDone = request.filmsDone === 0 ? baths.filmsDone : request.filmsDone;
  const { batches, freshClearingSeconds } = baths;
  const made = makePlan({ ...request, batches, clearingSeconds, freshClearingSeconds, filmsDone }, habits);
  return made.ok ? { ok: true, value: withBottles(made.value, baths) } : made;
}

type PlanInput = z.output<typeof options>;

function toRequest(input: PlanInput, context: Context, sheet: Sheet, tank: Tank | null): PlanRequest {
  const tankFormat = tank && tank.format !== "any" ? tank.format : "135";
  return {
    sheet,
    tenthsC: input.temp,
    exposureIndex: input.ei ?? null,
    tank,
    format: input.format ?? tankFormat,
    rolls: input.rolls,
    frames: input.frames ?? null,
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
    others: otherSheets(input.also, context, sheet),
  };
}

/** The class's room counts where the tank was measured; else only a room that is named: a guess must not shift a time. */
function roomFor(named: number | undefined, context: Context, tank: Tank | null): number | null {
  if (named !== undefined) return named;
  return tank?.timeConstantSeconds ? context.class.habits.roomTenthsC : null;
}

function findTank(context: Context, text: string | undefined): Tank | null {
  if (text === undefined) return null;
  const number = parseNumber("tank", text);
  const tank = number === undefined ? undefined : context.stores.tanks.find(context.class.id, number);
  if (!tank) throw new UserError("ERR_UNKNOWN_TANK", words.noTank(text));
  return tank;
}

function otherSheets(also: string | undefined, context: Context, sheet: Sheet): Sheet[] {
  const films = (also ?? "").split(",").map((film) => film.trim());
  return films
    .filter((film) => film !== "")
    .map((film) => {
      const bath = { film, developer: sheet.developer, dilution: sheet.dilution };
      const other = matchSheets(sheetsOf(context), bath)[0];
      if (!other || !isSameBath(sheet, other))
        throw new UserError("ERR_NOT_SAME_BATH", words.notSameBath(film));
      return other;
    });
}

export const planCurve = defineCommand({
  name: "plan curve",
  summary: "Show a plan's curve, its steps as a strip, and what each number rests on",
  options: z.object({
    plan: z
      .string()
      .trim()
      .min(1)
      .max(12)
      .optional()
      .describe("Which plan, like P12; your newest if left out"),
  }),
  who: "student",
  visibility: "private",
  handle({ plan: text }, context) {
    const { stores, person } = context;
    const number = text === undefined ? undefined : parseNumber("plan", text);
    const stored =
      text === undefined
        ? stores.plans.latest(context.class.id, person.id)
        : stores.plans.find(context.class.id, number ?? 0);
    if (!stored)
      throw new UserError("ERR_UNKNOWN_PLAN", text === undefined ? words.noPlanYet() : words.noPlan(text));
    return words.curveReply(stored.number, stored.plan);
  },
});
