import { z } from "zod";
import { filmDeviationSchema } from "../../../store/shapes/run.ts";
import { frameMarkSchema, OUTCOMES, rollStepSchema, type Roll } from "../../../store/shapes/roll.ts";
import { createLogFormat, JSON_CELL, WORD_CELL } from "./log-format.ts";

/*
 * The log as a file (log-format.ts): one record for each film. In CSV `strips` holds frame counts with spaces between,
 * `frame_marks`, `steps` and `deviations` hold JSON.
 */

export const recordSchema = z.strictObject({
  /** The number in the log, without its letter. */
  roll: z.int(),
  person: z.string(),
  film: z.string(),
  developer: z.string(),
  dilution: z.string(),
  exposure_index: z.int(),
  /** Of the developer, as planned; °C with one decimal. */
  temperature_c: z.number(),
  format: z.string(),
  frames: z.int(),
  strips: z.array(z.int()),
  film_index: z.int(),
  film_count: z.int(),
  tank: z.int().nullable(),
  batches: z.string(),
  outcome: z.enum(OUTCOMES),
  /** Why it was stopped; empty: no reason given, or not stopped. */
  reason: z.string(),
  /** UTC, ISO 8601. */
  ended_at: z.string(),
  planned_seconds: z.int(),
  developed_seconds: z.int().nullable(),
  /** The dose of development really given, per cent of the plan's. */
  dose_percent: z.number().nullable(),
  late_calls: z.int(),
  missed_calls: z.int(),
  rating: z.int().nullable(),
  fault: z.string(),
  cause: z.string(),
  note: z.string(),
  developer_ml: z.int().nullable(),
  concentrate_ml: z.int().nullable(),
  tabular_grain: z.boolean(),
  /** Found on its frames; what was exported before there were marks reads as none. */
  frame_marks: z.array(frameMarkSchema).default([]),
  steps: z.array(rollStepSchema),
  deviations: z.array(filmDeviationSchema),
});
export type LogRecord = z.output<typeof recordSchema>;

export function toRecord({ body, ...roll }: Roll): LogRecord {
  return {
    roll: roll.number,
    person: roll.personName,
    film: roll.film,
    developer: roll.developer,
    dilution: roll.dilution,
    exposure_index: body.exposureIndex,
    temperature_c: body.tenthsC / 10,
    format: body.format,
    frames: body.frames,
    strips: [...body.strips],
    film_index: body.film.index,
    film_count: body.film.count,
    tank: roll.tank,
    batches: roll.batches,
    outcome: roll.outcome,
    reason: body.reason ?? "",
    ended_at: new Date(roll.endedAt).toISOString(),
    planned_seconds: body.plannedSeconds,
    developed_seconds: body.developedSeconds,
    dose_percent: body.dosePerMille === null ? null : body.dosePerMille / 10,
    late_calls: roll.lateCues,
    missed_calls: body.missedCues,
    rating: roll.rating,
    fault: roll.fault,
    cause: body.cause ?? "",
    note: roll.note,
    developer_ml: body.developerMl,
    concentrate_ml: body.concentrateMl,
    tabular_grain: body.isTabular,
    frame_marks: body.frameMarks,
    steps: body.steps,
    deviations: body.deviations,
  };
}

export const { createWriter, readJson, readCsv } = createLogFormat({
  name: "sinkside log",
  list: "rolls",
  schema: recordSchema,
  cells: {
    strips: {
      write: (frames) => (frames as readonly number[]).join(" "),
      read: (cell) => (cell === "" ? [] : cell.split(" ").map(Number)),
    },
    tabular_grain: { write: String, read: (cell) => cell === "true" },
    outcome: WORD_CELL,
    frame_marks: JSON_CELL,
    steps: JSON_CELL,
    deviations: JSON_CELL,
  },
});
