import { z } from "zod";
import { whoMay } from "../who.ts";
import { defineCommand, UserError, type Completer, type Context } from "../define.ts";
import { refuseUnreadable, setAsideNumber, withLeftOut } from "../unreadable.ts";
import { titleOf } from "../sheet/step-words.ts";
import { textIn, wholeIn } from "../speech/shaped.ts";
import { durationIn, volumeIn } from "../speech/quantity.ts";
import { currentStep, type Run } from "../../store/shapes/run.ts";
import { makeNumber } from "../speech/wording.ts";
import { holderOf } from "./holder.ts";
import { parseNumbers } from "./numbers.ts";
import { unknownTank } from "./tank-words.ts";
import * as words from "./reply.ts";
import { TANK_FORMATS, tankSchema, type Tank } from "../../store/shapes/tank.ts";

const { shape } = tankSchema;
const tankOption = wholeIn(shape.number);

const completeTank: Completer = (typed, context) =>
  context.stores.tanks
    .list(context.class.id)
    .filter(({ number }) => String(number).startsWith(typed.trim()))
    .map(({ number, condition }) => ({
      label: condition === null ? `${number}` : `${number} (${condition})`.slice(0, 100),
      value: `${number}`,
    }));

export const tankList = defineCommand({
  name: "tank list",
  summary: "The class's tanks: size, condition, and who has them now",
  options: () => ({}),
  who: whoMay("tank list"),
  visibility: "private",
  handle: (_, context) => withLeftOut(context, ["tank"], words.listReply(tanksNow(context))),
});

export const tankAdd = defineCommand({
  name: "tank add",
  summary: "Add tanks, or set anew what is known of them",
  options: () => ({
    numbers: z.string().min(1).max(100).describe("Which numbers, like 1-12 or 1, 2, 5"),
    reels: wholeIn(shape.reels).default(1).describe("How many reels each one takes"),
    volume: volumeIn(shape.volumeMl).describe(
      "What covers all its reels: 300 ml, 10 oz (read it on the tank)",
    ),
    format: z.enum(TANK_FORMATS).default("any").describe("Film it takes"),
    cooling: durationIn(shape.timeConstantSeconds)
      .optional()
      .describe("How long it needs for 63 % of the way to the room, if you measured it: 45 min"),
  }),
  who: whoMay("tank add"),
  visibility: "private",
  handle({ numbers: text, reels, volume, format, cooling }, context) {
    const numbers = parseNumbers(text);
    if (!numbers.ok) throw new UserError(numbers.fault.code, words.numbersFaultWords(numbers.fault));
    const { tanks } = context.stores;
    const known = numbers.value.filter((number) => tanks.find(context.class.id, number));
    const added = numbers.value.map((number): Tank => ({
      number,
      reels,
      volumeMl: volume,
      format,
      condition: tanks.find(context.class.id, number)?.condition ?? null,
      timeConstantSeconds: cooling ?? null,
    }));
    for (const tank of added) tanks.save(context.class.id, tank);
    return words.addedReply(added, known);
  },
});

export const tankRemove = defineCommand({
  name: "tank remove",
  summary: "Take a tank off the list",
  options: () => ({ tank: tankOption.describe("Tank number") }),
  who: whoMay("tank remove"),
  visibility: "private",
  complete: { tank: completeTank },
  handle({ tank: number }, context) {
    const setAside = setAsideNumber(context, "tank", number);
    if (setAside) return setAside;
    findTank(context, number);
    const use = usesOf(context).get(number);
    if (use !== undefined) throw new UserError("ERR_TANK_BUSY", words.tankInUse(number, use));
    context.stores.tanks.remove(context.class.id, number);
    return words.removedReply(number);
  },
});

export const tankReport = defineCommand({
  name: "tank report",
  summary: "Say what is wrong with a tank (it leaks, a reel jams)",
  options: () => ({
    tank: tankOption.describe("Tank number"),
    fault: textIn(shape.condition).describe("What is wrong, in a few words"),
  }),
  who: whoMay("tank report"),
  visibility: "class",
  complete: { tank: completeTank },
  handle({ tank: number, fault }, context) {
    const tank = { ...findTank(context, number), condition: fault };
    context.stores.tanks.save(context.class.id, tank);
    return words.reportedReply(tank);
  },
});

export const tankClear = defineCommand({
  name: "tank clear",
  summary: "Say that a tank is in order again",
  options: () => ({ tank: tankOption.describe("Tank number") }),
  who: whoMay("tank clear"),
  visibility: "class",
  complete: { tank: completeTank },
  handle({ tank: number }, context) {
    const before = findTank(context, number);
    const tank = { ...before, condition: null };
    context.stores.tanks.save(context.class.id, tank);
    return words.clearedReply(tank, before.condition);
  },
});

function findTank(context: Context, number: number): Tank {
  const tank = context.stores.tanks.find(context.class.id, number);
  if (tank) return tank;
  refuseUnreadable(context, "tank", number);
  const known = context.stores.tanks.list(context.class.id).map((each) => each.number);
  throw new UserError("ERR_UNKNOWN_TANK", unknownTank(number, known));
}

function tanksNow(context: Context): words.TankNow[] {
  const uses = usesOf(context);
  return context.stores.tanks
    .list(context.class.id)
    .map((tank) => ({ tank, use: uses.get(tank.number) ?? null }));
}

/** Who has which tank. */
function usesOf(context: Context): Map<number, string> {
  const uses = new Map<number, string>();
  const open = context.stores.runs.open(context.class.id);
  for (const { number } of context.stores.tanks.list(context.class.id)) {
    const holder = holderOf(open, number);
    const step = holder && currentStep(holder);
    if (holder && step) uses.set(number, useOf(context, holder, titleOf(step)));
  }
  return uses;
}

function useOf({ stores, class: { id } }: Context, run: Run, step: string): string {
  const owner = stores.members.find(id, run.personId)?.name;
  return words.useWords(makeNumber("run", run.number), owner, step);
}
