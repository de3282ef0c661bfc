import { inEach } from "../speech/language.ts";
import { plain, quoted } from "../speech/wording.ts";
import type { SheetFault } from "./check.ts";
import type { FileFault } from "./file-faults.ts";
import type { Point } from "../../store/shapes/sheet.ts";
import { de } from "./words/file.de.ts";
import { en } from "./words/file.en.ts";

/* The sentences for what is wrong with a sheet or a file of sheets. */

const words = inEach({ en, de });

/** `9:00 at 20 °C, EI 400`. */
function sayPoint({ seconds, tenthsC, exposureIndex }: Point): string {
  return words().point(seconds, tenthsC, exposureIndex);
}

type SheetText = { readonly [C in SheetFault["code"]]: (fault: Extract<SheetFault, { code: C }>) => string };

const SHEET_FAULT_TEXT: SheetText = {
  ERR_CONTRADICTION: ({ first, second }) => words().sheet.contradiction(sayPoint(first), sayPoint(second)),
  ERR_TWO_TIMES: ({ first, second }) =>
    first.seconds === second.seconds
      ? words().sheet.rowTwice(sayPoint(first))
      : words().sheet.twoTimes(sayPoint(first), sayPoint(second)),
  ERR_OUTSIDE_RANGE: ({ point, min, max }) => words().sheet.outsideRange(sayPoint(point), sayRange(min, max)),
  ERR_EMPTY_RANGE: ({ min, max }) => words().sheet.emptyRange(min, max),
  ERR_SCHEME: () => words().sheet.scheme,
};

function sayRange(min: number, max: number): string {
  if (min === -Infinity) return words().upTo(max);
  return max === Infinity ? words().from(min) : words().between(min, max);
}

export function saySheetFault(fault: SheetFault): string {
  return (SHEET_FAULT_TEXT[fault.code] as (fault: SheetFault) => string)(fault);
}

type FileText = { readonly [C in FileFault["code"]]: (fault: Extract<FileFault, { code: C }>) => string };

const FILE_FAULT_TEXT: FileText = {
  ERR_NO_SHEETS: () => words().file.noSheets,
  ERR_NO_TABLE: () => words().file.noTable,
  ERR_NOT_SAID: ({ name }) => words().file.notSaid[name],
  ERR_FEW_CELLS: ({ has, wants }) => words().file.fewCells(has, wants),
  ERR_QUOTES: () => words().file.quotes,
  ERR_TOO_MANY_CELLS: () => words().file.tooManyCells,
  ERR_TOO_LONG: () => words().file.tooLong,
  ERR_TOO_MANY_POINTS: () => words().file.tooManyPoints,
  ERR_COLUMN_UNKNOWN: ({ name, known }) => words().file.columnUnknown(show(name), known.map(plain)),
  ERR_COLUMN_TWICE: ({ name }) => words().file.columnTwice(plain(name)),
  ERR_COLUMN_MISSING: ({ name }) => words().file.columnMissing(plain(name)),
  ERR_CELL_EMPTY: ({ name }) => words().file.cellEmpty(plain(name)),
  ERR_CELL: ({ name, text, like }) => words().file.cell(plain(name), show(text), like),
  ERR_DIFFERS: ({ name, otherLine }) => words().file.differs(plain(name), otherLine),
  ERR_SHEET_TWICE: ({ otherLine }) => words().file.sheetTwice(otherLine),
  ERR_JSON: ({ what }) => words().file.json(what),
  ERR_NOT_OUR_FORMAT: () => words().file.notOurFormat,
  ERR_VALUE: ({ path, what }) =>
    words().file.value(path === "" ? words().file.theFile : show(path), plain(what)),
  ERR_SHEET: ({ fault, otherLine }) =>
    otherLine === null ? saySheetFault(fault) : words().file.withLine(otherLine, saySheetFault(fault)),
};

/** Text from a file, short and harmless. */
function show(text: string): string {
  return quoted(plain(text.length > 40 ? `${text.slice(0, 40)}…` : text));
}

/** `Line 3: time can't be "nine". …` */
export function sayFileFault(fault: FileFault): string {
  return words().line(fault.line, (FILE_FAULT_TEXT[fault.code] as (fault: FileFault) => string)(fault));
}
