import { z } from "zod";
import type { Plan, Step } from "./plan.ts";
import { anyPlanSchema, isFilmPlan, isTrayPlan, type TrayPlan } from "./tray.ts";

/* What a run is. How it changes is in machine.ts; when it speaks, in cues.ts. */

export const phaseSchema = z.discriminatedUnion("kind", [
  /** The bath of `step` is not in yet (a step without a time waits to be done). */
  z.object({ kind: z.literal("waiting"), step: z.int().min(0), sinceMs: z.int() }),
  z.object({ kind: z.literal("running"), step: z.int().min(0), startedAtMs: z.int(), endsAtMs: z.int() }),
  z.object({ kind: z.literal("finished"), atMs: z.int() }),
  z.object({ kind: z.literal("stopped"), step: z.int().min(0), atMs: z.int(), reason: z.string() }),
]);
export type Phase = z.output<typeof phaseSchema>;

/** How a step really went. A bath acts until the next one is in: that instant is its `endedAtMs`. */
export const stepRecordSchema = z.object({
  step: z.int().min(0),
  plannedSeconds: z.int().nullable(),
  startedAtMs: z.int(),
  endedAtMs: z.int().nullable(),
});
export type StepRecord = z.output<typeof stepRecordSchema>;

/** What went otherwise than planned, and is kept for the log. */
export const filmDeviationSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("moved"), step: z.int(), bySeconds: z.int(), atMs: z.int() }),
  z.object({
    kind: z.literal("new-temperature"),
    step: z.int(),
    tenthsC: z.int(),
    fromSeconds: z.int(),
    toSeconds: z.int(),
    atMs: z.int(),
  }),
  z.object({ kind: z.literal("cut-short"), step: z.int(), bySeconds: z.int(), atMs: z.int() }),
  z.object({ kind: z.literal("overrun"), step: z.int(), bySeconds: z.int(), atMs: z.int() }),
]);
export type FilmDeviation = z.output<typeof filmDeviationSchema>;

/** The same, and what befalls prints alone. */
export const deviationSchema = z.discriminatedUnion("kind", [
  ...filmDeviationSchema.options,
  /** The image was seen to appear: by the factor that sets the end of developing. */
  z.object({
    kind: z.literal("seen"),
    step: z.int(),
    afterSeconds: z.int(),
    fromSeconds: z.int(),
    toSeconds: z.int(),
    atMs: z.int(),
  }),
  /** A wet print came into the wash: it began again for all in it. */
  z.object({ kind: z.literal("washed-anew"), step: z.int(), afterSeconds: z.int(), atMs: z.int() }),
]);
export type Deviation = z.output<typeof deviationSchema>;

export const runSchema = z.object({
  id: z.int(),
  number: z.int(),
  classId: z.int(),
  personId: z.string(),
  plan: anyPlanSchema,
  /** The class's call to get ready, before pour-out; kept, so that a changed habit doesn't move a running film. */
  warnSeconds: z.int().min(0),
  startedAtMs: z.int(),
  /** Counts the schedules this run has had: a correction makes a new one. */
  schedule: z.int().min(0),
  phase: phaseSchema,
  marks: z.array(stepRecordSchema),
  deviations: z.array(deviationSchema),
  /**
   * Waits for a place at the sink or in the trays, or for its tank, since there was none for it: the how-many-eth call of its
   * turn is owed for `dueAtMs`; null: nobody knows yet when there will be one. Absent: it has a place, or never waited for one.
   */
  queued: z
    .object({
      turn: z.int().min(1),
      dueAtMs: z.int().nullable(),
      /** Somebody else's film was in its tank: its own is not loaded before it is called. */
      forTank: z.literal(true).optional(),
    })
    .optional(),
  /** Of a trial: so many of its seconds pass in one of the room's. Absent: it is no trial, and a film is in the tank. */
  speed: z.int().min(2).max(600).optional(),
});
export type Run = z.output<typeof runSchema>;
/** A film in a tank. */
export type FilmRun = Run & { readonly plan: Plan };
/** Prints along a line of trays. */
export type TrayRun = Run & { readonly plan: TrayPlan };

export const isFilmRun = (run: Run): run is FilmRun => isFilmPlan(run.plan);
export const isTrayRun = (run: Run): run is TrayRun => isTrayPlan(run.plan);

/** A run as whatever speaks of it names it: by the number said aloud, with its tank or its line of trays where it has one. */
export const runNameSchema = z.object({
  number: z.int().min(1),
  tank: z.int().positive().nullable(),
  trays: z.int().positive().optional(),
  isTrial: z.literal(true).optional(),
});
export type RunName = z.output<typeof runNameSchema>;

export const runNameOf = ({ number, plan, speed }: Run): RunName => ({
  number,
  tank: plan.tank,
  ...(isTrayPlan(plan) ? { trays: plan.line } : {}),
  ...(isTrial({ speed }) ? { isTrial: true } : {}),
});
/** A trial's clock goes this many times as fast: ten minutes of developer in ten seconds. */
export const TRIAL_SPEED = 60;

/** No film is in its tank: it takes nothing from a bottle, and nothing of it comes into the log. */
export function isTrial({ speed }: Pick<Run, "speed">): boolean {
  return speed !== undefined;
}

/** How long seconds of a run's own time last, ms. */
export function lastingMs({ speed = 1 }: Pick<Run, "speed">, seconds: number): number {
  return Math.round((seconds * 1000) / speed);
}

/** How many seconds of a run's own time pass in so many ms. */
export function secondsIn({ speed = 1 }: Pick<Run, "speed">, ms: number): number {
  return (ms * speed) / 1000;
}

export function isOver(run: Run): boolean {
  return run.phase.kind === "finished" || run.phase.kind === "stopped";
}

/** Its first bath is not in yet. */
export const waitsToBegin = ({ phase }: Pick<Run, "phase">): boolean =>
  phase.kind === "waiting" && phase.step === 0;

/** Its tank is somebody else's still: its film is in none. */
export const isTankless = ({ queued }: Pick<Run, "queued">): boolean =>
  queued?.forTank === true && queued.dueAtMs === null;

export function stepAt(run: Run, index: number): Step | undefined {
  return run.plan.steps[index];
}

/** The step the run is at; undefined once it is over. */
export function currentStep(run: Run): Step | undefined {
  return run.phase.kind === "waiting" || run.phase.kind === "running"
    ? stepAt(run, run.phase.step)
    : undefined;
}

/** Pour-out begins at this instant of a running step. */
export function pourOutAtMs(run: Pick<Run, "speed">, step: Step, endsAtMs: number): number {
  return endsAtMs - lastingMs(run, step.pourOutSeconds);
}
