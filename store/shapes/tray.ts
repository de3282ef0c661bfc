import { z } from "zod";
import { BATH_TENTHS_C } from "./limits.ts";
import { lampPlanSchema, type LampPlan } from "./lamp.ts";
import { PAPER_KINDS, paperSchema, paperSizeSchema } from "./paper.ts";
import { planSchema, stepSchema, type Plan } from "./plan.ts";
import { stripPlanSchema, type StripPlan } from "./strip-plan.ts";
import { dilutionSchema } from "./sheet.ts";
import { printSecondsSchema } from "./tray-line.ts";

/* What is worked out for the prints that go along a line of trays together. */

const tenthsC = z.int().min(BATH_TENTHS_C.least).max(BATH_TENTHS_C.most);
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
  /** Number of the box it is taken from; null: only its kind was said. */
  box: paperSchema.shape.number.nullable().default(null),
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
  leastSeconds: printSecondsSchema,
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
export type AnyPlan = Plan | TrayPlan | LampPlan | StripPlan;

/** What tells each from a film's: a field that no other has. Asked for one by one, so that a film waits for none of them. */
const SHAPES = {
  prints: () => trayPlanSchema,
  lamp: () => lampPlanSchema,
  strip: () => stripPlanSchema,
} as const;

/** Examined as what it says it is, so that a fault names the field and not only the plan. */
export const anyPlanSchema = z.unknown().transform((plan, context): AnyPlan => {
  const fields = typeof plan === "object" && plan !== null ? plan : {};
  const tells = (Object.keys(SHAPES) as (keyof typeof SHAPES)[]).find((field) => field in fields);
  const shape = tells === undefined ? planSchema : SHAPES[tells]();
  const read: z.ZodSafeParseResult<AnyPlan> = shape.safeParse(plan);
  if (read.success) return read.data;
  for (const issue of read.error.issues)
    context.issues.push({ ...issue, input: plan } as z.core.$ZodRawIssue);
  return z.NEVER;
});

export const isTrayPlan = (plan: AnyPlan): plan is TrayPlan => "prints" in plan;
export const isFilmPlan = (plan: AnyPlan): plan is Plan => "sheet" in plan;
export const isLampPlan = (plan: AnyPlan): plan is LampPlan => "lamp" in plan;
export const isStripPlan = (plan: AnyPlan): plan is StripPlan => "strip" in plan;
export const kindOf = (plan: AnyPlan): "film" | keyof typeof SHAPES =>
  isTrayPlan(plan) ? "prints" : isLampPlan(plan) ? "lamp" : isStripPlan(plan) ? "strip" : "film";
