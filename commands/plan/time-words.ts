import { inEach } from "../speech/language.ts";
import { formatBothScales, formatSeconds } from "../speech/wording.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import { sheetName } from "../sheet/pick.ts";
import type { DevelopTime } from "./quick.ts";
import { de } from "./words/time.de.ts";
import { en } from "./words/time.en.ts";

/* A developing time as it is said: never without its spread, where it is an estimate. */

const words = inEach({ en, de });

/** `**8:17** at 21 °C (69.8 °F), estimate: 7:50 to 8:40`. */
export const sayTime = ({ seconds, spread }: DevelopTime, tenthsC: number): string =>
  spread
    ? words().between(formatSeconds(seconds), formatBothScales(tenthsC), ...ends(spread))
    : words().at(formatSeconds(seconds), formatBothScales(tenthsC));

/** The same with the sheet it comes from, within a sentence. */
export function sayTimeOf({ seconds, spread }: DevelopTime, tenthsC: number, sheet: Plan["sheet"]): string {
  const [time, temperature] = [formatSeconds(seconds), formatBothScales(tenthsC)];
  const timeAt = spread
    ? words().betweenOf(time, temperature, ...ends(spread))
    : words().at(time, temperature);
  return words().of(timeAt, sheetName(sheet));
}

/** Rounded outwards to 10 s: a spread is no measurement. */
function ends({ lowSeconds, highSeconds }: NonNullable<DevelopTime["spread"]>): [low: string, high: string] {
  return [formatSeconds(Math.floor(lowSeconds / 10) * 10), formatSeconds(Math.ceil(highSeconds / 10) * 10)];
}
