import { z } from "zod";
import { FRAME_SIZES } from "./film.ts";
import { filmDeviationSchema } from "./run.ts";
import { STEP_KINDS } from "./plan.ts";

/* A roll in the log: one film of a run, as planned and as it really went. */

export const rollStepSchema = z.object({
  kind: z.enum(STEP_KINDS),
  ordinal: z.int(),
  plannedSeconds: z.int().nullable(),
  /** null: the step was not reached. */
  actualSeconds: z.int().nullable(),
  startedAtMs: z.int().nullable(),
  /** Measured in the bath, where somebody did. */
  tenthsC: z.int().nullable(),
  /** The label of the bottle it came from. */
  batch: z.string().nullable().default(null),
});

/** What somebody found on a frame. `lost`: it is no picture, cut through or blank, and no strip has it. */
export const FRAME_MARKS = ["best", "print", "unsharp", "lost"] as const;
export type FrameMark = (typeof FRAME_MARKS)[number];
export const frameMarkSchema = z.object({
  frame: z.int().min(1).max(100),
  mark: z.enum(FRAME_MARKS),
});
export type MarkedFrame = z.output<typeof frameMarkSchema>;

export const rollBodySchema = z.object({
  exposureIndex: z.int(),
  tenthsC: z.int(),
  format: z.string(),
  frames: z.int(),
  /** What the camera made; null: the format's usual one. */
  frame: z.enum(FRAME_SIZES).nullable().default(null),
  strips: z.array(z.int()),
  /** This film among those of its run. */
  film: z.object({ index: z.int(), count: z.int() }),
  plannedSeconds: z.int(),
  /** How long the developer really acted; null where it never went in. */
  developedSeconds: z.int().nullable(),
  /** The dose of development really given, in thousandths of the plan's; null where the film was not developed. */
  dosePerMille: z.int().nullable().default(null),
  steps: z.array(rollStepSchema),
  deviations: z.array(filmDeviationSchema),
  reason: z.string().nullable(),
  missedCues: z.int(),
  /** Working developer and concentrate in it for this film, ml. */
  developerMl: z.number().nullable().default(null),
  concentrateMl: z.number().nullable().default(null),
  isTabular: z.boolean().default(false),
  /** What the fault was put down to, by its code. */
  cause: z.string().nullable().default(null),
  /** Found on the contact sheet, one for each frame and mark. */
  frameMarks: z.array(frameMarkSchema).max(400).default([]),
});
export type RollBody = z.output<typeof rollBodySchema>;

/** Of a body, what is reckoned with over many rolls. */
export const rollSumBodySchema = rollBodySchema.pick({
  film: true,
  developedSeconds: true,
  dosePerMille: true,
  missedCues: true,
  developerMl: true,
  concentrateMl: true,
});

export const OUTCOMES = ["finished", "stopped"] as const;

export interface NewRoll {
  readonly classId: number;
  readonly runId: number;
  readonly personId: string;
  readonly personName: string;
  readonly film: string;
  readonly developer: string;
  readonly dilution: string;
  readonly tank: number | null;
  /** Labels of the batches it went through, as given: `B3 B7`. */
  readonly batches: string;
  readonly outcome: (typeof OUTCOMES)[number];
  readonly endedAt: number;
  readonly lateCues: number;
  readonly body: RollBody;
}

export interface Roll extends Omit<NewRoll, "runId" | "personId"> {
  readonly id: number;
  readonly number: number;
  readonly runId: number | null;
  readonly personId: string | null;
  readonly rating: number | null;
  readonly fault: string;
  readonly note: string;
}

/** Of a roll, what is reckoned with over many: without its steps, which are most of it. */
export interface RollSum
  extends
    Pick<Roll, "number" | "personName" | "film" | "developer" | "dilution">,
    Pick<Roll, "outcome" | "endedAt" | "lateCues" | "rating" | "fault"> {
  readonly body: z.output<typeof rollSumBodySchema>;
}

/** What a person looks for in the log. Words must all occur, each may be begun only; the rest narrows further. */
export const rollFilterSchema = z.object({
  words: z.array(z.string()),
  /** For each word, the faults as the log keeps them that its reader means by it. */
  readAs: z.array(z.array(z.string())),
  /** Rolls of this person, or under this name: a name outlives the person behind it. */
  person: z.object({ id: z.string().nullable(), name: z.string().nullable() }).nullable(),
  film: z.string().nullable(),
  developer: z.string().nullable(),
  /** A label: `B3`. */
  batch: z.string().nullable(),
  tank: z.int().nullable(),
  rating: z.int().nullable(),
  outcome: z.enum(["finished", "stopped"]).nullable(),
  /** Words of the fault; an empty list: any fault at all. */
  fault: z.array(z.string()).nullable(),
  /** With calls that came late or were missed. */
  late: z.boolean().nullable(),
  /** When the run ended: from this instant on, and before that one. */
  fromMs: z.int().nullable(),
  untilMs: z.int().nullable(),
});

export type RollFilter = z.output<typeof rollFilterSchema>;

export const EVERY_ROLL: RollFilter = {
  words: [],
  readAs: [],
  person: null,
  film: null,
  developer: null,
  batch: null,
  tank: null,
  rating: null,
  outcome: null,
  fault: null,
  late: null,
  fromMs: null,
  untilMs: null,
};
