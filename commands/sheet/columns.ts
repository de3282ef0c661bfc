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
import { makeDilution, type Point, type Sheet } from "../../store/shapes/sheet.ts";
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

function name(text: string, most: number): Cell {
  return text.length <= most ? good(text.replace(/\s+/g, " ").trim()) : BAD;
}

function whole(text: string, least: number, most: number): Cell {
  const value = Number(text);
  return /^\d{1,7}$/.test(text) && value >= least && value <= most ? good(value) : BAD;
}

function temperature(text: string): Cell {
  const read = parseTemperature(text);
  return read.ok && read.value >= 50 && read.value <= 450 ? read : BAD;
}

/** What is said of each line. */
export const POINT_COLUMNS: Readonly<Record<"tenthsC" | "exposureIndex" | "seconds" | "source", Column>> = {
  tenthsC: {
    name: "temperature",
    isRequired: true,
    read: temperature,
    write: (_, point) => makeTemperature(point.tenthsC),
  },
  exposureIndex: {
    name: "exposure_index",
    isRequired: false,
    read: (text) => whole(text, 1, 102_400),
    write: (_, point) => String(point.exposureIndex),
  },
  seconds: {
    name: "time",
    isRequired: true,
    read(text) {
      const read = parseDuration(text);
      return read.ok && read.value >= 15 && read.value <= 10_800 ? read : BAD;
    },
    write: (_, point) => formatSeconds(point.seconds),
  },
  source: {
    name: "source",
    isRequired: true,
    read: (text) => name(text, 200),
    write: (_, point) => point.source,
  },
};

/** What names the sheet a line belongs to. */
export const KEY_COLUMNS: Readonly<Record<"film" | "developer" | "dilution", Column>> = {
  film: {
    name: "film",
    isRequired: true,
    read: (text) => name(text, 60),
    write: (sheet) => sheet.film,
  },
  developer: {
    name: "developer",
    isRequired: true,
    read: (text) => name(text, 60),
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
    read: (text) => whole(text, 1, 102_400),
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
      const value = Number(pointDecimal(text));
      return /^\d([.,]\d{1,6})?$/.test(text) && value >= 1 && value <= 6 ? good(value) : BAD;
    },
    write: (sheet) => (sheet.factorPer10C === null ? "" : String(sheet.factorPer10C)),
  },
  minTenthsC: {
    name: "coldest",
    isRequired: false,
    read: temperature,
    write: (sheet) => (sheet.minTenthsC === null ? "" : makeTemperature(sheet.minTenthsC)),
  },
  maxTenthsC: {
    name: "hottest",
    isRequired: false,
    read: temperature,
    write: (sheet) => (sheet.maxTenthsC === null ? "" : makeTemperature(sheet.maxTenthsC)),
  },
  minConcentrateMl: {
    name: "min_concentrate_ml",
    isRequired: false,
    read: (text) => whole(text, 0, 100_000),
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
    read: (text) => name(text, 200),
    write: (sheet) => sheet.source,
  },
};

export const COLUMNS: readonly Column[] = [KEY_COLUMNS, SHEET_COLUMNS, POINT_COLUMNS].flatMap((each) =>
  Object.values(each),
);
