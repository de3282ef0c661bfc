import { z } from "zod";
import { enlargerSchema } from "./enlarger.ts";
import { gradeSchema, paperSchema, paperSizeSchema } from "./paper.ts";

/* A print in the log, with all that is needed to make it again; and the last test strip of a person. */

/** One exposure, tenths of a second: to an hour. */
export const exposureTenthsSchema = z.int().min(1).max(36_000);

export const LOCAL_KINDS = ["burn", "dodge"] as const;
/** A place that gets more or less light than the rest, in thousandths of a stop: so it survives another base time. */
export const localSchema = z.object({
  kind: z.enum(LOCAL_KINDS),
  place: z.string().min(1).max(40),
  milliStops: z.int().min(1).max(8000),
});
export type Local = z.output<typeof localSchema>;

export const apertureTenthsSchema = z.int().min(10).max(640);
export const headMmSchema = z.int().min(50).max(5000);

export const titleSchema = z.string().max(100);
export const frameSchema = z.string().max(8);
export const noteSchema = z.string().max(2000);

export const printBodySchema = z.object({
  exposureTenths: exposureTenthsSchema,
  /** The filter or grade; null: white light on paper of variable contrast. */
  gradeTenths: gradeSchema.nullable(),
  locals: z.array(localSchema).max(12),
  /** Tenths of the f-number. */
  apertureTenths: apertureTenthsSchema.nullable(),
  /** From the negative to the paper. */
  headMm: headMmSchema.nullable(),
  size: paperSizeSchema.nullable(),
  /** As they were when the print was made. */
  enlarger: enlargerSchema.nullable(),
  paper: paperSchema.omit({ filters: true }).nullable(),
  developer: z.string().max(60).nullable(),
  developSeconds: z.int().min(1).max(3600).nullable(),
  tenthsC: z.int().min(50).max(450).nullable(),
  /** What a fault was put down to, by its code. */
  cause: z.string().max(40).nullable().default(null),
});
export type PrintBody = z.output<typeof printBodySchema>;

export interface NewPrint {
  readonly classId: number;
  readonly personId: string;
  readonly personName: string;
  /** The roll's number in the log, and which frame of it. */
  readonly roll: number | null;
  readonly frame: string;
  /** What is on it. */
  readonly title: string;
  readonly madeAt: number;
  readonly note: string;
  readonly body: PrintBody;
}

export interface Print extends Omit<NewPrint, "personId"> {
  readonly id: number;
  readonly number: number;
  readonly personId: string | null;
  readonly rating: number | null;
  readonly fault: string;
}

/** What a person looks for among the prints; all of it must fit. */
export const printFilterSchema = z.object({
  words: z.array(z.string()),
  personId: z.string().nullable(),
  roll: z.int().nullable(),
  frame: z.string().nullable(),
  rating: z.int().nullable(),
  isFaulty: z.boolean(),
  fromMs: z.int().nullable(),
  untilMs: z.int().nullable(),
});
export type PrintFilter = z.output<typeof printFilterSchema>;

export const EVERY_PRINT: PrintFilter = {
  words: [],
  personId: null,
  roll: null,
  frame: null,
  rating: null,
  isFaulty: false,
  fromMs: null,
  untilMs: null,
};

/** The steps of a strip: in stops, or in equal seconds. */
export const stripStepSchema = z.discriminatedUnion("kind", [
  /** Twelfths of a stop: 12, 6, 4, 3, 2, 1. */
  z.object({ kind: z.literal("stops"), twelfths: z.int().min(1).max(24) }),
  z.object({ kind: z.literal("seconds"), tenths: z.int().min(1).max(6000) }),
]);
export type StripStep = z.output<typeof stripStepSchema>;

/** `cover`: all is exposed, then bar after bar covered; `uncover`: bar after bar is opened. */
export const STRIP_WAYS = ["cover", "uncover"] as const;
export type StripWay = (typeof STRIP_WAYS)[number];

export const stripSchema = z.object({
  baseTenths: exposureTenthsSchema,
  step: stripStepSchema,
  bars: z.int().min(2).max(12),
  way: z.enum(STRIP_WAYS),
  /** Of the timer it was made with. */
  timerTenths: enlargerSchema.shape.timerTenths,
  enlarger: z.int().min(1).max(99).nullable(),
  paper: z.int().min(1).max(99).nullable(),
  gradeTenths: gradeSchema.nullable(),
  apertureTenths: apertureTenthsSchema.nullable(),
});
export type Strip = z.output<typeof stripSchema>;
