import papa from "papaparse";
import { z } from "zod";
import { filmDeviationSchema } from "../../../store/shapes/run.ts";
import {
  frameMarkSchema,
  type LogFormat,
  OUTCOMES,
  rollStepSchema,
  type Roll,
} from "../../../store/shapes/roll.ts";

/*
 * The log as a file, in our own format: one record for each film, with the unit in each name. What was written can be
 * read back whole.
 *
 * JSON: { "format": "sinkside log", "version": 1, "rolls": [ … ] }, a line for each roll.
 * CSV: the same names as columns, in this order; `strips` holds frame counts with spaces between, `frame_marks`, `steps` and
 * `deviations` hold JSON. A text that a spreadsheet could take for a formula has an apostrophe before it.
 */

const FORMAT = "sinkside log";

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

const fileSchema = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(1),
  rolls: z.array(recordSchema),
});

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

/** A file that is written piece by piece: its head, portions of its records, its end. */
export interface LogWriter {
  readonly head: string;
  /** Portions follow each other; one may be empty. */
  write(records: readonly LogRecord[]): string;
  readonly tail: string;
}

export function createLogWriter(format: LogFormat): LogWriter {
  return format === "json" ? createJsonWriter() : createCsvWriter();
}

function createJsonWriter(): LogWriter {
  let between = "\n";
  return {
    head: `{"format":${JSON.stringify(FORMAT)},"version":1,"rolls":[`,
    write(records) {
      let text = "";
      for (const record of records) {
        text += between + JSON.stringify(record);
        between = ",\n";
      }
      return text;
    },
    tail: "\n]}\n",
  };
}

function createCsvWriter(): LogWriter {
  return {
    head: writeRows([COLUMNS]),
    write: (records) => (records.length === 0 ? "" : writeRows(records.map(toRow))),
    tail: "",
  };
}

/** Throws where it is not such a file. */
export function readJson(text: string): LogRecord[] {
  return fileSchema.parse(JSON.parse(text)).rolls;
}

const COLUMNS = Object.keys(recordSchema.shape) as (keyof LogRecord)[];

const toRow = (record: LogRecord): string[] => COLUMNS.map((column) => toCell(record[column], column));
const writeRows = (rows: string[][]): string => `${papa.unparse(rows)}\r\n`;

/** Throws where it is not such a file. */
export function readCsv(text: string): LogRecord[] {
  const { data } = papa.parse<string[]>(text.replace(/^\ufeff/, "").trimEnd(), { delimiter: "," });
  const [head = [], ...rows] = data;
  return rows.map((row) =>
    recordSchema.parse(
      Object.fromEntries(
        head.map((column, at) => [column, fromCell(row[at] ?? "", column as keyof LogRecord)]),
      ),
    ),
  );
}

/**
 * A spreadsheet must not take a text for a formula; nor a part of it, where it splits cells at semicolons or tabs, as those
 * of many countries do whatever the quotes say.
 */
export function guardCell(text: string): string {
  const inside = text.replaceAll(/([;\t\r\n]\s*)(['=+\-@])/g, "$1'$2");
  return /^['=+\-@\t\r]/.test(text) ? `'${inside}` : inside;
}

/** The reverse. */
export function bareCell(cell: string): string {
  const inside = cell.startsWith("'") ? cell.slice(1) : cell;
  return inside.replaceAll(/([;\t\r\n]\s*)'(['=+\-@])/g, "$1$2");
}

function toCell(value: LogRecord[keyof LogRecord], column: keyof LogRecord): string {
  if (value === null) return "";
  if (column === "strips") return (value as readonly number[]).join(" ");
  if (typeof value === "object") return guardCell(JSON.stringify(value));
  return typeof value === "string" ? guardCell(value) : String(value);
}

function fromCell(cell: string, column: keyof LogRecord): unknown {
  if (column === "strips") return cell === "" ? [] : cell.split(" ").map(Number);
  if (column === "frame_marks" || column === "steps" || column === "deviations")
    return JSON.parse(bareCell(cell));
  if (column === "tabular_grain") return cell === "true";
  const schema: z.ZodType = recordSchema.shape[column];
  if (schema.safeParse("x").success || column === "outcome") return bareCell(cell);
  return cell === "" ? null : Number(cell);
}
