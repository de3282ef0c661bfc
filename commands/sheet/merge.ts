import type { Point, Sheet } from "../../store/shapes/sheet.ts";
import { checkSheet, type SheetFault } from "./check.ts";
import { sortPoints } from "./edit.ts";
import { matchSheets } from "./find.ts";

/* A file's sheets laid over those a class has: nothing that the file does not speak of is lost. */

export interface Replaced {
  readonly sheet: Sheet;
  readonly before: Point;
  readonly after: Point;
}

export interface Merged {
  /** As they are to be kept, in the order of the file. */
  readonly sheets: readonly Sheet[];
  readonly newSheets: number;
  readonly newTimes: number;
  /** Times that the file gives otherwise. */
  readonly replaced: readonly Replaced[];
  /** Sheets whose old and new times can't both be true. */
  readonly faults: readonly { readonly sheet: Sheet; readonly faults: readonly SheetFault[] }[];
}

const isSamePlace = (a: Point, b: Point): boolean =>
  a.tenthsC === b.tenthsC && a.exposureIndex === b.exposureIndex;

export function mergeSheets(known: readonly Sheet[], fresh: readonly Sheet[]): Merged {
  const sheets: Sheet[] = [];
  const replaced: Replaced[] = [];
  const faults: { sheet: Sheet; faults: SheetFault[] }[] = [];
  let newSheets = 0;
  let newTimes = 0;
  for (const sheet of fresh) {
    const before = matchSheets(known, sheet)[0];
    if (!before) {
      newSheets += 1;
      newTimes += sheet.points.length;
      sheets.push(sheet);
      continue;
    }
    for (const after of sheet.points) {
      const same = before.points.find((point) => isSamePlace(point, after));
      if (!same) newTimes += 1;
      else if (same.seconds !== after.seconds) replaced.push({ sheet, before: same, after });
    }
    const kept = before.points.filter((point) => !sheet.points.some((after) => isSamePlace(point, after)));
    const merged = { ...sheet, points: sortPoints([...kept, ...sheet.points]) };
    const wrong = checkSheet(merged);
    if (wrong.length > 0) faults.push({ sheet: merged, faults: wrong });
    sheets.push(merged);
  }
  return { sheets, newSheets, newTimes, replaced, faults };
}
