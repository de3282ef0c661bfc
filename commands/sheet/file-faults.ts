import { makeDilution, type Point, type Sheet } from "../../store/shapes/sheet.ts";
import { checkSheet, type SheetFault } from "./check.ts";
import { foldName } from "./names.ts";

/* What can be wrong with a file of sheets; each fault has the line it stands in. Worded in file-words.ts. */

export type FileFault = { readonly line: number } & (
  | {
      readonly code:
        | "ERR_NO_SHEETS"
        | "ERR_NO_TABLE"
        | "ERR_QUOTES"
        | "ERR_TOO_MANY_CELLS"
        | "ERR_TOO_LONG"
        | "ERR_TOO_MANY_POINTS";
    }
  | { readonly code: "ERR_COLUMN_UNKNOWN"; readonly name: string; readonly known: readonly string[] }
  | { readonly code: "ERR_COLUMN_TWICE" | "ERR_COLUMN_MISSING" | "ERR_CELL_EMPTY"; readonly name: string }
  /** Neither the rows nor what was said beside them tells it. */
  | { readonly code: "ERR_NOT_SAID"; readonly name: "film" | "developer" | "dilution" | "film_speed" }
  | { readonly code: "ERR_FEW_CELLS"; readonly has: number; readonly wants: number }
  | { readonly code: "ERR_CELL"; readonly name: string; readonly text: string; readonly like: string }
  | { readonly code: "ERR_DIFFERS"; readonly name: string; readonly otherLine: number }
  | { readonly code: "ERR_SHEET_TWICE"; readonly otherLine: number }
  | { readonly code: "ERR_JSON"; readonly what: string }
  | { readonly code: "ERR_NOT_OUR_FORMAT" }
  | { readonly code: "ERR_VALUE"; readonly path: string; readonly what: string }
  | { readonly code: "ERR_SHEET"; readonly fault: SheetFault; readonly otherLine: number | null }
);

/** A sheet and where it stands in the file. */
export interface Placed {
  readonly sheet: Sheet;
  readonly line: number;
  readonly pointLines: readonly number[];
}

export const MOST_POINTS = 200;

/** What can't be true of the sheets, alone and together. */
export function checkFile(placed: readonly Placed[]): FileFault[] {
  const faults: FileFault[] = [];
  const seen = new Map<string, number>();
  for (const { sheet, line, pointLines } of placed) {
    const key = JSON.stringify([
      foldName(sheet.film),
      foldName(sheet.developer),
      makeDilution(sheet.dilution),
    ]);
    const otherLine = seen.get(key);
    if (otherLine !== undefined) faults.push({ code: "ERR_SHEET_TWICE", line, otherLine });
    seen.set(key, line);
    if (sheet.points.length > MOST_POINTS) faults.push({ code: "ERR_TOO_MANY_POINTS", line });
    const lineOf = (point: Point): number => pointLines[sheet.points.indexOf(point)] ?? line;
    for (const fault of checkSheet(sheet).slice(0, MOST_POINTS)) {
      const own = "second" in fault ? lineOf(fault.second) : "point" in fault ? lineOf(fault.point) : line;
      const other = "first" in fault ? lineOf(fault.first) : null;
      faults.push({ code: "ERR_SHEET", line: own, fault, otherLine: other });
    }
  }
  return faults;
}
