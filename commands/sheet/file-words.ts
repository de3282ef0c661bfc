import { formatSeconds, formatTenthsC, joinAnd, plain } from "../wording.ts";
import type { SheetFault } from "./check.ts";
import type { FileFault } from "./file-faults.ts";
import type { Point } from "./sheet.ts";

/* The sentences for what is wrong with a sheet or a file of sheets. */

/** `9:00 at 20 °C, EI 400`. */
export function sayPoint(point: Point): string {
  return `${formatSeconds(point.seconds)} at ${formatTenthsC(point.tenthsC)}, EI ${point.exposureIndex}`;
}

type SheetWords = { readonly [C in SheetFault["code"]]: (fault: Extract<SheetFault, { code: C }>) => string };

const SHEET_FAULT_TEXT: SheetWords = {
  ERR_CONTRADICTION: ({ first, second }) =>
    `These two rows contradict each other: ${sayPoint(first)}, but ${sayPoint(second)}. A hotter developer never takes longer, nor does a lower exposure index. Check both in the source.`,
  ERR_TWO_TIMES: ({ first, second }) =>
    first.seconds === second.seconds
      ? `This row is there twice: ${sayPoint(first)}. Keep one.`
      : `Two times for one place: ${sayPoint(first)}, and ${sayPoint(second)}. Keep the one you trust.`,
  ERR_OUTSIDE_RANGE: ({ point, min, max }) =>
    `The row ${sayPoint(point)} lies outside the sheet's own range (${sayRange(min, max)}). Change the range or the row.`,
  ERR_EMPTY_RANGE: ({ min, max }) =>
    `The coldest temperature (${formatTenthsC(min)}) is above the hottest (${formatTenthsC(max)}). Swap them.`,
  ERR_SCHEME: () =>
    "The agitation does not work: each burst must be shorter than its cycle. Write it like 30/5/60 or continuous.",
};

function sayRange(min: number, max: number): string {
  if (min === -Infinity) return `up to ${formatTenthsC(max)}`;
  return max === Infinity ? `from ${formatTenthsC(min)}` : `${formatTenthsC(min)} to ${formatTenthsC(max)}`;
}

export function saySheetFault(fault: SheetFault): string {
  return (SHEET_FAULT_TEXT[fault.code] as (fault: SheetFault) => string)(fault);
}

type FileWords = { readonly [C in FileFault["code"]]: (fault: Extract<FileFault, { code: C }>) => string };

const FILE_FAULT_TEXT: FileWords = {
  ERR_NO_SHEETS: () => "there are no sheets in it.",
  ERR_QUOTES: () => 'a quotation mark (") is left open or stands in the middle of a cell.',
  ERR_TOO_MANY_CELLS: () => "more cells than the first line has names.",
  ERR_TOO_LONG: () => "the file is too long. Import it in parts.",
  ERR_TOO_MANY_POINTS: () => "more than 200 times in one sheet.",
  ERR_COLUMN_UNKNOWN: ({ name, known }) =>
    `I know no column ${show(name)}. I know ${joinAnd(known.map(plain))}.`,
  ERR_COLUMN_TWICE: ({ name }) => `the column ${plain(name)} is there twice.`,
  ERR_COLUMN_MISSING: ({ name }) => `the column ${plain(name)} is missing.`,
  ERR_CELL_EMPTY: ({ name }) => `${plain(name)} is empty.`,
  ERR_CELL: ({ name, text, like }) => `${plain(name)} can't be ${show(text)}. Write it like ${like}.`,
  ERR_DIFFERS: ({ name, otherLine }) =>
    `${plain(name)} differs from line ${otherLine} of the same sheet. Write the same, or leave one empty.`,
  ERR_SHEET_TWICE: ({ otherLine }) => `this film, developer and dilution are already in line ${otherLine}.`,
  ERR_JSON: ({ what }) => `this is not JSON (${what}).`,
  ERR_NOT_OUR_FORMAT: () =>
    'the file must begin with "format": "sinkside sheets". Export a sheet to see one.',
  ERR_VALUE: ({ path, what }) => `${show(path === "" ? "the file" : path)} must be ${plain(what)}.`,
  ERR_SHEET: ({ fault, otherLine }) =>
    otherLine === null ? saySheetFault(fault) : `(with line ${otherLine}) ${saySheetFault(fault)}`,
};

/** Text from a file, short and harmless. */
function show(text: string): string {
  return `"${plain(text.length > 40 ? `${text.slice(0, 40)}…` : text)}"`;
}

/** `Line 3: time can't be "nine". …` */
export function sayFileFault(fault: FileFault): string {
  return `Line ${fault.line}: ${(FILE_FAULT_TEXT[fault.code] as (fault: FileFault) => string)(fault)}`;
}
