import papa from "papaparse";
import { NAVY_TANK } from "./agitation.ts";
import { fail, ok, type Result } from "../result.ts";
import { type Dilution, makeDilution, type Point, type Sheet } from "../../store/shapes/sheet.ts";
import { COLUMNS, KEY_COLUMNS, likeOf, POINT_COLUMNS, SHEET_COLUMNS } from "./columns.ts";
import { checkFile, type FileFault, type Placed } from "./file-faults.ts";
import { foldName } from "./names.ts";

/* Sheets as lines of a table. The columns are in columns.ts. */

export function writeCsv(sheets: readonly Sheet[]): string {
  const lines = sheets.flatMap((sheet) =>
    sheet.points.map((point) =>
      Object.fromEntries(COLUMNS.map((column) => [column.name, column.write(sheet, point)])),
    ),
  );
  // A table program must not take a name for a formula.
  return `${papa.unparse({ fields: COLUMNS.map(({ name }) => name), data: lines }, { escapeFormulae: true })}\r\n`;
}

/** All sheets of the file, or every fault of it. */
export function readCsv(text: string): Result<Sheet[], FileFault[]> {
  const parsed = papa.parse<string[]>(text.replace(/^\ufeff/, ""), {
    delimiter: delimiterOf(text),
    skipEmptyLines: false,
  });
  const faults: FileFault[] = parsed.errors
    .filter(({ code }) => code === "MissingQuotes" || code === "InvalidQuotes")
    .map(({ row }) => ({ code: "ERR_QUOTES", line: lineOf(parsed.data, row ?? 0) }));
  const [header, ...rows] = parsed.data;
  const names = (header ?? []).map((name) => name.trim().toLowerCase());
  faults.push(...headerFaults(names));
  if (faults.length > 0) return fail(faults);
  const groups = new Map<string, Group>();
  for (const [at, cells] of rows.entries()) {
    if (cells.every((cell) => cell.trim() === "")) continue;
    readLine(names, cells, lineOf(parsed.data, at + 1), groups, faults);
  }
  const placed = [...groups.values()].flatMap((group) => finish(group, faults));
  if (groups.size === 0 && faults.length === 0) faults.push({ code: "ERR_NO_SHEETS", line: 1 });
  faults.push(...checkFile(placed));
  return faults.length > 0
    ? fail(faults.sort((a, b) => a.line - b.line))
    : ok(placed.map(({ sheet }) => sheet));
}

/** By the first line alone: what the cells below hold must not decide it. */
function delimiterOf(text: string): string {
  const head = text.slice(0, text.search(/[\r\n]|$/));
  return [",", ";", "\t"].reduce((best, each) =>
    head.split(each).length > head.split(best).length ? each : best,
  );
}

/** A quoted cell may hold line breaks, so a row's place is counted from what stands before it. */
function lineOf(rows: readonly string[][], row: number): number {
  let line = row + 1;
  for (const cells of rows.slice(0, row)) {
    for (const cell of cells) line += cell.split("\n").length - 1;
  }
  return line;
}

function headerFaults(names: readonly string[]): FileFault[] {
  const known: string[] = COLUMNS.map(({ name }) => name);
  const unknown = names.filter((name) => !known.includes(name));
  const twice = names.filter((name, at) => known.includes(name) && names.indexOf(name) !== at);
  const missing = COLUMNS.filter(({ name, isRequired }) => isRequired && !names.includes(name));
  return [
    ...unknown.map((name): FileFault => ({ code: "ERR_COLUMN_UNKNOWN", line: 1, name, known })),
    ...twice.map((name): FileFault => ({ code: "ERR_COLUMN_TWICE", line: 1, name })),
    ...missing.map(({ name }): FileFault => ({ code: "ERR_COLUMN_MISSING", line: 1, name })),
  ];
}

interface Group {
  readonly line: number;
  readonly film: string;
  readonly developer: string;
  readonly dilution: Dilution;
  readonly stated: Map<string, { value: unknown; line: number }>;
  readonly points: { point: Omit<Point, "exposureIndex"> & { exposureIndex: number | null }; line: number }[];
}

function readLine(
  names: readonly string[],
  cells: readonly string[],
  line: number,
  groups: Map<string, Group>,
  faults: FileFault[],
): void {
  const before = faults.length;
  if (cells.length > names.length) faults.push({ code: "ERR_TOO_MANY_CELLS", line });
  const values = new Map<string, unknown>();
  for (const [key, column] of Object.entries({ ...KEY_COLUMNS, ...SHEET_COLUMNS, ...POINT_COLUMNS })) {
    const text = (cells[names.indexOf(column.name)] ?? "").trim().replace(/^'(?=[=+\-@\t\r])/, "");
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

function finish(group: Group, faults: FileFault[]): Placed[] {
  const stated = <T>(key: keyof typeof SHEET_COLUMNS, otherwise: T): T =>
    (group.stated.get(key)?.value as T | undefined) ?? otherwise;
  const boxSpeed = stated<number | null>("boxSpeed", null);
  if (boxSpeed === null) {
    faults.push({ code: "ERR_CELL_EMPTY", line: group.line, name: SHEET_COLUMNS.boxSpeed.name });
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
    factorPer10C: stated<number | null>("factorPer10C", null),
    minTenthsC: stated<number | null>("minTenthsC", null),
    maxTenthsC: stated<number | null>("maxTenthsC", null),
    minConcentrateMl: stated<number | null>("minConcentrateMl", null),
    tabularGrain: stated("tabularGrain", false),
    reuse: stated<Sheet["reuse"]>("reuse", null),
    source: stated("sheetSource", points[0]?.source ?? ""),
  };
  return [{ sheet, line: group.line, pointLines: group.points.map(({ line }) => line) }];
}
