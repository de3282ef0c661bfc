import { z } from "zod";
import { LIGHTS } from "../../../store/shapes/enlarger.ts";
import { PAPER_KINDS } from "../../../store/shapes/paper.ts";
import { localSchema, type Print } from "../../../store/shapes/print.ts";
import { createLogFormat, JSON_CELL, WORD_CELL } from "../../roll/export/log-format.ts";

/* The log of prints as a file (log-format.ts of the rolls): one record for each print. In CSV `burns_dodges` holds JSON. */

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

export const { createWriter, readJson, readCsv } = createLogFormat({
  name: "sinkside prints",
  list: "prints",
  schema: recordSchema,
  cells: { burns_dodges: JSON_CELL, light: WORD_CELL, paper_kind: WORD_CELL },
});
