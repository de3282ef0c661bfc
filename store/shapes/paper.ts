import { z } from "zod";

/* Photographic paper. */

export const PAPER_KINDS = ["resin-coated", "fibre"] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

/** A sheet's sides, mm. */
export const paperSizeSchema = z.object({
  shortMm: z.int().min(30).max(2000),
  longMm: z.int().min(30).max(2000),
});
export type PaperSize = z.output<typeof paperSizeSchema>;
