import { z } from "zod";

/* The class's photographic papers: each box is one, by its number. */

export const PAPER_KINDS = ["resin-coated", "fibre"] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

/** A grade or a filter's number in tenths, by halves: 25 is 2 1/2. -10 stands for 00. */
export const gradeSchema = z.int().min(-10).max(50).multipleOf(5);

/** What the times of a print's steps rest on; each is worded with its source, and with the sources that say otherwise. */
export const PAPER_RULES = [
  "own-time",
  "usual-times",
  "own-coefficient",
  "usual-coefficient",
  "least-tried",
  "least-untried",
  "factor",
  "drain",
  "acid-stop",
  "water-stop",
  "fix-rc",
  "fix-fibre",
  "fix-strong",
  "fix-two",
  "fix-strip",
  "wash-rc",
  "wash-fibre",
  "wash-aid",
  "wash-cold",
  "lay-to-dry",
  "lamp-steps",
  "called-strip",
] as const;
export type PaperRule = (typeof PAPER_RULES)[number];

/** A sheet's sides, mm. */
export const paperSizeSchema = z.object({
  shortMm: z.int().min(30).max(2000),
  longMm: z.int().min(30).max(2000),
});
export type PaperSize = z.output<typeof paperSizeSchema>;

/** Whence a figure of a paper comes: from its box or data sheet, or from the class's own strips. */
export const FIGURE_BASES = ["box", "measured"] as const;

/** Light that a filter wants beside grade 2, as the class measured it; with that enlarger, if one is named. */
export const filterLightSchema = z.object({
  gradeTenths: gradeSchema,
  enlarger: z.int().min(1).max(99).nullable(),
  milliStops: z.int().min(-4000).max(4000),
});

export const paperSchema = z.object({
  number: z.int().min(1).max(99),
  name: z.string().min(1).max(60),
  kind: z.enum(PAPER_KINDS),
  /** The grade of a graded paper; null: variable contrast, the filter makes the grade. */
  gradeTenths: gradeSchema.nullable(),
  size: paperSizeSchema,
  /** The maker's number on the box; null: not noted. */
  lot: z.string().max(30).nullable(),
  /** Its speed (ISO 6846), in tenths; twice the speed wants half the light. null: not known. */
  speed: z.object({ tenths: z.int().min(10).max(50_000), basis: z.enum(FIGURE_BASES) }).nullable(),
  /** How much less light a print wants that was judged wet, per cent, as the class measured it. */
  dryDownPercent: z.int().min(0).max(25).nullable(),
  filters: z.array(filterLightSchema).max(60),
});
export type Paper = z.output<typeof paperSchema>;
