import { z } from "zod";
import { whoMay } from "../../who.ts";
import { defineCommand, UserError } from "../../define.ts";
import { calibrateTimeConstant } from "./calibrate.ts";
import { durationOption, temperatureOption } from "../../speech/quantity.ts";
import { unknownTank } from "../tank-words.ts";
import * as words from "./reply.ts";
import { within } from "../../speech/limits.ts";
import { BATH_TENTHS_C, ROOM_TENTHS_C } from "../../../store/shapes/limits.ts";

export const tankMeasure = defineCommand({
  name: "tank measure",
  summary: "How fast a tank follows the room, from two readings in water left alone",
  options: z.object({
    tank: z.coerce.number().int().min(1).max(999).describe("Tank number"),
    first: within(temperatureOption, BATH_TENTHS_C, "tenthsC").describe(
      "First reading, at least 1.5 °C off the room: 24",
    ),
    second: within(temperatureOption, BATH_TENTHS_C, "tenthsC").describe("Second reading: 22.5"),
    room: within(temperatureOption, ROOM_TENTHS_C, "tenthsC").describe("The room: 18"),
    apart: durationOption.describe("Time between the two readings: 20 min"),
  }),
  who: whoMay("tank measure"),
  visibility: "private",
  handle({ tank: number, first, second, room, apart }, context) {
    const { tanks } = context.stores;
    const tank = tanks.find(context.class.id, number);
    if (!tank) {
      const known = tanks.list(context.class.id).map((each) => each.number);
      throw new UserError("ERR_UNKNOWN_TANK", unknownTank(number, known));
    }
    const seconds = calibrateTimeConstant(first, second, room, apart);
    if (typeof seconds === "string") throw new UserError(seconds, words.calibrationFault(seconds));
    if (seconds < 60 || seconds > 36_000) throw new UserError("ERR_CALIBRATION_ODD", words.calibrationOdd(seconds));
    const measured = { ...tank, timeConstantSeconds: seconds };
    tanks.save(context.class.id, measured);
    return words.measuredReply(measured, seconds);
  },
});
