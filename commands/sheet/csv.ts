import papa from "papaparse";
import { fail, type Result } from "../result.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import { COLUMNS } from "./columns.ts";
import type { FileFault } from "./file-faults.ts";
import { type Given, NOTHING_GIVEN, readRows, type Row } from "./rows.ts";

/* Sheets as lines of a table, one for each time. The columns are in columns.ts. */

export function writeCsv(sheets: readonly Sheet[]): string {
  const lines = sheets.flatMap((sheet) =>
    sheet.points.map((point) =>
      Object.fromEntries(COLUMNS.map((column) => [column.name, column.write(sheet, point)])),
    ),
  );
  // A spreadsheet must not take a name for a formula.
  return `${papa.unparse({ fields: COLUMNS.map(({ name }) => name), data: lines }, { escapeFormulae: true })}\r\n`;
}

/** All sheets of the file, or every fault of it. */
export function readCsv(text: string, given: Given = NOTHING_GIVEN): Result<Sheet[], FileFault[]> {
  const parsed = papa.parse<string[]>(parted(text.replace(/^\ufeff/, "")), {
    delimiter: delimiterOf(text),
    skipEmptyLines: false,
  });
  const faults: FileFault[] = parsed.errors
    .filter(({ code }) => code === "MissingQuotes" || code === "InvalidQuotes")
    .map(({ row }) => ({ code: "ERR_QUOTES", line: lineOf(parsed.data, row ?? 0) }));
  const [header, ...cells] = parsed.data;
  const names = (header ?? []).map((name) => name.trim().toLowerCase());
  faults.push(...headerFaults(names, given));
  if (faults.length > 0) return fail(faults);
  const rows = cells
    .map((each, at): Row => ({ cells: each, line: lineOf(parsed.data, at + 1) }))
    .filter((row) => row.cells.some((cell) => cell.trim() !== ""));
  return readRows(names, rows, given);
}

/** By the first line alone: what the cells below hold must not decide it. */
function delimiterOf(text: string): string {
  const head = headOf(text);
  if (isSpaced(head)) return "\t";
  return [",", ";", "\t"].reduce((best, each) =>
    head.split(each).length > head.split(best).length ? each : best,
  );
}

const headOf = (text: string): string => text.slice(0, text.search(/[\r\n]|$/));

/** Columns apart by several spaces, as they come out of many a page. */
const isSpaced = (head: string): boolean => !/[,;\t]/.test(head) && / {2,}/.test(head.trim());

const parted = (text: string): string =>
  isSpaced(headOf(text)) ? text.replace(/^ +| +$/gm, "").replace(/ {2,}/g, "\t") : text;

/** A quoted cell may hold line breaks, so a row's place is counted from what stands before it. */
function lineOf(rows: readonly string[][], row: number): number {
  let line = row + 1;
  for (const cells of rows.slice(0, row)) {
    for (const cell of cells) line += cell.split("\n").length - 1;
  }
  return line;
}

function headerFaults(names: readonly string[], { cells }: Given): FileFault[] {
  const known: string[] = COLUMNS.map(({ name }) => name);
  const unknown = names.filter((name) => !known.includes(name));
  const twice = names.filter((name, at) => known.includes(name) && names.indexOf(name) !== at);
  const missing = COLUMNS.filter(
    ({ name, isRequired }) => isRequired && !names.includes(name) && cells[name] === undefined,
  );
  return [
    ...unknown.map((name): FileFault => ({ code: "ERR_COLUMN_UNKNOWN", line: 1, name, known })),
    ...twice.map((name): FileFault => ({ code: "ERR_COLUMN_TWICE", line: 1, name })),
    ...missing.map(({ name }): FileFault => ({ code: "ERR_COLUMN_MISSING", line: 1, name })),
  ];
}
