import type { Action, FieldValue, Picture, Reply } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { makeDilution, type Point, type Sheet } from "../../store/shapes/sheet.ts";
import { sayStored } from "./basis-words.ts";
import { describeAgitation } from "./step-words.ts";
import { formatDilution, formatNumber, formatSeconds, plain, quoted } from "../speech/wording.ts";
import type { EditFault } from "./edit.ts";
import { editFault } from "./edit-words.ts";
import type { FileFault } from "./file-faults.ts";
import type { Merged } from "./merge.ts";
import { sayFileFault, saySheetFault } from "./file-words.ts";
import { noSheets, sheetName } from "./pick.ts";
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

export function added(sheet: Sheet, point: { tenthsC: number; seconds: number }, wasRatio: boolean): Reply {
  const head = words().added(point.seconds, point.tenthsC, sheetName(sheet), sheet.points.length);
  return {
    text: wasRatio ? `${head}\n${words().readRatio(formatDilution(sheet.dilution))}` : head,
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
  return { label: words().showSheet, line: line.length <= 100 ? line : "sheet list" };
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

const MOST_FAULTS = 200;

export function importFaults(faults: readonly FileFault[]): string {
  const rest = faults.length - MOST_FAULTS;
  return [
    words().notImported(faults.length),
    ...faults.slice(0, MOST_FAULTS).map((fault) => `- ${sayFileFault(fault)}`),
    ...(rest > 0 ? [`- ${words().moreFaults(rest)}`] : []),
  ].join("\n");
}

export function imported({ sheets, newSheets, newTimes, replaced }: Merged): Reply {
  const parts = [
    ...(newSheets > 0 ? [words().newSheets(newSheets)] : []),
    ...(newTimes > 0 ? [words().newTimes(newTimes)] : []),
    ...(replaced.length > 0 ? [words().replacedTimes(replaced.length)] : []),
  ];
  return {
    text: parts.length === 0 ? words().nothingNew : words().imported(parts),
    fields: { added: newSheets, times: newTimes, replaced: replaced.length, sheets: sheets.map(fieldsOf) },
  };
}

const MOST_NAMED = 15;

/** Every time that would go, with what would come in its place. */
export function wouldReplace(replaced: Merged["replaced"]): string {
  const lines = replaced
    .slice(0, MOST_NAMED)
    .map(({ sheet, before, after }) =>
      words().replacedTime(
        sheetName(sheet),
        before.tenthsC,
        before.exposureIndex,
        formatSeconds(before.seconds),
        formatSeconds(after.seconds),
      ),
    );
  const rest = replaced.length - lines.length;
  return [
    words().wouldReplace(replaced.length),
    ...lines.map((line) => `- ${line}`),
    ...(rest > 0 ? [words().andMore(rest)] : []),
  ].join("\n");
}

/** Old and new times of one sheet that can't both be true. */
export function mergeFaults(faults: Merged["faults"]): string {
  const lines = faults.flatMap(({ sheet, faults: each }) =>
    each.map((fault) => `- ${sheetName(sheet)}: ${saySheetFault(fault)}`),
  );
  return words().nothingChanged(lines.slice(0, MOST_NAMED).join("\n"));
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

function fieldsOf(sheet: Sheet): { readonly [key: string]: FieldValue } {
  return {
    film: sheet.film,
    developer: sheet.developer,
    dilution: makeDilution(sheet.dilution),
    boxSpeed: sheet.boxSpeed,
    minTenthsC: sheet.minTenthsC,
    maxTenthsC: sheet.maxTenthsC,
    factorPer10C: sheet.factorPer10C,
    minConcentrateMl: sheet.minConcentrateMl,
    tabularGrain: sheet.tabularGrain,
    source: sheet.source,
    points: sheet.points.map((point) => ({ ...point })),
  };
}
