import papa from "papaparse";
import { fail, type Result } from "../result.ts";
import { formatSeconds } from "../speech/wording.ts";
import { makeTemperature, parseDilution, parseDuration, parseTemperature } from "../speech/measure.ts";
import { pointDecimal } from "../speech/decimal.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import type { FileFault } from "./file-faults.ts";
import { foldName } from "./names.ts";
import { type Given, readRows, type Row } from "./rows.ts";
import type { ColumnName } from "./words/columns.en.ts";

/*
 * A table as makers print it and people paste it: temperatures as the heads of columns, a time where a row meets one. What
 * the rows are (a film, a developer, a dilution, an exposure index) stands in the columns before.
 */

export interface ReadTable {
  readonly sheets: Result<Sheet[], FileFault[]>;
  /** Lines that hold no time: a title, a line of signs. */
  readonly aside: readonly number[];
}

type Label = Extract<
  ColumnName,
  "film" | "developer" | "dilution" | "exposure_index" | "film_speed" | "source"
>;

/** What people and makers call the columns before the times. */
const LABELS: Readonly<Record<Label, RegExp>> = {
  film: /^films?$/,
  developer: /^(developers?|entwickler)$/,
  dilution: /^(dilutions?|verdünnung(en)?)$/,
  exposure_index:
    /^(exposure[_ ]index|ei|iso|asa|iso ?\/ ?ei|ei ?\/ ?iso|belichtungsindex|empfindlichkeit|speed)$/,
  film_speed: /^(film[_ ]speed|filmempfindlichkeit|nennempfindlichkeit)$/,
  source: /^(source|quelle)$/,
};
const LABEL_NAMES = Object.keys(LABELS) as Label[];

/** What often stands over them where it is said of the heads beside it. */
const ROWS_OWN = /^(temp(erature?)?|°[cf])$/;

/** Further down no table begins. */
const MOST_BEFORE = 20;
/** Bare heads can only be baths: below in Celsius, above in Fahrenheit. */
const [COLDEST_C, HOTTEST_C, COLDEST_F, HOTTEST_F] = [5, 45, 46, 113];
/** Where a maker gives no time. */
const NONE = /^([-–—−.·*x/]+|n[./ ]*[ar]\.?|k[./ ]*a\.?|nicht empfohlen|not recommended)$/i;

interface Line {
  readonly cells: readonly string[];
  readonly line: number;
}

interface Head {
  readonly at: number;
  readonly line: number;
  /** For each column its temperature as it is read back, or what it is called. */
  readonly columns: readonly ({ readonly temperature: string } | { readonly name: string })[];
}

/** undefined: no line of it heads columns by temperatures. */
export function readTable(text: string, given: Given): ReadTable | undefined {
  const delimiter = delimiterOf(text);
  const lines = text
    .replace(/^\ufeff/, "")
    .split(/\r\n|\r|\n/)
    .map((each, at): Line => ({ cells: cellsOf(each, delimiter), line: at + 1 }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
  const head = lines
    .slice(0, MOST_BEFORE)
    .map((each, at) => headOf(each, at))
    .find((each) => each !== undefined);
  if (!head) return undefined;
  const body = lines.slice(head.at + 1);
  const { columns } = withBlankFirst(head, body);
  const before = lines.slice(0, head.at).map(({ line }) => line);
  const hasTime = ({ cells }: Line): boolean =>
    columns.some((column, at) => "temperature" in column && !isNone(cells[at] ?? ""));
  const aside = body.filter((each) => !hasTime(each)).map(({ line }) => line);
  const sheets = readBody({ ...head, columns }, body.filter(hasTime), given);
  return { sheets, aside: [...before, ...aside] };
}

const isNone = (cell: string): boolean => cell === "" || NONE.test(cell);

/** By the line of the head, which holds more of it than any line of words. */
function delimiterOf(text: string): string | RegExp {
  const lines = text.split(/\r\n|\r|\n/).slice(0, MOST_BEFORE);
  const most = (sign: string): number => Math.max(...lines.map((each) => each.split(sign).length - 1));
  const parted = ["\t", ";", "|"].find((sign) => most(sign) > 0);
  if (parted !== undefined) return parted;
  return lines.some((each) => / {2,}/.test(each.trim())) ? / {2,}/ : ",";
}

function cellsOf(line: string, delimiter: string | RegExp): string[] {
  if (typeof delimiter !== "string") return line.trim().split(delimiter);
  const bare = delimiter === "|" ? line.trim().replace(/^\||\|$/g, "") : line;
  const [cells = []] = papa.parse<string[]>(bare, { delimiter }).data;
  return cells.map((cell) => cell.trim());
}

function headOf({ cells, line }: Line, at: number): Head | undefined {
  const named = cells.map((cell) => (/\d.*[cf℃℉]/i.test(cell) ? tenthsOf(cell) : undefined));
  const bare = cells.map((cell) =>
    /^\d{1,3}([.,]\d)?$/.test(cell) ? Number(pointDecimal(cell)) : undefined,
  );
  const isInF = cells.some(
    (cell, index) => named[index] !== undefined && /f|℉/i.test(cell) && !/c|℃/i.test(cell),
  );
  const baths = bare.filter((each) => each !== undefined);
  const areBaths =
    baths.length > (named.some((each) => each !== undefined) ? 0 : 1) &&
    baths.every((each, index) => index === 0 || each > (baths[index - 1] ?? 0)) &&
    (baths.every((each) => each >= COLDEST_C && each <= HOTTEST_C) ||
      baths.every((each) => each >= COLDEST_F && each <= HOTTEST_F));
  const columns = cells.map((cell, index) => {
    const value = bare[index];
    const tenths =
      named[index] ??
      (areBaths && value !== undefined
        ? tenthsOf(`${value} ${isInF || value > HOTTEST_C ? "F" : "C"}`)
        : undefined);
    return tenths === undefined ? { name: cell } : { temperature: makeTemperature(tenths) };
  });
  return columns.some((column) => "temperature" in column) ? { at, line, columns } : undefined;
}

function tenthsOf(text: string): number | undefined {
  const read = parseTemperature(text);
  return read.ok ? read.value : undefined;
}

/** What stands over the rows' own names is often nothing, and spaces at the beginning of a line can't be told from none. */
function withBlankFirst({ columns }: Head, body: readonly Line[]): Pick<Head, "columns"> {
  const isShort = columns.every((column) => "temperature" in column);
  const isWider = body.length > 0 && body.every(({ cells }) => cells.length === columns.length + 1);
  return { columns: isShort && isWider ? [{ name: "" }, ...columns] : columns };
}

/** Each time becomes a row of its own, in the columns every file of sheets has. */
function readBody(
  { columns, line: headLine }: Head,
  body: readonly Line[],
  given: Given,
): Result<Sheet[], FileFault[]> {
  const faults: FileFault[] = [];
  const labels = columns.map((column, at) =>
    "name" in column
      ? labelOf(
          column.name,
          body.map(({ cells }) => cells[at] ?? ""),
          given,
        )
      : undefined,
  );
  for (const [at, column] of columns.entries()) {
    if ("name" in column && labels[at] === undefined)
      faults.push({ code: "ERR_COLUMN_UNKNOWN", line: headLine, name: column.name, known: LABEL_NAMES });
  }
  for (const name of ["film", "developer", "dilution"] as const)
    if (!labels.includes(name) && given.cells[name] === undefined)
      faults.push({ code: "ERR_NOT_SAID", line: headLine, name });
  const names = ["temperature", "time", ...LABEL_NAMES];
  const above = new Map<Label, string>();
  const rows = body.flatMap(({ cells, line }): Row[] => {
    if (cells.length > columns.length) faults.push({ code: "ERR_TOO_MANY_CELLS", line });
    else if (cells.length < columns.length && cells.length > 0)
      faults.push({ code: "ERR_FEW_CELLS", line, has: cells.length, wants: columns.length });
    for (const [at, label] of labels.entries()) {
      const own = cells[at] ?? "";
      // What is the same as in the row above is often left out.
      if (label && own !== "") above.set(label, isNumbered(label) ? bareNumber(own) : own);
    }
    return columns.flatMap((column, at): Row[] => {
      const cell = cells[at] ?? "";
      if (!("temperature" in column) || isNone(cell)) return [];
      return [
        {
          cells: [column.temperature, timeOf(cell), ...LABEL_NAMES.map((name) => above.get(name) ?? "")],
          line,
        },
      ];
    });
  });
  if (faults.length > 0) return fail(faults);
  return readRows(names, rows, given);
}

const isNumbered = (label: Label): boolean => label === "exposure_index" || label === "film_speed";

/** `EI 400`, `ISO 400/27°`. */
const bareNumber = (cell: string): string => /^(?:ei|iso|asa)?\s*(\d+)(?:\/\d+°)?$/i.exec(cell)?.[1] ?? cell;

/** By its head, or where that is left out by what stands below it and is not said otherwise. */
function labelOf(head: string, cells: readonly string[], { cells: given }: Given): Label | undefined {
  const folded = foldName(head).replace(/[.:]$/, "").replace(ROWS_OWN, "");
  const named = LABEL_NAMES.find((name) => LABELS[name].test(folded));
  if (named !== undefined || folded !== "") return named;
  const some = cells.filter((cell) => cell !== "");
  if (some.every((cell) => parseDilution(cell).ok)) return "dilution";
  if (some.every((cell) => /^\d+$/.test(bareNumber(cell)))) return "exposure_index";
  if (given.film !== undefined && given.developer === undefined) return "developer";
  return given.film === undefined ? "film" : undefined;
}

const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅓": "1/3",
  "⅔": "2/3",
};

/** A cell as a time that is read everywhere; minutes where it is a bare number, as tables have it. */
export function timeOf(cell: string): string {
  const text = cell.replace(/[½¼¾⅓⅔]/g, (sign) => ` ${FRACTIONS[sign] ?? ""}`).trim();
  const unit = "\\s*(?:m|min|mins|minutes?|minuten?|['′])?\\.?";
  const mixed = new RegExp(`^(?:(\\d{1,3})[ +])?\\s*(\\d)\\s*[/⁄]\\s*([2-8])${unit}$`, "i").exec(text);
  if (mixed) {
    const minutes = Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
    return formatSeconds(Math.round(minutes * 60));
  }
  const [, minutes, seconds] = /^(\d{1,3})\s*['′]\s*([0-5]?\d)\s*(?:["″]|'')?$/.exec(text) ?? [];
  if (minutes !== undefined && seconds !== undefined)
    return formatSeconds(Number(minutes) * 60 + Number(seconds));
  const read = parseDuration(/^\d{1,3}(?:[.,]\d{1,2})?$/.test(text) ? `${text} min` : text);
  return read.ok ? formatSeconds(read.value) : cell;
}
