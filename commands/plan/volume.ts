import { fail, ok, type Result } from "../result.ts";
import type { Dilution, Sheet } from "../../store/shapes/sheet.ts";
import type { Tank } from "../../store/shapes/tank.ts";
import type { Plan } from "../../store/shapes/plan.ts";

/* How much goes into the tank, of what. */

export type Format = Plan["format"];

/**
 * ml for one film where no tank is named. 135: 10 US oz (class notes, transcribed); 120: from memory, 500 to 650; a sheet of
 * 4x5: a 12-sheet tank needs about 1 l (encyclopedia). Read the tank: what is cast into its lid counts more.
 */
export const ML_PER_FILM = { "135": 300, "120": 500, "4x5": 84 } as const satisfies Record<Format, number>;
/** A tank for sheets needs this much even for one. Common practice, no source. */
const LEAST_SHEET_TANK_ML = 500;

/** Film area in units of 80 sq in: one 135-36 or one 120 is 1, a sheet of 4x5 a quarter. */
export const UNITS_PER_FILM = { "135": 1, "120": 1, "4x5": 0.25 } as const satisfies Record<Format, number>;

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
  | { readonly code: "ERR_NOT_COVERED"; readonly volumeMl: number; readonly neededMl: number };

/** Working-strength ml: the volume asked for, if it covers the film; else the tank's; else what the films need. */
export function volumeFor(
  tank: Tank | null,
  format: Format,
  rolls: number,
  askedMl: number | null,
): Result<number, VolumeFault> {
  if (tank) {
    if (tank.format !== "any" && tank.format !== format)
      return fail({ code: "ERR_WRONG_FORMAT", format, takes: tank.format, tank: tank.number });
    if (rolls > tank.reels && format !== "4x5")
      return fail({ code: "ERR_TOO_MANY_ROLLS", rolls, reels: tank.reels, tank: tank.number });
  }
  const full = tank ? tank.volumeMl : untankedMl(format, rolls);
  if (askedMl === null) return ok(full);
  // Fewer films lie on the lower reels: the tank's volume shared out among its reels covers them.
  const neededMl = tank && format !== "4x5" ? Math.ceil((full * rolls) / tank.reels) : full;
  return askedMl < neededMl ? fail({ code: "ERR_NOT_COVERED", volumeMl: askedMl, neededMl }) : ok(askedMl);
}

function untankedMl(format: Format, rolls: number): number {
  const ml = ML_PER_FILM[format] * rolls;
  return format === "4x5" ? Math.max(LEAST_SHEET_TANK_ML, ml) : ml;
}

/** Whole ml of concentrate and water; they sum to the volume. */
export function splitVolume(
  volumeMl: number,
  { concentrateParts, waterParts }: Dilution,
): { concentrateMl: number; waterMl: number } {
  const concentrateMl = Math.round((volumeMl * concentrateParts) / (concentrateParts + waterParts));
  return { concentrateMl, waterMl: volumeMl - concentrateMl };
}

/** The volume at which there is enough concentrate or stock for all films; null where the sheet asks for none. */
export function volumeForConcentrate(sheet: Sheet, format: Format, rolls: number): number | null {
  if (sheet.minConcentrateMl === null) return null;
  const { concentrateParts, waterParts } = sheet.dilution;
  const neededMl = Math.ceil(sheet.minConcentrateMl * UNITS_PER_FILM[format] * rolls);
  return Math.ceil((neededMl * (concentrateParts + waterParts)) / concentrateParts);
}
