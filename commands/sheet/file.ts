import { fail, ok, type Result } from "../result.ts";
import { COLUMNS } from "./columns.ts";
import { readCsv } from "./csv.ts";
import type { FileFault } from "./file-faults.ts";
import { readJson } from "./json.ts";
import { type Given, NOTHING_GIVEN } from "./rows.ts";
import { readTable } from "./table.ts";
import type { ColumnName } from "./words/columns.en.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";

/** Longer than a class's sheets ever get. */
export const LONGEST_FILE = 500_000;

export interface ReadFile {
  readonly sheets: readonly Sheet[];
  /** Lines of a pasted table that hold no time. */
  readonly aside: readonly number[];
}

/** Sheets from a file's text or a pasted table, JSON or CSV as it begins; all or nothing, with every fault. */
export function readFile(text: string, given: Given): Result<ReadFile, FileFault[]> {
  if (text.length > LONGEST_FILE) return fail([{ code: "ERR_TOO_LONG", line: 1 }]);
  if (/^[\s\ufeff]*[{[]/.test(text)) return whole(readJson(text.replace(/^\ufeff/, "")));
  const table = isOurs(text) ? undefined : readTable(text, given);
  if (!table && !isOurs(text) && !namesColumn(text)) return fail([{ code: "ERR_NO_TABLE", line: 1 }]);
  if (!table) return whole(readCsv(text, given));
  return table.sheets.ok ? ok({ sheets: table.sheets.value, aside: table.aside }) : table.sheets;
}

const whole = (read: Result<Sheet[], FileFault[]>): Result<ReadFile, FileFault[]> =>
  read.ok ? ok({ sheets: read.value, aside: [] }) : read;

const namesIn = (text: string): string[] =>
  text
    .slice(0, text.search(/[\r\n]|$/))
    .toLowerCase()
    .split(/[,;\t"\ufeff]| {2,}/)
    .map((name) => name.trim());

/** A file whose first line names the column of times has one in each of its lines. */
const isOurs = (text: string): boolean => namesIn(text).includes("time" satisfies ColumnName);

const namesColumn = (text: string): boolean =>
  namesIn(text).some((name) => COLUMNS.some((column) => column.name === name));

export function readSheets(text: string): Result<Sheet[], FileFault[]> {
  const read = readFile(text, NOTHING_GIVEN);
  return read.ok ? ok([...read.value.sheets]) : read;
}
