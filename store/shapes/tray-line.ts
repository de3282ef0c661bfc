import { z } from "zod";
import { BATH_TENTHS_C } from "./limits.ts";
import { dilutionSchema } from "./sheet.ts";

/* A line of trays, as the class has set it up, and the lamp that lights it. */

const tenthsC = z.int().min(BATH_TENTHS_C.least).max(BATH_TENTHS_C.most);
/** A print in the developer. */
export const printSecondsSchema = z.int().min(15).max(1800);
/** Sheets of 8x10 in that lie in a tray at once without lying on each other. */
const places = z.int().min(1).max(60);

export const trayLineSchema = z.object({
  number: z.int().min(1).max(99),
  /** The paper developer's name on its pack. */
  developer: z.string().min(1).max(60),
  dilution: dilutionSchema,
  /** Its times at `atTenthsC`, for each kind of paper. */
  rcSeconds: printSecondsSchema,
  fibreSeconds: printSecondsSchema,
  atTenthsC: tenthsC,
  /** The developer's own factor per 10 °C; null: nobody has stated one. */
  factorPer10C: z.number().min(1).max(6).nullable(),
  /** Of first appearance, where the class develops by it; null: by time. */
  factor: z.number().min(1).max(60).nullable(),
  /** The least time that gave full black in the class's own trial, at `atTenthsC`, and the time that began to stain. */
  leastSeconds: printSecondsSchema.nullable(),
  stainSeconds: printSecondsSchema.nullable(),
  stop: z.enum(["acid", "water"]),
  /** Fixing baths one after the other. */
  baths: z.int().min(1).max(2),
  /** Before the end of a bath, so that the print drains within its time. */
  drainSeconds: z.int().min(0).max(30),
  developPlaces: places,
  stopPlaces: places,
  fixPlaces: places,
  washPlaces: places,
  /** Nobody has given times of this developer's: the usual ones stand. */
  isUsual: z.boolean(),
});
export type TrayLine = z.output<typeof trayLineSchema>;
