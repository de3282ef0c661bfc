import { pointDecimal } from "../speech/decimal.ts";
import { makeReuse, parseReuse } from "./reuse-text.ts";
import {
  makeAgitation,
  makeTemperature,
  parseAgitation,
  parseDilution,
  parseDuration,
  parseTemperature,
} from "../speech/measure.ts";
import { makeDilution, pointSchema, sheetSchema, type Point, type Sheet } from "../../store/shapes/sheet.ts";
import type { Result } from "../result.ts";
import type { z } from "zod";
import { inEach } from "../speech/language.ts";
import { formatSeconds } from "../speech/wording.ts";
import { de } from "./words/columns.de.ts";
import { type ColumnName, en } from "./words/columns.en.ts";

/*
 * The columns of a file of sheets, our own format: one line for each time, written as people write it. What is said of
 * a whole sheet may stand in any of its lines and must not differ between them; left empty it is not stated.
 */

const likes = inEach({ en, de });

/** How to write a cell of this column, for the person. */
export function likeOf(column: ColumnName): string {
  return likes()[column];
}

/** Wrong: the text can't be read; the fault is worded from this. */
export type Cell = { readonly ok: true; readonly value: unknown } | { readonly ok: false };

interface Column {
  readonly name: ColumnName;
  readonly isRequired: boolean;
  read(text: string): Cell;
  write(sheet: Sheet, point: Point): string;
}

const good = (value: unknown): Cell => ({ ok: true, value });
const BAD: Cell = { ok: false };

/** The value, where what keeps it takes it: its limits are written there alone. */
const fitting = (shape: z.ZodType, value: unknown): Cell =>
  shape.safeParse(value).success ? good(value) : BAD;

const name = (text: string, shape: z.ZodType): Cell => fitting(shape, text.replace(/\s+/g, " ").trim());

const whole = (text: string, shape: z.ZodType): Cell =>
  /^\d{1,7}$/.test(text) ? fitting(shape, Number(text)) : BAD;

function measured(read: Result<number, unknown>, shape: z.ZodType): Cell {
  return read.ok ? fitting(shape, read.value) : BAD;
}

const of = sheetSchema.shape;

/** What is said of each line. */
export const POINT_COLUMNS: Readonly<Record<"tenthsC" | "exposureIndex" | "seconds" | "source", Column>> = {
  tenthsC: {
    name: "temperature",
    isRequired: true,
    read: (text) => measured(parseTemperature(text), pointSchema.shape.tenthsC),
    write: (_, point) => makeTemperature(point.tenthsC),
  },
  exposureIndex: {
    name: "exposure_index",
    isRequired: false,
    read: (text) => whole(text, pointSchema.shape.exposureIndex),
    write: (_, point) => String(point.exposureIndex),
  },
  seconds: {
    name: "time",
    isRequired: true,
    read: (text) => measured(parseDuration(text), pointSchema.shape.seconds),
    write: (_, point) => formatSeconds(point.seconds),
  },
  source: {
    name: "source",
    isRequired: true,
    read: (text) => name(text, pointSchema.shape.source),
    write: (_, point) => point.source,
  },
};

/** What names the sheet a line belongs to. */
export const KEY_COLUMNS: Readonly<Record<"film" | "developer" | "dilution", Column>> = {
  film: {
    name: "film",
    isRequired: true,
    read: (text) => name(text, of.film),
    write: (sheet) => sheet.film,
  },
  developer: {
    name: "developer",
    isRequired: true,
    read: (text) => name(text, of.developer),
    write: (sheet) => sheet.developer,
  },
  dilution: {
    name: "dilution",
    isRequired: true,
    read(text) {
      const read = parseDilution(text);
      if (!read.ok) return BAD;
      return good({ concentrateParts: read.value.concentrateParts, waterParts: read.value.waterParts });
    },
    write: (sheet) => makeDilution(sheet.dilution),
  },
};

type Stated = "boxSpeed" | "agitation" | "factorPer10C" | "minTenthsC" | "maxTenthsC";
type AlsoStated = "minConcentrateMl" | "tabularGrain" | "reuse" | "sheetSource";

/** What is said of the whole sheet. */
export const SHEET_COLUMNS: Readonly<Record<Stated | AlsoStated, Column>> = {
  boxSpeed: {
    name: "film_speed",
    isRequired: true,
    read: (text) => whole(text, of.boxSpeed),
    write: (sheet) => String(sheet.boxSpeed),
  },
  agitation: {
    name: "agitation",
    isRequired: false,
    read(text) {
      const read = parseAgitation(text);
      return read.ok ? read : BAD;
    },
    write: (sheet) => makeAgitation(sheet.agitation),
  },
  factorPer10C: {
    name: "factor_per_10c",
    isRequired: false,
    read(text) {
      if (!/^\d([.,]\d{1,6})?$/.test(text)) return BAD;
      return fitting(of.factorPer10C, Number(pointDecimal(text)));
    },
    write: (sheet) => (sheet.factorPer10C === null ? "" : String(sheet.factorPer10C)),
  },
  minTenthsC: {
    name: "coldest",
    isRequired: false,
    read: (text) => measured(parseTemperature(text), of.minTenthsC),
    write: (sheet) => (sheet.minTenthsC === null ? "" : makeTemperature(sheet.minTenthsC)),
  },
  maxTenthsC: {
    name: "hottest",
    isRequired: false,
    read: (text) => measured(parseTemperature(text), of.maxTenthsC),
    write: (sheet) => (sheet.maxTenthsC === null ? "" : makeTemperature(sheet.maxTenthsC)),
  },
  minConcentrateMl: {
    name: "min_concentrate_ml",
    isRequired: false,
    read: (text) => whole(text, of.minConcentrateMl),
    write: (sheet) => (sheet.minConcentrateMl === null ? "" : String(sheet.minConcentrateMl)),
  },
  tabularGrain: {
    name: "tabular_grain",
    isRequired: false,
    read: (text) => (/^(yes|no)$/i.test(text) ? good(/^yes$/i.test(text)) : BAD),
    write: (sheet) => (sheet.tabularGrain ? "yes" : "no"),
  },
  reuse: {
    name: "reuse",
    isRequired: false,
    read(text) {
      const value = parseReuse(text);
      return value ? good(value) : BAD;
    },
    write: (sheet) => (sheet.reuse ? makeReuse(sheet.reuse) : ""),
  },
  sheetSource: {
    name: "sheet_source",
    isRequired: false,
    read: (text) => name(text, of.source),
    write: (sheet) => sheet.source,
  },
};

export const COLUMNS: readonly Column[] = [KEY_COLUMNS, SHEET_COLUMNS, POINT_COLUMNS].flatMap((each) =>
  Object.values(each),
);
