import { z } from "zod";
import { BATH_TENTHS_C } from "./limits.ts";
import { PAPER_KINDS, paperSizeSchema } from "./paper.ts";
import { planSchema, stepSchema, type Plan } from "./plan.ts";
import { dilutionSchema } from "./sheet.ts";

/* A line of trays, and what is worked out for the prints that go along it together. */

const tenthsC = z.int().min(BATH_TENTHS_C.least).max(BATH_TENTHS_C.most);
const developingSeconds = z.int().min(15).max(1800);
/** Sheets of 8x10 in that lie in a tray at once without lying on each other. */
const places = z.int().min(1).max(60);

export const trayLineSchema = z.object({
  number: z.int().min(1).max(99),
  /** The paper developer's name on its pack. */
  developer: z.string().min(1).max(60),
  dilution: dilutionSchema,
  /** Its times at `atTenthsC`, for each kind of paper. */
  rcSeconds: developingSeconds,
  fibreSeconds: developingSeconds,
  atTenthsC: tenthsC,
  /** The developer's own factor per 10 °C; null: nobody has stated one. */
  factorPer10C: z.number().min(1).max(6).nullable(),
  /** Of first appearance, where the class develops by it; null: by time. */
  factor: z.number().min(1).max(60).nullable(),
  /** The least time that gave full black in the class's own trial, at `atTenthsC`, and the time that began to stain. */
  leastSeconds: developingSeconds.nullable(),
  stainSeconds: developingSeconds.nullable(),
  stop: z.enum(["acid", "water"]),
  /** Fixing baths one after the other. */
  baths: z.int().min(1).max(2),
  /** Before the end of a bath, so that the print drains within its time. */
  drainSeconds: z.int().min(0).max(30),
  developPlaces: places,
  stopPlaces: places,
  fixPlaces: places,
  washPlaces: places,
  /** Where the times come from. */
  source: z.string().min(1).max(200),
});
export type TrayLine = z.output<typeof trayLineSchema>;

export const TRAY_CAUTION_CODES = [
  "WARN_TRAY_COLD",
  "WARN_TRAY_WARM",
  "WARN_TRAYS_APART",
  "WARN_LEAST_TIME",
  "WARN_STAIN",
  "WARN_ONE_BATH",
  "WARN_SILVER_UNKNOWN",
  "WARN_FILM_CALLS",
  "NOTE_DRYER",
  "NOTE_TRAYS",
] as const;
export type TrayCautionCode = (typeof TRAY_CAUTION_CODES)[number];

export const trayPlanSchema = z.object({
  /** Sheets that go through the trays together; its being there tells this plan from a film's. */
  prints: z.int().min(1).max(20),
  paper: z.enum(PAPER_KINDS),
  size: paperSizeSchema,
  /** Number of the line of trays. */
  line: z.int().min(1).max(99),
  developer: z.string().min(1).max(60),
  dilution: dilutionSchema,
  /** The developer in its tray, tenths of a degree Celsius. */
  tenthsC,
  /** The developer's factor per 10 °C, by which the time follows a temperature that is measured later. */
  factorPer10C: z.number().min(1).max(6),
  /** Of first appearance; null: the print is developed by time. */
  factor: z.number().min(1).max(60).nullable(),
  /** A print gets no full black in less; seconds. */
  leastSeconds: developingSeconds,
  /** A print is in no tank. */
  tank: z.null(),
  steps: z.array(stepSchema).min(1),
  cautions: z.array(
    z.object({
      code: z.enum(TRAY_CAUTION_CODES),
      detail: z.record(z.string(), z.union([z.string(), z.number()])),
    }),
  ),
});
export type TrayPlan = z.output<typeof trayPlanSchema>;

/** What a run goes through. */
export const anyPlanSchema = z.union([planSchema, trayPlanSchema]);
export type AnyPlan = z.output<typeof anyPlanSchema>;

export const isTrayPlan = (plan: AnyPlan): plan is TrayPlan => "prints" in plan;
export const isFilmPlan = (plan: AnyPlan): plan is Plan => !isTrayPlan(plan);
