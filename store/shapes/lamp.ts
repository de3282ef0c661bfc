import { z } from "zod";
import { stepSchema } from "./plan.ts";

/* A safelight, and what its test has shown. */

const minutes = z.int().min(1).max(60);

export const lampSchema = z.object({
  /** Where it hangs, or what the class calls it. */
  name: z.string().min(1).max(40),
  testedAtMs: z.int(),
  /** The longest step tried. */
  longestMinutes: minutes,
  /** The first step with a change, of paper that had the lamp before and after its grey, and of bare paper; null: none changed. */
  beforeMinutes: minutes.nullable(),
  afterMinutes: minutes.nullable(),
  aloneMinutes: minutes.nullable(),
  /** Paper may lie so long under it in all; null: it is not safe. */
  safeSeconds: z.int().min(1).max(3600).nullable(),
  nextAtMs: z.int(),
});
export type Lamp = z.output<typeof lampSchema>;

/** A test of a safelight on paper exposed to a light grey, as a run goes through it. */
export const lampPlanSchema = z.object({
  lamp: lampSchema.shape.name,
  /** The steps that are compared. */
  minutes: z.array(minutes).min(1).max(6),
  tank: z.null(),
  steps: z.array(stepSchema).min(1),
});
export type LampPlan = z.output<typeof lampPlanSchema>;
