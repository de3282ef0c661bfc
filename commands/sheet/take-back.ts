import type { Change } from "../../store/shapes/import.ts";
import type { Point, Sheet } from "../../store/shapes/sheet.ts";
import { checkSheet } from "./check.ts";
import { SHEET_COLUMNS } from "./columns.ts";
import { sortPoints } from "./edit.ts";
import { isSamePlace } from "./merge.ts";

/* An import taken back: what it changed becomes as it was, but for what somebody has changed since. */

export interface Undone {
  /** As it is to be kept; null: it goes, since the import made it. */
  readonly sheet: Sheet | null;
  /** How many times become as they were. */
  readonly times: number;
  /** Times of the import that have become others since, as they are now. */
  readonly left: readonly Point[];
  /** Why nothing of this sheet is taken back; null: it is. */
  readonly hindrance: "gone" | "contradiction" | null;
}

/** `now`: the sheet as it is; undefined: it is not there any more. */
export function takeBack({ before, after }: Change, now: Sheet | undefined): Undone {
  if (!now) return { sheet: null, times: 0, left: [], hindrance: "gone" };
  const left: Point[] = [];
  let times = 0;
  let points: readonly Point[] = now.points;
  for (const brought of after.points) {
    const was = before?.points.find((point) => isSamePlace(point, brought));
    const is = points.find((point) => isSamePlace(point, brought));
    if ((was && isSame(was, brought)) || !is) continue;
    if (!isSame(is, brought)) {
      left.push(is);
      continue;
    }
    times += 1;
    points = [...points.filter((point) => point !== is), ...(was ? [was] : [])];
  }
  if (points.length === 0) return { sheet: null, times, left, hindrance: null };
  const sheet = { ...now, ...factsBefore(before, after, now), points: sortPoints(points) };
  return checkSheet(sheet).length > 0
    ? { sheet: now, times: 0, left, hindrance: "contradiction" }
    : { sheet, times, left, hindrance: null };
}

const isSame = (a: Point, b: Point): boolean => a.seconds === b.seconds && a.source === b.source;

/** What the import said of the whole sheet and nobody has said otherwise since. */
function factsBefore(before: Sheet | null, after: Sheet, now: Sheet): Partial<Sheet> {
  const [point] = after.points;
  if (!before || !point) return {};
  const facts = Object.entries({ ...SHEET_COLUMNS, source: SHEET_COLUMNS.sheetSource }).flatMap(
    ([key, { write }]) => {
      const [was, came, is] = [before, after, now].map((sheet) => write(sheet, point));
      return key !== "sheetSource" && was !== came && came === is ? [[key, before[key as keyof Sheet]]] : [];
    },
  );
  return Object.fromEntries(facts) as Partial<Sheet>;
}
