import type { CalibrationFault } from "./calibrate.ts";
import type { Reply } from "../../define.ts";
import type { Tank } from "../../../store/shapes/tank.ts";
import { inEach } from "../../speech/language.ts";
import { listAction } from "../tank-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export function measuredReply(tank: Tank, seconds: number): Reply {
  return {
    text: words().measured(tank.number, seconds),
    fields: { tank: tank.number, timeConstantSeconds: seconds },
    actions: [listAction()],
  };
}

export const calibrationFault = (fault: CalibrationFault): string => words().calibration[fault];

export const calibrationOdd = (seconds: number): string => words().odd(seconds);
