import type { Action, Picture, Reply } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { fitsKey, makeLine } from "../speech/line.ts";
import { makeDilution, type Point, type Sheet } from "../../store/shapes/sheet.ts";
import { sayStored } from "./basis-words.ts";
import { describeAgitation } from "./step-words.ts";
import { formatDilution, formatNumber, plain, quoted } from "../speech/wording.ts";
import type { EditFault } from "./edit.ts";
import { editFault } from "./edit-words.ts";
import { noSheets, sheetName } from "./pick.ts";
import { fieldsOf } from "./sheet-fields.ts";
import { makeReuse } from "./reuse-text.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

/* Every sentence of /sheet. */

const words = inEach({ en, de });

export function clashFault(fault: EditFault): string {
  const isClash =
    fault.code === "ERR_SHEET_FAULTS" && fault.faults.every(({ code }) => code === "ERR_TWO_TIMES");
  return isClash ? words().orReplace(editFault(fault)) : editFault(fault);
}

export function added(
  sheet: Sheet,
  point: { tenthsC: number; seconds: number },
  { wasRatio, slipOf }: { wasRatio: boolean; slipOf: string | null },
): Reply {
  const head = words().added(point.seconds, point.tenthsC, sheetName(sheet), sheet.points.length);
  return {
    text: [
      slipOf === null ? "" : words().slipOf(plain(sheet.film), plain(slipOf)),
      head,
      wasRatio ? words().readRatio(formatDilution(sheet.dilution)) : "",
    ]
      .filter(Boolean)
      .join("\n"),
    fields: fieldsOf(sheet),
    actions: [showAction(sheet)],
  };
}

function showAction(sheet: Sheet): Action {
  const line = makeLine("sheet show", {
    film: sheet.film,
    developer: sheet.developer,
    dilution: makeDilution(sheet.dilution),
  });
  return { label: words().showSheet, line: fitsKey(line) ? line : "sheet list" };
}

const MOST_ROWS = 30;

export function shown(sheet: Sheet, pictures: readonly Picture[]): Reply {
  const rows = sheet.points.slice(0, MOST_ROWS).map(sayRow);
  const rest = sheet.points.length - rows.length;
  return {
    text: [
      words().head(sheetName(sheet), sheet.boxSpeed),
      ...rows,
      ...(rest > 0 ? [words().moreTimes(rest)] : []),
      words().agitation(describeAgitation(sheet.agitation)),
      ...sayRest(sheet),
      words().source(plain(sayStored(sheet.source))),
    ].join("\n"),
    fields: fieldsOf(sheet),
    pictures,
  };
}

function sayRow(point: Point): string {
  const said = sayStored(point.source);
  const source = said.length > 60 ? `${said.slice(0, 60)}…` : said;
  return words().row(point.seconds, point.tenthsC, point.exposureIndex, plain(source));
}

function sayRest(sheet: Sheet): string[] {
  const lines: string[] = [];
  if (sheet.minTenthsC !== null) lines.push(words().notBelow(sheet.minTenthsC));
  if (sheet.maxTenthsC !== null) lines.push(words().notAbove(sheet.maxTenthsC));
  if (sheet.factorPer10C !== null) lines.push(words().factor(formatNumber(sheet.factorPer10C)));
  if (sheet.minConcentrateMl !== null) lines.push(words().leastConcentrate(sheet.minConcentrateMl));
  if (sheet.tabularGrain) lines.push(words().tabular);
  lines.push(sheet.reuse ? words().reuse(makeReuse(sheet.reuse)) : words().usedOnce);
  return lines;
}

const MOST_SHEETS = 40;

export function listed(sheets: readonly Sheet[], filter: string | undefined): Reply {
  if (sheets.length === 0 && filter === undefined) return { text: noSheets(), fields: { sheets: [] } };
  const some = sheets.slice(0, MOST_SHEETS);
  const rest = sheets.length - some.length;
  const head =
    sheets.length === 0
      ? words().noneNamed(quoted(plain((filter ?? "").slice(0, 60))))
      : words().sheets(sheets.length);
  return {
    text: [
      head,
      ...some.map((sheet) => words().listed(sheetName(sheet), sheet.points.length)),
      ...(rest > 0 ? [words().moreSheets(rest)] : []),
    ].join("\n"),
    fields: { sheets: sheets.map(fieldsOf) },
  };
}

export function nothingToExport(film: string | undefined): string {
  return film === undefined ? noSheets() : words().noSheetFor(quoted(plain(film)));
}

export function exported(sheets: readonly Sheet[], format: "csv" | "json", content: string): Reply {
  return {
    text: words().exported(sheets.length, format.toUpperCase()),
    fields: { sheets: sheets.length, format, content },
    attachments: [
      { name: `sheets.${format}`, mediaType: format === "csv" ? "text/csv" : "application/json", content },
    ],
  };
}
