import { trayLineSchema } from "../../../store/shapes/tray-line.ts";
import { BATH_TENTHS_C } from "../../../store/shapes/limits.ts";
import { defineCommand, UserError } from "../../define.ts";
import { durationIn, temperatureIn } from "../../speech/quantity.ts";
import { wholeIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { MOST_TIMES_LEAST } from "../develop.ts";
import { findLine, saveLine } from "../lines.ts";
import { HOUSE_FACTOR_PER_10C, timeAt } from "../rate.ts";
import * as words from "./reply.ts";

const { shape } = trayLineSchema;

export const trayBlack = defineCommand({
  name: "tray black",
  summary: "Note a trial of full black: the least time that gave it, and where stain begins",
  options: () => ({
    least: durationIn(shape.leastSeconds).describe(
      "The shortest of your times that gave full black, like 140 s",
    ),
    stain: durationIn(shape.stainSeconds).optional().describe("The shortest that stained, like 280 s"),
    at: temperatureIn(BATH_TENTHS_C)
      .optional()
      .describe("Temperature of the trial; that of the line's times if left out"),
    line: wholeIn(shape.number).optional().describe("Which line of trays; the first if left out"),
  }),
  who: whoMay("tray black"),
  visibility: "private",
  handle({ least, stain, at, line: number }, context) {
    const line = findLine(context, number);
    if (stain !== undefined && stain <= least) throw new UserError("ERR_STAIN_FIRST", words.stainFirst());
    const atTenthsC = at ?? line.atTenthsC;
    // Kept at the temperature of the line's own times.
    const kept = (seconds: number): number =>
      Math.round(timeAt(seconds, atTenthsC, line.atTenthsC, line.factorPer10C ?? HOUSE_FACTOR_PER_10C));
    const [leastSeconds, stainSeconds] = [kept(least), stain === undefined ? null : kept(stain)];
    const changed = { ...line, leastSeconds, stainSeconds };
    if (!trayLineSchema.safeParse(changed).success)
      throw new UserError("ERR_OUTSIDE", words.outside(leastSeconds));
    saveLine(context, changed);
    return words.blackReply(changed, least, stain ?? null, MOST_TIMES_LEAST * least);
  },
});
