import type { Action, FieldValue, Picture, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { makeDilution } from "../measure.ts";
import { describeAgitation } from "../plan/step-words.ts";
import {
  countOf,
  formatBothScales,
  formatDilution,
  formatMl,
  formatSeconds,
  formatTenthsC,
  joinAnd,
  plain,
} from "../wording.ts";
import type { EditFault } from "./edit.ts";
import type { FileFault } from "./file-faults.ts";
import { sayFileFault, saySheetFault } from "./file-words.ts";
import { NO_SHEETS, sheetName } from "./pick.ts";
import { makeReuse } from "./reuse-text.ts";
import type { Point, Sheet } from "./sheet.ts";

/* Every sentence of /sheet. */

export const TIME_RANGE = "A sheet's time lies between 0:15 and 3:00:00. Check the time.";
export const TEMP_RANGE =
  "A sheet's temperature lies between 5 °C (41 °F) and 45 °C (113 °F). Check the temperature.";

export function editFault(fault: EditFault): string {
  if (fault.code === "ERR_NO_SPEED") return "The sheet is new: add the film's own speed, like `speed:400`.";
  if (fault.code === "ERR_SHEET_FULL") return "This sheet holds 200 times already: that is the most.";
  return `${fault.faults.map(saySheetFault).join("\n")}\nNothing was changed.`;
}

export function clashFault(fault: EditFault): string {
  const isClash =
    fault.code === "ERR_SHEET_FAULTS" && fault.faults.every(({ code }) => code === "ERR_TWO_TIMES");
  return isClash
    ? `${editFault(fault)} To put the new one in its place, add \`replace:yes\`.`
    : editFault(fault);
}

export function added(sheet: Sheet, point: { tenthsC: number; seconds: number }, wasRatio: boolean): Reply {
  const note = wasRatio
    ? `\nI read the dilution as ${formatDilution(sheet.dilution)}: makers' 1:9 means 1+9.`
    : "";
  return {
    text: `**${formatSeconds(point.seconds)}** at ${formatBothScales(point.tenthsC)} is in the sheet of ${sheetName(sheet)}. It holds ${countOf(sheet.points.length, "time")} now.${note}`,
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
  return { label: "Show the sheet", line: line.length <= 100 ? line : "sheet list" };
}

const MOST_ROWS = 30;

export function shown(sheet: Sheet, pictures: readonly Picture[]): Reply {
  const rows = sheet.points.slice(0, MOST_ROWS).map(sayRow);
  const rest = sheet.points.length - rows.length;
  return {
    text: [
      `**${sheetName(sheet)}**, film speed ${sheet.boxSpeed}`,
      ...rows,
      ...(rest > 0 ? [`… and ${countOf(rest, "more time", "more times")}: see \`/sheet export\`.`] : []),
      `Agitation: ${describeAgitation(sheet.agitation)}.`,
      ...sayRest(sheet),
      `Source: ${plain(sheet.source)}`,
    ].join("\n"),
    fields: fieldsOf(sheet),
    pictures,
  };
}

function sayRow(point: Point): string {
  const source = point.source.length > 60 ? `${point.source.slice(0, 60)}…` : point.source;
  return `- **${formatSeconds(point.seconds)}** at ${formatBothScales(point.tenthsC)}, EI ${point.exposureIndex} (${plain(source)})`;
}

function sayRest(sheet: Sheet): string[] {
  const lines: string[] = [];
  if (sheet.minTenthsC !== null) lines.push(`Not below ${formatTenthsC(sheet.minTenthsC)}.`);
  if (sheet.maxTenthsC !== null) lines.push(`Not above ${formatTenthsC(sheet.maxTenthsC)}.`);
  if (sheet.factorPer10C !== null) lines.push(`Its maker's factor per 10 °C: ${sheet.factorPer10C}.`);
  if (sheet.minConcentrateMl !== null)
    lines.push(`At least ${formatMl(sheet.minConcentrateMl)} of concentrate or stock for each roll.`);
  if (sheet.tabularGrain) lines.push("Tabular grain: fix for three clearing times.");
  lines.push(
    sheet.reuse
      ? `Reuse (films in a litre/what they add/most films): ${makeReuse(sheet.reuse)}.`
      : "Used once, then discarded.",
  );
  return lines;
}

const MOST_SHEETS = 40;

export function listed(sheets: readonly Sheet[], filter: string | undefined): Reply {
  if (sheets.length === 0 && filter === undefined) return { text: NO_SHEETS, fields: { sheets: [] } };
  const some = sheets.slice(0, MOST_SHEETS);
  const rest = sheets.length - some.length;
  const head =
    sheets.length === 0
      ? `No sheet has "${plain((filter ?? "").slice(0, 60))}" in its name. \`/sheet list\` alone shows all.`
      : `${countOf(sheets.length, "sheet")}:`;
  return {
    text: [
      head,
      ...some.map((sheet) => `- ${sheetName(sheet)} (${countOf(sheet.points.length, "time")})`),
      ...(rest > 0 ? [`… and ${rest} more. Name a film to see fewer.`] : []),
    ].join("\n"),
    fields: { sheets: sheets.map(fieldsOf) },
  };
}

const MOST_FAULTS = 200;

export function importFaults(faults: readonly FileFault[]): string {
  const rest = faults.length - MOST_FAULTS;
  return [
    `Nothing was imported. ${countOf(faults.length, "fault")} in the file:`,
    ...faults.slice(0, MOST_FAULTS).map((fault) => `- ${sayFileFault(fault)}`),
    ...(rest > 0 ? [`- … and ${rest} more.`] : []),
  ].join("\n");
}

export function imported(sheets: readonly Sheet[], replaced: number): Reply {
  const news = sheets.length - replaced;
  const parts = [
    ...(news > 0 ? [`${countOf(news, "new sheet")}`] : []),
    ...(replaced > 0 ? [`${countOf(replaced, "sheet")} replaced`] : []),
  ];
  return {
    text: `Imported: ${joinAnd(parts)}. See them with \`/sheet list\`.`,
    fields: { added: news, replaced, sheets: sheets.map(fieldsOf) },
  };
}

export function nothingToExport(film: string | undefined): string {
  return film === undefined
    ? NO_SHEETS
    : `There is no sheet for "${plain(film)}". \`/sheet list\` shows what there is.`;
}

export function exported(sheets: readonly Sheet[], format: "csv" | "json", content: string): Reply {
  return {
    text: `${countOf(sheets.length, "sheet")} as ${format.toUpperCase()}. \`/sheet import\` reads it back.`,
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
