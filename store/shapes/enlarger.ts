import { z } from "zod";

/* The class's enlargers. */

/** How the light comes to the negative: bundled by lenses, or scattered. */
export const LIGHTS = ["condenser", "diffuse"] as const;
export type Light = (typeof LIGHTS)[number];

export const enlargerSchema = z.object({
  number: z.int().min(1).max(99),
  name: z.string().min(1).max(60),
  light: z.enum(LIGHTS),
  lensMm: z.int().min(20).max(300),
  /** The finest step in which its timer can be set, tenths of a second. */
  timerTenths: z.int().min(1).max(100),
});
export type Enlarger = z.output<typeof enlargerSchema>;
