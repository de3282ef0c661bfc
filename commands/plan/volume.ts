import { isSheetFilm } from "../../store/shapes/film.ts";
import { unitsOf } from "./frames.ts";
import { fail, ok, type Result } from "../result.ts";
import { leastMeasuredMl, measurableMl, minusMl, type MeasureStep } from "../speech/tenths.ts";
import type { Dilution, Sheet } from "../../store/shapes/sheet.ts";
import type { Tank } from "../../store/shapes/tank.ts";
import type { Plan } from "../../store/shapes/plan.ts";

/* How much goes into the tank, of what. */

export type Format = Plan["format"];

/**
 * ml for one film where no tank is named. 135: 10 US oz (class notes, transcribed); 120: from memory, 500 to 650; a sheet of
 * 4x5: a 12-sheet tank needs about 1 l (encyclopedia). Read the tank: what is cast into its lid counts more.
 */
export const ML_PER_FILM = {
  "135": 300,
  "120": 500,
  // The same spiral.
  "220": 500,
  "4x5": 84,
  // By their area against 4x5.
  "9x12": 70,
  "5x7": 147,
  "13x18": 152,
  "8x10": 336,
} as const satisfies Record<Format, number>;
/** A tank for sheets needs this much even for one. Common practice, no source. */
const LEAST_SHEET_TANK_ML = 500;

export type VolumeFault =
  | {
      readonly code: "ERR_TOO_MANY_ROLLS";
      readonly rolls: number;
      readonly reels: number;
      readonly tank: number;
    }
  | {
      readonly code: "ERR_WRONG_FORMAT";
      readonly format: Format;
      readonly takes: string;
      readonly tank: number;
    }
  | { readonly code: "ERR_NOT_COVERED"; readonly volumeMl: number; readonly neededMl: number }
  | {
      readonly code: "ERR_NO_CONCENTRATE";
      readonly volumeMl: number;
      readonly dilution: Dilution;
      readonly leastMl: number;
    };

/**
 * Working-strength ml: the volume asked for, if it covers the film; else the tank's; else what films usually need. What
 * covers the film is the tank's own fact: without a tank nobody but its owner knows, and any volume is taken.
 */
export function volumeFor(
  tank: Tank | null,
  format: Format,
  rolls: number,
  askedMl: number | null,
): Result<number, VolumeFault> {
  if (tank) {
    // 220 is 120 on a longer film: it lies on the same spiral.
    if (tank.format !== "any" && tank.format !== (format === "220" ? "120" : format))
      return fail({ code: "ERR_WRONG_FORMAT", format, takes: tank.format, tank: tank.number });
    if (rolls > tank.reels && !isSheetFilm(format))
      return fail({ code: "ERR_TOO_MANY_ROLLS", rolls, reels: tank.reels, tank: tank.number });
  }
  if (!tank) return ok(askedMl ?? usualMl(format, rolls));
  const full = tank.volumeMl;
  if (askedMl === null) return ok(full);
  // Fewer films lie on the lower reels: the tank's volume shared out among its reels covers them.
  const neededMl = !isSheetFilm(format) ? Math.ceil((full * rolls) / tank.reels) : full;
  return askedMl < neededMl ? fail({ code: "ERR_NOT_COVERED", volumeMl: askedMl, neededMl }) : ok(askedMl);
}

/** What covers so many films in most tanks. */
export function usualMl(format: Format, rolls: number): number {
  const ml = ML_PER_FILM[format] * rolls;
  return isSheetFilm(format) ? Math.max(LEAST_SHEET_TANK_ML, ml) : ml;
}

/** ml of concentrate, as they can be measured (to 0.1 ml where it is little), and of water; they sum to the volume. */
export function splitVolume(
  volumeMl: number,
  { concentrateParts, waterParts }: Dilution,
  stepMl: MeasureStep = null,
): { concentrateMl: number; waterMl: number } {
  // Stock is not measured out of anything: the whole bath is it.
  if (waterParts === 0) return { concentrateMl: volumeMl, waterMl: 0 };
  const exactMl = (volumeMl * concentrateParts) / (concentrateParts + waterParts);
  const concentrateMl = Math.min(volumeMl, measurableMl(exactMl, stepMl));
  return { concentrateMl, waterMl: minusMl(volumeMl, concentrateMl) };
}

/** How much stronger than asked for the measured mix is, as a share: 0.03 is 3 % too strong, -0.03 too weak. */
export function strengthOff(volumeMl: number, dilution: Dilution, stepMl: MeasureStep = null): number {
  const { concentrateParts, waterParts } = dilution;
  const exactMl = (volumeMl * concentrateParts) / (concentrateParts + waterParts);
  return splitVolume(volumeMl, dilution, stepMl).concentrateMl / exactMl - 1;
}

/** The least volume whose concentrate can be measured. */
export function leastVolumeMl(
  { concentrateParts, waterParts }: Dilution,
  stepMl: MeasureStep = null,
): number {
  return Math.ceil((leastMeasuredMl(stepMl) * (concentrateParts + waterParts)) / concentrateParts);
}

/** The volume at which there is enough concentrate or stock for all films; null where the sheet asks for none. */
export function volumeForConcentrate(sheet: Sheet, format: Format, rolls: number): number | null {
  if (sheet.minConcentrateMl === null) return null;
  const { concentrateParts, waterParts } = sheet.dilution;
  const neededMl = Math.ceil(sheet.minConcentrateMl * unitsOf(format) * rolls);
  return Math.ceil((neededMl * (concentrateParts + waterParts)) / concentrateParts);
}
