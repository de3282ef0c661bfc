import { z } from "zod";
import { gradeSchema } from "./paper.ts";

/* The class's enlargers. */

/** How the light comes to the negative: bundled by lenses, or scattered. */
export const LIGHTS = ["condenser", "diffuse"] as const;
export type Light = (typeof LIGHTS)[number];

/** The exposure at which this enlarger makes the class's contact sheets. */
export const standingSchema = z.object({
  /** From the negative carrier to the paper, mm. */
  headMm: z.number().min(50).max(5000),
  apertureTenths: z.int().min(10).max(640),
  gradeTenths: gradeSchema,
  tenths: z.int().min(1).max(36_000),
  /** Box of paper; null: not noted. */
  paper: z.int().min(1).max(99).nullable(),
  /** The longest time tried whose film edge was still lighter than black, tenths of a second; null: not noted. */
  lighterTenths: z.int().min(1).max(36_000).nullable(),
  /** Tried on paper; else worked out from one that was. */
  isTried: z.boolean(),
  setAtMs: z.int(),
});
export type Standing = z.output<typeof standingSchema>;

export const enlargerSchema = z.object({
  number: z.int().min(1).max(99),
  name: z.string().min(1).max(60),
  light: z.enum(LIGHTS),
  lensMm: z.int().min(20).max(300),
  /** The finest step in which its timer can be set, tenths of a second. */
  timerTenths: z.int().min(1).max(100),
  /** Absent or null: none has been tried. */
  standing: standingSchema.nullish(),
});
export type Enlarger = z.output<typeof enlargerSchema>;
