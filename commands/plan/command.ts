import { z } from "zod";
import { bathsFor, withBottles } from "../batch/for-plan.ts";
import { completeBatchOf } from "../batch/options.ts";
import { defineCommand, UserError, type Completer, type Context } from "../define.ts";
import { ownerOf } from "../run/starting.ts";
import { completeDeveloper, completeDilution, completeFilm, sheetsOf } from "../sheet/options.ts";
import { matchSheets } from "../sheet/find.ts";
import { insteadOf, pickSheet } from "../sheet/pick.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import type { Tank } from "../../store/shapes/tank.ts";
import { makeNumber, parseNumber } from "../speech/wording.ts";
import { holderOf } from "../tank/holder.ts";
import { isSameBath } from "./develop.ts";
import { sayPlanFault } from "./fault-words.ts";
import { planOptions, toRequest, type PlanInput } from "./input.ts";
import { makePlan } from "./process.ts";
import { developTime, type DevelopTime } from "./quick.ts";
import type { PlanRequest } from "./request.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import { isFilmPlan, isTrayPlan } from "../../store/shapes/tray.ts";
import { sayTaken } from "./taken.ts";
import * as words from "./reply.ts";

/** Offered where the tank named is none. */
const MOST_TANKS = 5;

const completeTank: Completer = (typed, context) =>
  context.stores.tanks
    .list(context.class.id)
    .map((tank) => ({
      label: words.tankOffer(tank.number, tank.reels, tank.volumeMl, Boolean(tank.condition)),
      value: String(tank.number),
    }))
    .filter((each) => each.label.toLowerCase().includes(typed.toLowerCase()));

export const plan = defineCommand({
  name: "plan",
  summary: "Work out times, volumes and steps for one tank of film",
  options: planOptions,
  first: ["developer", "tank"],
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
    const sheet = findSheet(context, input);
    const made = telling(context, sheet, input, () => {
      const tank = findTank(context, input.tank);
      const others = otherSheets(input.also, context, sheet);
      const result = makeWithBaths(toRequest(input, context, sheet, tank, others), context);
      if (!result.ok) throw new UserError(result.fault.code, sayPlanFault(result.fault));
      return result.value;
    });
    const { number } = context.stores.plans.add(context.class.id, context.person.id, made, context.now);
    return words.plannedReply(number, made, {
      wasRatio: input.dilution?.wasRatio ?? false,
      bottleHolds: whatBottleHolds(context, made),
      taken: whoHasTank(context, made),
    });
  },
});

/** Where several sheets fit, each is a button with its time. */
function findSheet(context: Context, input: PlanInput): Sheet {
  const picked = pickSheet(sheetsOf(context), input);
  if (picked.ok) return picked.value;
  const { code, text } = picked.fault;
  const labelOf = (sheet: Sheet): string =>
    words.sheetKey(sheet, timeAsked(context, sheet, input)?.seconds ?? null);
  throw new UserError(code, text, [], { instead: insteadOf(picked.fault, labelOf) });
}

/** Whatever hinders this plan, the time is told first: nobody stands there without one. */
function telling<T>(context: Context, sheet: Sheet, input: PlanInput, work: () => T): T {
  try {
    return work();
  } catch (error) {
    // A developer that is used once has no time for its second film: then that of the first.
    const time = timeAsked(context, sheet, input) ?? timeAsked(context, sheet, { ...input, filmsdone: 0 });
    if (!(error instanceof UserError) || time === null) throw error;
    const text = words.timeAnyway(time, sheet, input.temp, error.message);
    throw new UserError(error.code, text, error.actions, error.mending);
  }
}

/** By all that was asked, but for the bottles and the tank. */
function timeAsked({ class: { habits } }: Context, sheet: Sheet, input: PlanInput): DevelopTime | null {
  const { temp, ei = null, agitation = null, room: roomTenthsC = null, filmsdone: filmsDone } = input;
  return developTime(sheet, temp, { exposureIndex: ei, agitation, roomTenthsC, filmsDone }, habits);
}

function whoHasTank(context: Context, { tank }: Plan): string | null {
  const holder = tank === null ? undefined : holderOf(context.stores.runs.open(context.class.id), tank);
  return tank === null || !holder ? null : sayTaken(tank, holder, ownerOf(context, holder), context.now);
}

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
  const { batches, freshClearingSeconds, shortBottles } = baths;
  const made = makePlan(
    { ...request, batches, shortBottles, clearingSeconds, freshClearingSeconds, filmsDone },
    habits,
  );
  return made.ok ? { ok: true, value: withBottles(made.value, baths) } : made;
}

function findTank(context: Context, text: string | undefined): Tank | null {
  if (text === undefined) return null;
  const number = parseNumber("tank", text);
  const tank = number === undefined ? undefined : context.stores.tanks.find(context.class.id, number);
  if (!tank) throw unknownTank(context, text);
  return tank;
}

function unknownTank({ stores, class: { id } }: Context, text: string): UserError {
  const instead = stores.tanks
    .list(id)
    .filter(({ condition }) => condition === null)
    .slice(0, MOST_TANKS)
    .map(({ number }) => ({ label: words.tankKey(number), options: { tank: makeNumber("tank", number) } }));
  return new UserError("ERR_UNKNOWN_TANK", words.noTank(text), [], { instead });
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
  options: () => ({
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
    const { plan: made, number: madeNumber } = stored;
    if (isFilmPlan(made)) return words.curveReply(madeNumber, made);
    if (isTrayPlan(made)) return words.printsRestReply(madeNumber, made);
    throw new UserError("ERR_UNKNOWN_PLAN", words.noPlan(text ?? ""));
  },
});
