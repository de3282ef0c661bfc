import { z } from "zod";
import { stepSchema } from "./plan.ts";
import { stripSchema } from "./print.ts";

/** A test strip that is called bar by bar, as a run goes through it. */
export const stripPlanSchema = z.object({
  /** In whole seconds: a hand at a lamp's switch can do no better. */
  strip: stripSchema,
  tank: z.null(),
  steps: z.array(stepSchema).min(1),
});
export type StripPlan = z.output<typeof stripPlanSchema>;
