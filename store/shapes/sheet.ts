import { z } from "zod";

/**
 * One published or tried time. Dilution stands in the sheet, not here: a sheet is one film in one developer at
 * one dilution.
 */
export const pointSchema = z.object({
  tenthsC: z.int().min(50).max(450),
  exposureIndex: z.int().min(1).max(102_400),
  seconds: z.int().min(15).max(10_800),
  source: z.string().min(1).max(200),
});
export type Point = z.output<typeof pointSchema>;

/** Dilution as parts: `1+9` is one part concentrate and nine of water; `stock` is `1+0`. */
export const dilutionSchema = z.object({
  concentrateParts: z.int().min(1).max(100),
  waterParts: z.int().min(0).max(1000),
});
export type Dilution = z.output<typeof dilutionSchema>;

/**
 * The maker's rule for using a developer again: after each `everyFilms` films in a litre the time grows by
 * `addPercent` of the sheet's time and by `addSeconds`; at `maxFilms` in a litre it is used up.
 */
export const reuseSchema = z.object({
  everyFilms: z.int().min(1).max(100),
  addPercent: z.int().min(0).max(100),
  addSeconds: z.int().min(0).max(600),
  maxFilms: z.int().min(1).max(200),
});
export type Reuse = z.output<typeof reuseSchema>;

export const sheetSchema = z.object({
  film: z.string().min(1).max(60),
  developer: z.string().min(1).max(60),
  dilution: dilutionSchema,
  /** The film's own speed; the exposure index of a plan that names none. */
  boxSpeed: z.int().min(1).max(102_400),
  points: z.array(pointSchema).min(1).max(200),
  /** The scheme the times assume. */
  agitation: z.object({
    initialSeconds: z.int().min(0).max(3600),
    cycleSeconds: z.int().min(0).max(3600),
    burstSeconds: z.int().min(0).max(3600),
    manner: z.enum(["inversion", "rotation", "continuous"]),
    taps: z.int().min(0).max(10),
  }),
  /** The developer's factor per 10 °C where its maker states one. */
  factorPer10C: z.number().min(1).max(6).nullable(),
  /** The range the sheet allows; null: no wider than the house's own limits. */
  minTenthsC: z.int().nullable(),
  maxTenthsC: z.int().nullable(),
  /** Least concentrate or stock for one 80 sq in of film (one 135-36 or 120), ml. */
  minConcentrateMl: z.int().min(0).nullable(),
  /** Tabular-grain film fixes for three clearing times, not two. */
  tabularGrain: z.boolean(),
  /** Absent or null: the developer is used once. */
  reuse: reuseSchema.nullish(),
  source: z.string().min(1).max(200),
});
export type Sheet = z.output<typeof sheetSchema>;
