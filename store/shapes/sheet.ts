import { z } from "zod";
import { BATH_TENTHS_C } from "./limits.ts";
import { PAPER_RULES } from "./paper.ts";

/** Water is liquid from 0 to 100 °C. */
const liquidTenthsC = z.int().min(0).max(1000);

/**
 * One published or tried time. Dilution stands in the sheet, not here: a sheet is one film in one developer at
 * one dilution.
 */
export const pointSchema = z.object({
  tenthsC: z.int().min(BATH_TENTHS_C.least).max(BATH_TENTHS_C.most),
  exposureIndex: z.int().min(1).max(102_400),
  seconds: z.int().min(15).max(10_800),
  source: z.string().min(1).max(200),
});
export type Point = z.output<typeof pointSchema>;

/** Dilution as parts: `1+9` is one part concentrate and nine of water; `stock` is `1+0`. */
export const dilutionSchema = z.object({
  concentrateParts: z.int().min(1).max(100),
  waterParts: z.int().min(0).max(1000),
});
export type Dilution = z.output<typeof dilutionSchema>;

/**
 * The maker's rule for using a developer again: after each `everyFilms` films in a litre the time grows by
 * `addPercent` of the sheet's time and by `addSeconds`; at `maxFilms` in a litre it is used up.
 */
export const reuseSchema = z.object({
  everyFilms: z.int().min(1).max(100),
  addPercent: z.int().min(0).max(100),
  addSeconds: z.int().min(0).max(600),
  maxFilms: z.int().min(1).max(200),
});
export type Reuse = z.output<typeof reuseSchema>;

/** How a tank is agitated: constant for `initialSeconds`, then `burstSeconds` at the start of each cycle. */
export const agitationSchema = z.object({
  initialSeconds: z.int().min(0).max(3600),
  /** 0 with `manner: "continuous"`: the tank never rests. */
  cycleSeconds: z.int().min(0).max(3600),
  burstSeconds: z.int().min(0).max(3600),
  manner: z.enum(["inversion", "rotation", "continuous"]),
  /** Raps on the bench after each agitation, to free air bells. */
  taps: z.int().min(0).max(10),
});

export type Agitation = z.output<typeof agitationSchema>;

export const sheetSchema = z.object({
  film: z.string().min(1).max(60),
  developer: z.string().min(1).max(60),
  dilution: dilutionSchema,
  /** The film's own speed; the exposure index of a plan that names none. */
  boxSpeed: z.int().min(1).max(102_400),
  points: z.array(pointSchema).min(1).max(200),
  /** The scheme the times assume. */
  agitation: agitationSchema,
  /** The developer's factor per 10 °C where its maker states one. */
  factorPer10C: z.number().min(1).max(6).nullable(),
  /** The range the sheet allows; null: no wider than the house's own limits. */
  minTenthsC: liquidTenthsC.nullable(),
  maxTenthsC: liquidTenthsC.nullable(),
  /** Least concentrate or stock for one 80 sq in of film (one 135-36 or 120), ml. */
  minConcentrateMl: z.int().min(0).max(200_000).nullable(),
  /** Tabular-grain film fixes for three clearing times, not two. */
  tabularGrain: z.boolean(),
  /** Absent or null: the developer is used once. */
  reuse: reuseSchema.nullish(),
  source: z.string().min(1).max(200),
});
export type Sheet = z.output<typeof sheetSchema>;

/** What a step's time rests on; each is worded in reply.ts with its source. */
export const basisSchema = z.discriminatedUnion("kind", [
  /** Exactly a row of the sheet. */
  z.object({ kind: z.literal("point"), source: z.string() }),
  /** Between rows of the sheet. */
  z.object({ kind: z.literal("between"), sources: z.array(z.string()) }),
  /** One row and the developer's temperature coefficient: the true time lies somewhere in the spread. */
  z.object({
    kind: z.literal("one-point"),
    source: z.string(),
    factorPer10C: z.number(),
    lowSeconds: z.int(),
    highSeconds: z.int(),
  }),
  /** Beyond the sheet's temperatures, from its nearest row and a temperature coefficient. */
  z.object({
    kind: z.literal("beyond"),
    source: z.string(),
    factorPer10C: z.number(),
    lowSeconds: z.int(),
    highSeconds: z.int(),
  }),
  /** A rule of thumb, never a measured value. */
  z.object({
    kind: z.literal("rule-of-thumb"),
    lowSeconds: z.int(),
    highSeconds: z.int(),
    source: z.string(),
  }),
  /** The class's own rule. */
  z.object({ kind: z.literal("house"), rule: z.string() }),
  /** One of the rules for paper. */
  z.object({ kind: z.literal("paper"), rule: z.enum(PAPER_RULES) }),
  /** A published rule, named. */
  z.object({ kind: z.literal("rule"), rule: z.string(), source: z.string() }),
]);

export type Basis = z.output<typeof basisSchema>;

/** The same dilution in the smallest whole parts: 2+18 is 1+9. */
export function simplifyParts({ concentrateParts, waterParts }: Dilution): Dilution {
  let [a, b] = [concentrateParts, waterParts];
  while (b > 0) [a, b] = [b, a % b];
  return { concentrateParts: concentrateParts / a, waterParts: waterParts / a };
}

/** The reverse of parseDilution: `1+9`, `stock`, whoever reads it. Kept and compared in this form. */
export function makeDilution({ concentrateParts, waterParts }: Dilution): string {
  return waterParts === 0 ? "stock" : `${concentrateParts}+${waterParts}`;
}
