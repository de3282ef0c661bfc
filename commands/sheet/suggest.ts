import type { Dilution, Sheet } from "../../store/shapes/sheet.ts";
import { temperatureRange } from "./time.ts";

/** Times under 5 min may be uneven: makers' warning, from memory. One table prints 3:45, so it is a warning, not a rule. */
export const SHORT_SECONDS = 300;
/** The usual chart range is 18 to 24 °C, from memory; US Army SS0509-8 keeps solutions at 68 to 75 °F. */
export const COOL_TENTHS_C = 180;
export const WARM_TENTHS_C = 240;
/** People set a bath by half degrees. */
const STEP_TENTHS = 5;

export interface BetterTemperature {
  readonly tenthsC: number;
  readonly seconds: number;
  /** Water that brings the concentrate there; null: stock, to be cooled from outside. */
  readonly waterTenthsC: number | null;
}

/** The warmest bath, by half degrees, in which the time is not short; null where even the coolest allowed is. */
export function betterTemperature(
  sheet: Sheet,
  tenthsC: number,
  secondsAt: (celsius: number) => number,
  concentrateTenthsC: number,
): BetterTemperature | null {
  const coolest = Math.max(temperatureRange(sheet).min, COOL_TENTHS_C);
  for (let at = Math.floor(tenthsC / STEP_TENTHS) * STEP_TENTHS; at >= coolest; at -= STEP_TENTHS) {
    const seconds = Math.round(secondsAt(at / 10));
    if (seconds >= SHORT_SECONDS && at < tenthsC) {
      const waterTenthsC = waterTenthsFor(sheet.dilution, at, concentrateTenthsC);
      return {
        tenthsC: at,
        seconds,
        waterTenthsC: waterTenthsC !== null && waterTenthsC >= 0 ? waterTenthsC : null,
      };
    }
  }
  return null;
}

/** The water, tenths °C, that brings a concentrate to the target; null for stock, which is not diluted. */
export function waterTenthsFor(
  { concentrateParts, waterParts }: Dilution,
  targetTenthsC: number,
  concentrateTenthsC: number,
): number | null {
  if (waterParts === 0) return null;
  const parts = concentrateParts + waterParts;
  return Math.round((targetTenthsC * parts - concentrateTenthsC * concentrateParts) / waterParts);
}
