import { z } from "zod";
import { LANGUAGES } from "./shapes/language.ts";
import { runNameSchema } from "./shapes/run.ts";

/** What is said, as kept. Words on its lateness and on calls that went unsaid before it are added as it is said. */
export const owedBodySchema = z.object({
  text: z.string(),
  /** The language it is worded in: what is added on its way follows it. */
  language: z.enum(LANGUAGES).default("en"),
  /** Which run it speaks of; null where it speaks of none. */
  run: runNameSchema.nullable().default(null),
  actions: z.array(
    z.object({ label: z.string(), line: z.string(), weight: z.enum(["main", "plain", "danger"]).optional() }),
  ),
  mentions: z.array(z.string()),
  /** Which word to many, and who says it (absent once they are erased). */
  say: z.object({ id: z.int(), by: z.string().optional() }).optional(),
  pictures: z.array(z.object({ name: z.string(), alt: z.string(), svg: z.string() })).optional(),
});
