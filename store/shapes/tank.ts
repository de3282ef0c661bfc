import { z } from "zod";
import { SHEET_FORMATS } from "./film.ts";
import { TANK_ML } from "./limits.ts";

/** A tank for 120 takes 220 as well. */
export const TANK_FORMATS = ["135", "120", ...SHEET_FORMATS, "any"] as const;

/** A numbered daylight tank of the class. */
export const tankSchema = z.object({
  number: z.int().min(1).max(999),
  reels: z.int().min(1).max(20),
  /** Working volume that covers all its reels, ml. */
  volumeMl: z.int().min(TANK_ML.least).max(TANK_ML.most),
  format: z.enum(TANK_FORMATS),
  /** What is wrong with it ("leaks"), in the words of whoever reported it; null: nothing known. */
  condition: z.string().max(200).nullable(),
  /** How slowly it follows the room, seconds to 63 % of the way; null: not measured. */
  timeConstantSeconds: z.int().min(60).max(36_000).nullable(),
});
export type Tank = z.output<typeof tankSchema>;
