import type { Point, Sheet } from "../../store/shapes/sheet.ts";
import { checkSheet, type SheetFault } from "./check.ts";
import { SHEET_COLUMNS } from "./columns.ts";
import { sortPoints } from "./edit.ts";
import { matchSheets } from "./find.ts";
import type { ColumnName } from "./words/columns.en.ts";
import type { Change } from "../../store/shapes/import.ts";

/* A file's sheets laid over those a class has: nothing that the file does not speak of is lost. */

export interface Replaced {
  readonly sheet: Sheet;
  readonly before: Point;
  readonly after: Point;
}

/** What is said of the whole sheet, and would be said otherwise. */
export interface Restated {
  readonly sheet: Sheet;
  readonly name: ColumnName;
  /** As a file writes it; empty: nothing is said. */
  readonly before: string;
  readonly after: string;
}

export interface Merged {
  /** As they are to be kept, in the order of the file. */
  readonly sheets: readonly Sheet[];
  readonly newSheets: number;
  readonly newTimes: number;
  /** Times that the file gives otherwise. */
  readonly replaced: readonly Replaced[];
  readonly restated: readonly Restated[];
  /** The sheets that become others, each with what it was; null: there was none. */
  readonly changes: readonly Change[];
  /** Sheets whose old and new times can't both be true. */
  readonly faults: readonly { readonly sheet: Sheet; readonly faults: readonly SheetFault[] }[];
}

const { sheetSource: _source, ...FACT_COLUMNS } = SHEET_COLUMNS;

export const isSamePlace = (a: Point, b: Point): boolean =>
  a.tenthsC === b.tenthsC && a.exposureIndex === b.exposureIndex;

export function mergeSheets(known: readonly Sheet[], fresh: readonly Sheet[]): Merged {
  const sheets: Sheet[] = [];
  const replaced: Replaced[] = [];
  const restated: Restated[] = [];
  const changes: Change[] = [];
  const faults: { sheet: Sheet; faults: SheetFault[] }[] = [];
  let newSheets = 0;
  let newTimes = 0;
  for (const sheet of fresh) {
    const before = matchSheets(known, sheet)[0];
    if (!before) {
      newSheets += 1;
      newTimes += sheet.points.length;
      sheets.push(sheet);
      changes.push({ before: null, after: sheet });
      continue;
    }
    for (const after of sheet.points) {
      const same = before.points.find((point) => isSamePlace(point, after));
      if (!same) newTimes += 1;
      else if (same.seconds !== after.seconds) replaced.push({ sheet, before: same, after });
    }
    const kept = before.points.filter((point) => !sheet.points.some((after) => isSamePlace(point, after)));
    restated.push(...restatedBy(before, sheet));
    const merged = {
      ...sheet,
      film: before.film,
      developer: before.developer,
      points: sortPoints([...kept, ...sheet.points]),
    };
    const wrong = checkSheet(merged);
    if (wrong.length > 0) faults.push({ sheet: merged, faults: wrong });
    sheets.push(merged);
    if (JSON.stringify(merged) !== JSON.stringify(before)) changes.push({ before, after: merged });
  }
  return { sheets, newSheets, newTimes, replaced, restated, changes, faults };
}

/** Where the sheet as a whole comes from may change with its times. */
function restatedBy(before: Sheet, after: Sheet): Restated[] {
  const [point] = after.points;
  if (!point) return [];
  return Object.values(FACT_COLUMNS).flatMap(({ name, write }): Restated[] => {
    const [was, is] = [write(before, point), write(after, point)];
    return was === is ? [] : [{ sheet: after, name, before: was, after: is }];
  });
}
