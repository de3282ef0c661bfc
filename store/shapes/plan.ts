import { z } from "zod";
import { FILM_FORMATS, FRAME_SIZES } from "./film.ts";
import { agitationSchema, basisSchema, pointSchema, sheetSchema } from "./sheet.ts";

/* What a plan is. How its numbers come about is in the other files of this folder. */

/** Of a safelight's test. */
export const LAMP_STEP_KINDS = ["lamp", "grey", "read"] as const;
export type LampStepKind = (typeof LAMP_STEP_KINDS)[number];
/** Of a test strip that is called. */
export const STRIP_STEP_KINDS = ["expose", "judge"] as const;
export type StripStepKind = (typeof STRIP_STEP_KINDS)[number];

export const STEP_KINDS = [
  "develop",
  "stop",
  "rinse",
  "fix",
  "wash",
  "wash-aid",
  "wetting-agent",
  "dry",
  "cut",
  ...LAMP_STEP_KINDS,
  ...STRIP_STEP_KINDS,
] as const;
export type StepKind = (typeof STEP_KINDS)[number];

export const stepSchema = z.object({
  kind: z.enum(STEP_KINDS),
  /** `paper`: a print goes through a tray; absent: a film in a tank. */
  medium: z.literal("paper").optional(),
  /** Which of several alike: rinse 1, rinse 2. 0 where there is one only. */
  ordinal: z.int().min(0),
  /** null: the step waits for a person's word, not for the clock (cut and sleeve). */
  seconds: z.int().positive().nullable(),
  agitation: agitationSchema.nullable(),
  /** Pour-out begins this long before the end; 0 where the bath is not poured out by the clock. */
  pourOutSeconds: z.int().min(0),
  /** Of a safelight's test: its row, and how long the part laid open last has had the lamp before and after this step, minutes. */
  lamp: z
    .object({
      row: z.int().min(1).max(2),
      fromMinutes: z.int().min(0).max(60),
      toMinutes: z.int().min(1).max(60),
    })
    .optional(),
  /** Of a test strip: which of its bars, from 1, lie open during this exposure, and how they came to. */
  bars: z
    .object({ way: z.enum(["cover", "uncover"]), from: z.int().min(1).max(12), to: z.int().min(1).max(12) })
    .optional(),
  /** What goes into the tank, in ml; null where nothing is measured out. */
  ml: z.int().positive().nullable(),
  /** Concentrate or stock in it, in ml to 0.1, where the dilution is known. */
  concentrateMl: z.number().min(0).nullable(),
  /** Water that is mixed with that, in ml to 0.1; absent: it is poured as it is in its bottle. */
  waterMl: z.number().positive().optional(),
  /** The label of the batch it comes from, as known when the plan was made. */
  batch: z.string().nullable(),
  /** The bath goes back into that bottle; absent: it is used once, or its bottle is not known. */
  isPouredBack: z.boolean().optional(),
  /** ml of replenisher that bottle gets for this film; absent: none. */
  replenishMl: z.int().positive().optional(),
  /** How often the tank is filled with fresh water and emptied (a wash without running water). */
  changes: z.int().positive().optional(),
  basis: z.array(basisSchema).min(1),
});
export type Step = z.output<typeof stepSchema>;

/** What a step has that is nothing but itself: alone of its kind, nothing poured, moved or taken from a bottle. */
export const BARE_STEP = {
  ordinal: 0,
  seconds: null,
  agitation: null,
  pourOutSeconds: 0,
  ml: null,
  concentrateMl: null,
  batch: null,
} as const;

export const CAUTION_CODES = [
  "WARN_WORN_FIXER",
  "WARN_SLOW_FIXER",
  "WARN_SHORT_TIME",
  "WARN_COOL",
  "WARN_WARM",
  "WARN_ONE_POINT",
  "WARN_RULE_OF_THUMB",
  "WARN_OTHER_AGITATION",
  "WARN_WASH_SHORT",
  "WARN_RETICULATION",
  "WARN_LONG_FIX",
  "WARN_LITTLE_CONCENTRATE",
  "WARN_STRENGTH",
  "WARN_COVERED",
  "WARN_BOTTLE_SHORT",
  "WARN_AGITATION",
  "WARN_DRIFT",
  "WARN_TANK_LEAKS",
  "WARN_SHARED_TANK",
  "WARN_WATER_TEMPERATURE",
  "NOTE_CHEMICALS",
] as const;
export type CautionCode = (typeof CAUTION_CODES)[number];

/** A tank that follows the room by Newton's law of cooling. */
export const driftSchema = z.object({
  roomTenthsC: z.int(),
  /** Seconds to 63 % of the way to the room. */
  timeConstantSeconds: z.int().positive(),
});
export type Drift = z.output<typeof driftSchema>;

export const planSchema = z.object({
  sheet: sheetSchema,
  exposureIndex: pointSchema.shape.exposureIndex,
  /** The developer in the tank, tenths of a degree Celsius. */
  tenthsC: z.int(),
  rolls: z.int().min(1).max(20),
  format: z.enum(FILM_FORMATS),
  /** Its frames; absent or null: 24x36 on 135, 6x6 on 120 and 220, none on sheet film. */
  frame: z.enum(FRAME_SIZES).nullish(),
  /** On each film. */
  frames: z.int().min(1).max(100),
  /** Number of the tank in the class, where one was named. */
  tank: z.int().positive().nullable(),
  /** Working-strength volume in the tank, ml. */
  volumeMl: z.int().min(1).max(200_000),
  steps: z.array(stepSchema).min(1),
  cautions: z.array(
    z.object({
      code: z.enum(CAUTION_CODES),
      detail: z.record(z.string(), z.union([z.string(), z.number()])),
    }),
  ),
  /** Strip lengths in frames, in the order they are cut. */
  strips: z.array(z.int().positive()),
  /** What the developing time would be without drift, agitation or reuse allowances; seconds. */
  sheetSeconds: z.int().positive(),
  /** Between these the estimate lies, if the time is no row of the sheet. */
  spread: z.object({ lowSeconds: z.int().positive(), highSeconds: z.int().positive() }).nullish(),
  /** The cooling (or warming) the developing time allows for; absent or null: none. */
  drift: driftSchema.nullish(),
  /** Other films that share the tank. */
  alsoFilms: z.array(z.string()).optional(),
});
export type Plan = z.output<typeof planSchema>;

/** An older plan is not today's any more, and no invitation: the water has another temperature by then. */
export const PLAN_LIVES_MS = 12 * 3_600_000;
