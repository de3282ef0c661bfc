import { whoMay } from "../../who.ts";
import { defineCommand, UserError } from "../../define.ts";
import { calibrateTimeConstant } from "./calibrate.ts";
import { durationOption, temperatureIn } from "../../speech/quantity.ts";
import { limitsOf, wholeIn } from "../../speech/shaped.ts";
import { BATH_TENTHS_C, ROOM_TENTHS_C } from "../../../store/shapes/limits.ts";
import { tankSchema } from "../../../store/shapes/tank.ts";
import { unknownTank } from "../tank-words.ts";
import * as words from "./reply.ts";

export const tankMeasure = defineCommand({
  name: "tank measure",
  summary: "How fast a tank follows the room, from two readings in water left alone",
  options: () => ({
    tank: wholeIn(tankSchema.shape.number).describe("Tank number"),
    first: temperatureIn(BATH_TENTHS_C).describe("First reading, at least 1.5 °C off the room: 24"),
    second: temperatureIn(BATH_TENTHS_C).describe("Second reading: 22.5"),
    room: temperatureIn(ROOM_TENTHS_C).describe("The room: 18"),
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
    const { least, most } = limitsOf(tankSchema.shape.timeConstantSeconds);
    if (seconds < least || seconds > most)
      throw new UserError("ERR_CALIBRATION_ODD", words.calibrationOdd(seconds));
    const measured = { ...tank, timeConstantSeconds: seconds };
    tanks.save(context.class.id, measured);
    return words.measuredReply(measured, seconds);
  },
});
