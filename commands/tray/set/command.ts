import { z } from "zod";
import { defineCommand, UserError } from "../../define.ts";
import { dilutionOption, durationIn, temperatureIn } from "../../speech/quantity.ts";
import { numberIn, textIn, wholeIn } from "../../speech/shaped.ts";
import { BATH_TENTHS_C } from "../../../store/shapes/limits.ts";
import { trayLineSchema, type TrayLine } from "../../../store/shapes/tray-line.ts";
import { isTrayRun } from "../../../store/shapes/run.ts";
import { whoMay } from "../../who.ts";
import { USUAL } from "../usual.ts";
import { callWaiting } from "../../run/turns.ts";
import { saveLine } from "../lines.ts";
import * as words from "./reply.ts";

const { shape } = trayLineSchema;

export const traySet = defineCommand({
  name: "tray set",
  summary: "Set up a line of trays: developer, its times, places, fixing baths",
  options: () => ({
    line: wholeIn(shape.number).default(1).describe("Number of the line; 1 if left out"),
    developer: textIn(shape.developer).optional().describe("The paper developer's name"),
    dilution: dilutionOption.optional().describe("Concentrate + water, like 1+9"),
    rc: durationIn(shape.rcSeconds).optional().describe("Its time for resin-coated paper, like 60 s"),
    fibre: durationIn(shape.fibreSeconds).optional().describe("Its time for fibre paper, like 2 min"),
    at: temperatureIn(BATH_TENTHS_C).optional().describe("The temperature of these times; 20C if left out"),
    per10: numberIn(shape.factorPer10C).optional().describe("Its factor per 10 °C, if its maker states one"),
    factor: numberIn(shape.factor).optional().describe("Develop by first appearance times this factor"),
    stop: shape.stop.optional().describe("What stops the developer"),
    baths: wholeIn(shape.baths).optional().describe("Fixing baths one after the other: 1 or 2"),
    drain: durationIn(shape.drainSeconds).optional().describe("Lift out so long before the end, like 10 s"),
    places: wholeIn(shape.developPlaces).optional().describe("8x10 prints in the developer at once"),
    stopplaces: wholeIn(shape.stopPlaces).optional().describe("8x10 prints in the stop bath at once"),
    fixplaces: wholeIn(shape.fixPlaces).optional().describe("8x10 prints in each fixer at once"),
    washplaces: wholeIn(shape.washPlaces).optional().describe("8x10 prints in the wash at once"),
    remove: z.enum(["yes"]).optional().describe("Take the line off the list"),
  }),
  first: ["developer", "dilution", "rc", "fibre"],
  who: whoMay("tray set"),
  visibility: "private",
  handle({ line: number, remove, ...given }, context) {
    const { stores, class: school } = context;
    const known = school.habits.trayLines.find((each) => each.number === number);
    if (remove === "yes") {
      const isBusy = stores.runs.open(school.id).some((run) => isTrayRun(run) && run.plan.line === number);
      if (isBusy) throw new UserError("ERR_TRAYS_BUSY", words.busy(number));
      const trayLines = school.habits.trayLines.filter((each) => each.number !== number);
      stores.classes.setHabits(school.id, { ...school.habits, trayLines });
      return words.removedReply(number, known !== undefined);
    }
    if (!known && given.developer === undefined)
      throw new UserError("ERR_NO_PAPER_DEVELOPER", words.noName());
    if (!known && school.habits.trayLines.length >= words.MOST_LINES)
      throw new UserError("ERR_TOO_MANY_TRAYS", words.tooMany());
    const line = lineOf(number, given, known);
    saveLine(context, line);
    callWaiting(stores, school.id, context.now);
    return words.savedReply(line, known === undefined);
  },
});

interface Given {
  readonly developer?: string | undefined;
  readonly dilution?: TrayLine["dilution"] | undefined;
  readonly rc?: number | undefined;
  readonly fibre?: number | undefined;
  readonly at?: number | undefined;
  readonly per10?: number | undefined;
  readonly factor?: number | undefined;
  readonly stop?: TrayLine["stop"] | undefined;
  readonly baths?: number | undefined;
  readonly drain?: number | undefined;
  readonly places?: number | undefined;
  readonly stopplaces?: number | undefined;
  readonly fixplaces?: number | undefined;
  readonly washplaces?: number | undefined;
}

/** What was measured of another developer says nothing of this one. */
function lineOf(number: number, given: Given, known: TrayLine | undefined): TrayLine {
  const isOther = known !== undefined && given.developer !== undefined && given.developer !== known.developer;
  const before = { ...USUAL, ...(isOther ? placesOf(known) : known) };
  const dilution = given.dilution ?? before.dilution;
  return {
    number,
    developer: given.developer ?? known?.developer ?? "",
    dilution: { concentrateParts: dilution.concentrateParts, waterParts: dilution.waterParts },
    rcSeconds: given.rc ?? before.rcSeconds,
    fibreSeconds: given.fibre ?? before.fibreSeconds,
    atTenthsC: given.at ?? before.atTenthsC,
    factorPer10C: given.per10 ?? before.factorPer10C,
    factor: given.factor ?? before.factor,
    leastSeconds: before.leastSeconds,
    stainSeconds: before.stainSeconds,
    stop: given.stop ?? before.stop,
    baths: given.baths ?? before.baths,
    drainSeconds: given.drain ?? before.drainSeconds,
    developPlaces: given.places ?? before.developPlaces,
    stopPlaces: given.stopplaces ?? before.stopPlaces,
    fixPlaces: given.fixplaces ?? before.fixPlaces,
    washPlaces: given.washplaces ?? before.washPlaces,
    isUsual: before.isUsual && given.rc === undefined && given.fibre === undefined,
  };
}

/** The trays stay where they are when another developer goes into them. */
const placesOf = ({
  stop,
  baths,
  drainSeconds,
  developPlaces,
  stopPlaces,
  fixPlaces,
  washPlaces,
}: TrayLine): Partial<TrayLine> => ({
  stop,
  baths,
  drainSeconds,
  developPlaces,
  stopPlaces,
  fixPlaces,
  washPlaces,
});
