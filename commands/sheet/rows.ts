import { NAVY_TANK } from "./agitation.ts";
import { fail, ok, type Result } from "../result.ts";
import { type Dilution, makeDilution, type Point, type Sheet } from "../../store/shapes/sheet.ts";
import { KEY_COLUMNS, likeOf, POINT_COLUMNS, SHEET_COLUMNS } from "./columns.ts";
import type { ColumnName } from "./words/columns.en.ts";
import { checkFile, type FileFault, type Placed } from "./file-faults.ts";
import { matchSheets } from "./find.ts";
import { foldName } from "./names.ts";

/* Rows of cells, one time in each, as sheets: whatever file or table they came out of. */

export interface Row {
  readonly cells: readonly string[];
  /** Where it stands in the file, from 1. */
  readonly line: number;
}

/** What is known beside the rows. */
export interface Given {
  /** What stands in a cell that the rows don't have. */
  readonly cells: Readonly<Partial<Record<ColumnName, string>>>;
  /** The class's own: what a row doesn't state of its sheet stays as it is there. */
  readonly known: readonly Sheet[];
}

export const NOTHING_GIVEN: Given = { cells: {}, known: [] };

interface Group {
  readonly line: number;
  readonly film: string;
  readonly developer: string;
  readonly dilution: Dilution;
  readonly stated: Map<string, { value: unknown; line: number }>;
  readonly points: { point: Omit<Point, "exposureIndex"> & { exposureIndex: number | null }; line: number }[];
}

/** All sheets of the rows, or every fault of them. `names`: whose cell stands where. */
export function readRows(
  names: readonly string[],
  rows: readonly Row[],
  given: Given,
): Result<Sheet[], FileFault[]> {
  const faults: FileFault[] = [];
  const groups = new Map<string, Group>();
  for (const row of rows) readRow(names, row, given, groups, faults);
  const placed = [...groups.values()].flatMap((group) => finish(group, given, faults));
  if (groups.size === 0 && faults.length === 0) faults.push({ code: "ERR_NO_SHEETS", line: 1 });
  faults.push(...checkFile(placed));
  return faults.length > 0
    ? fail(faults.sort((a, b) => a.line - b.line))
    : ok(placed.map(({ sheet }) => sheet));
}

function readRow(
  names: readonly string[],
  { cells, line }: Row,
  given: Given,
  groups: Map<string, Group>,
  faults: FileFault[],
): void {
  const before = faults.length;
  if (cells.length > names.length) faults.push({ code: "ERR_TOO_MANY_CELLS", line });
  const values = new Map<string, unknown>();
  for (const [key, column] of Object.entries({ ...KEY_COLUMNS, ...SHEET_COLUMNS, ...POINT_COLUMNS })) {
    const own = (cells[names.indexOf(column.name)] ?? "").trim().replace(/^'(?=[=+\-@\t\r])/, "");
    const text = own === "" ? (given.cells[column.name] ?? "") : own;
    if (text === "") {
      if (column.isRequired && key !== "boxSpeed")
        faults.push({ code: "ERR_CELL_EMPTY", line, name: column.name });
      continue;
    }
    const cell = column.read(text);
    if (cell.ok) values.set(key, cell.value);
    else faults.push({ code: "ERR_CELL", line, name: column.name, text, like: likeOf(column.name) });
  }
  if (faults.length > before) return;
  const group = groupFor(values, line, groups);
  for (const [key, column] of Object.entries(SHEET_COLUMNS)) {
    if (!values.has(key)) continue;
    const value = values.get(key);
    const earlier = group.stated.get(key);
    if (earlier && JSON.stringify(earlier.value) !== JSON.stringify(value))
      faults.push({ code: "ERR_DIFFERS", line, name: column.name, otherLine: earlier.line });
    else if (!earlier) group.stated.set(key, { value, line });
  }
  const point = {
    tenthsC: values.get("tenthsC") as number,
    exposureIndex: (values.get("exposureIndex") as number | undefined) ?? null,
    seconds: values.get("seconds") as number,
    source: values.get("source") as string,
  };
  group.points.push({ point, line });
}

function groupFor(values: ReadonlyMap<string, unknown>, line: number, groups: Map<string, Group>): Group {
  const film = values.get("film") as string;
  const developer = values.get("developer") as string;
  const dilution = values.get("dilution") as Dilution;
  const key = JSON.stringify([foldName(film), foldName(developer), makeDilution(dilution)]);
  const found = groups.get(key) ?? { line, film, developer, dilution, stated: new Map(), points: [] };
  groups.set(key, found);
  return found;
}

function finish(group: Group, { known }: Given, faults: FileFault[]): Placed[] {
  const before = matchSheets(known, group)[0];
  const stated = <K extends keyof typeof SHEET_COLUMNS & keyof Sheet, T>(key: K, otherwise: T): T =>
    (group.stated.get(key)?.value as T | undefined) ?? (before?.[key] as T | undefined) ?? otherwise;
  const ofFilm = matchSheets(known, { film: group.film })[0]?.boxSpeed ?? null;
  const boxSpeed = stated<"boxSpeed", number | null>("boxSpeed", ofFilm);
  if (boxSpeed === null) {
    faults.push({ code: "ERR_NOT_SAID", line: group.line, name: "film_speed" });
    return [];
  }
  const points = group.points.map(({ point }) => ({
    ...point,
    exposureIndex: point.exposureIndex ?? boxSpeed,
  }));
  const sheet: Sheet = {
    film: group.film,
    developer: group.developer,
    dilution: group.dilution,
    boxSpeed,
    points,
    agitation: stated("agitation", NAVY_TANK),
    factorPer10C: stated<"factorPer10C", number | null>("factorPer10C", null),
    minTenthsC: stated<"minTenthsC", number | null>("minTenthsC", null),
    maxTenthsC: stated<"maxTenthsC", number | null>("maxTenthsC", null),
    minConcentrateMl: stated<"minConcentrateMl", number | null>("minConcentrateMl", null),
    tabularGrain: stated("tabularGrain", false),
    reuse: stated<"reuse", Sheet["reuse"]>("reuse", null),
    source:
      (group.stated.get("sheetSource")?.value as string | undefined) ??
      before?.source ??
      points[0]?.source ??
      "",
  };
  return [{ sheet, line: group.line, pointLines: group.points.map(({ line }) => line) }];
}
