import papa from "papaparse";
import { z } from "zod";
import { LIGHTS } from "../../../store/shapes/enlarger.ts";
import { PAPER_KINDS } from "../../../store/shapes/paper.ts";
import { localSchema, type Print } from "../../../store/shapes/print.ts";
import { bareCell, guardCell } from "../../roll/export/file.ts";

/*
 * The log of prints as a file, in our own format, as that of rolls: one record for each print, with the unit in each name.
 * What was written can be read back whole.
 *
 * JSON: { "format": "sinkside prints", "version": 1, "prints": [ … ] }.
 * CSV: the same names as columns, in this order; `burns_dodges` holds JSON.
 */

export const EXPORT_FORMATS = ["csv", "json"] as const;
export type ExportFormat = (typeof EXPORT_FORMATS)[number];

const FORMAT = "sinkside prints";

export const recordSchema = z.strictObject({
  /** The number in the log, without its letter. */
  print: z.int(),
  person: z.string(),
  title: z.string(),
  /** The roll's number; null: not said. */
  roll: z.int().nullable(),
  frame: z.string(),
  /** UTC, ISO 8601. */
  made_at: z.string(),
  exposure_seconds: z.number(),
  /** -1 stands for 00; null: no filter. */
  grade: z.number().nullable(),
  burns_dodges: z.array(localSchema),
  f_number: z.number().nullable(),
  head_cm: z.number().nullable(),
  short_mm: z.int().nullable(),
  long_mm: z.int().nullable(),
  enlarger: z.string(),
  light: z.enum(LIGHTS).nullable(),
  lens_mm: z.int().nullable(),
  timer_seconds: z.number().nullable(),
  paper: z.string(),
  paper_kind: z.enum(PAPER_KINDS).nullable(),
  paper_lot: z.string(),
  paper_speed: z.number().nullable(),
  developer: z.string(),
  developed_seconds: z.int().nullable(),
  /** Of the developer, °C with one decimal. */
  temperature_c: z.number().nullable(),
  rating: z.int().nullable(),
  fault: z.string(),
  cause: z.string(),
  note: z.string(),
});
export type PrintRecord = z.output<typeof recordSchema>;

const fileSchema = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(1),
  prints: z.array(recordSchema),
});

const tenth = (tenths: number | null | undefined): number | null => (tenths == null ? null : tenths / 10);

export function toRecord({ body, ...print }: Print): PrintRecord {
  const { enlarger, paper, size } = body;
  return {
    print: print.number,
    person: print.personName,
    title: print.title,
    roll: print.roll,
    frame: print.frame,
    made_at: new Date(print.madeAt).toISOString(),
    exposure_seconds: body.exposureTenths / 10,
    grade: tenth(paper?.gradeTenths ?? body.gradeTenths),
    burns_dodges: body.locals,
    f_number: tenth(body.apertureTenths),
    head_cm: tenth(body.headMm),
    short_mm: size?.shortMm ?? null,
    long_mm: size?.longMm ?? null,
    enlarger: enlarger?.name ?? "",
    light: enlarger?.light ?? null,
    lens_mm: enlarger?.lensMm ?? null,
    timer_seconds: tenth(enlarger?.timerTenths),
    paper: paper?.name ?? "",
    paper_kind: paper?.kind ?? null,
    paper_lot: paper?.lot ?? "",
    paper_speed: tenth(paper?.speed?.tenths),
    developer: body.developer ?? "",
    developed_seconds: body.developSeconds,
    temperature_c: tenth(body.tenthsC),
    rating: print.rating,
    fault: print.fault,
    cause: body.cause ?? "",
    note: print.note,
  };
}

export function writePrints(prints: readonly Print[], format: ExportFormat): string {
  const records = prints.map(toRecord);
  return format === "json" ? writeJson(records) : writeCsv(records);
}

export function writeJson(prints: readonly PrintRecord[]): string {
  return `${JSON.stringify({ format: FORMAT, version: 1, prints }, null, 2)}\n`;
}

/** Throws where it is not such a file. */
export function readJson(text: string): PrintRecord[] {
  return fileSchema.parse(JSON.parse(text)).prints;
}

const COLUMNS = Object.keys(recordSchema.shape) as (keyof PrintRecord)[];

export function writeCsv(records: readonly PrintRecord[]): string {
  const data = records.map((record) => COLUMNS.map((column) => toCell(record[column])));
  return `${papa.unparse({ fields: COLUMNS, data })}\r\n`;
}

/** Throws where it is not such a file. */
export function readCsv(text: string): PrintRecord[] {
  const { data } = papa.parse<string[]>(text.replace(/^\ufeff/, "").trimEnd(), { delimiter: "," });
  const [head = [], ...rows] = data;
  return rows.map((row) =>
    recordSchema.parse(
      Object.fromEntries(
        head.map((column, at) => [column, fromCell(row[at] ?? "", column as keyof PrintRecord)]),
      ),
    ),
  );
}

function toCell(value: PrintRecord[keyof PrintRecord]): string {
  if (value === null) return "";
  if (typeof value === "object") return guardCell(JSON.stringify(value));
  return typeof value === "string" ? guardCell(value) : String(value);
}

function fromCell(cell: string, column: keyof PrintRecord): unknown {
  if (column === "burns_dodges") return JSON.parse(bareCell(cell));
  const schema: z.ZodType = recordSchema.shape[column];
  if (schema.safeParse("x").success) return bareCell(cell);
  if (cell === "") return null;
  return column === "light" || column === "paper_kind" ? cell : Number(cell);
}
