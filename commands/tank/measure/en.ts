import { saySeconds } from "../../speech/wording.ts";
import type { CalibrationFault } from "./calibrate.ts";

export const en = {
  measured: (number: number, seconds: number) =>
    `**${saySeconds(seconds)}**: in this time tank ${number} goes 63 % of the way to the room. Plans for it allow for that where \`room:\` is given.`,
  calibration: {
    ERR_TOO_NEAR_ROOM:
      "The readings are too near to the room to tell anything. Begin at least 1.5 °C off it, and end on the same side.",
    ERR_WRONG_WAY: "The water moved away from the room. Check the two readings and the room's.",
    ERR_NO_CHANGE: "The two readings are alike. Wait longer between them, or start farther from the room.",
  } satisfies Record<CalibrationFault, string> as Readonly<Record<CalibrationFault, string>>,
  odd: (seconds: number) =>
    `That would be ${saySeconds(seconds)}, which no tank does. Check the readings and the time between them.`,
};
export type MeasureWords = typeof en;
