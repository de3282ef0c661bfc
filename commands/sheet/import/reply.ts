import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { formatSeconds, joinAnd, plain } from "../../speech/wording.ts";
import type { Point, Sheet } from "../../../store/shapes/sheet.ts";
import type { FileFault } from "../file-faults.ts";
import { sayFileFault, saySheetFault } from "../file-words.ts";
import type { Merged } from "../merge.ts";
import { sheetName } from "../pick.ts";
import { fieldsOf } from "../sheet-fields.ts";
import type { Undone } from "../take-back.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

const MOST_FAULTS = 200;
const MOST_NAMED = 15;

export function importFaults(faults: readonly FileFault[]): string {
  const rest = faults.length - MOST_FAULTS;
  return [
    words().notImported(faults.length),
    ...faults.slice(0, MOST_FAULTS).map((fault) => `- ${sayFileFault(fault)}`),
    ...(rest > 0 ? [`- ${words().moreFaults(rest)}`] : []),
  ].join("\n");
}

/** `number`: by which it is taken back; null: nothing changed. `aside`: lines of a pasted table without times. */
export function imported(
  { sheets, newSheets, newTimes, replaced, restated, changes }: Merged,
  number: number | null = null,
  aside: readonly number[] = [],
): Reply {
  const parts = [
    ...(newSheets > 0 ? [words().newSheets(newSheets)] : []),
    ...(newTimes > 0 ? [words().newTimes(newTimes)] : []),
    ...(replaced.length > 0 ? [words().replacedTimes(replaced.length)] : []),
    ...(restated.length > 0 ? [words().restated(restated.length)] : []),
  ];
  const read = changes.flatMap(({ after }) => readLines(after));
  const rest = read.length - MOST_NAMED;
  return {
    text: [
      changes.length === 0 ? words().nothingNew : words().imported(parts),
      ...read.slice(0, MOST_NAMED).map((line) => `- ${line}`),
      ...(rest > 0 ? [words().andMore(rest)] : []),
      ...(aside.length > 0 ? [words().aside(aside)] : []),
      ...(changes.length > 0 ? [words().check] : []),
    ].join("\n"),
    fields: {
      added: newSheets,
      times: newTimes,
      replaced: replaced.length,
      import: number,
      aside: [...aside],
      sheets: sheets.map(fieldsOf),
    },
    actions:
      number === null
        ? []
        : [{ label: words().takeBack, line: makeLine("sheet undo", { import: number }), weight: "danger" }],
  };
}

/** What a sheet holds, a line for each exposure index: what was read is seen before a film goes by it. */
function readLines(sheet: Sheet): string[] {
  const indexes = [...new Set(sheet.points.map(({ exposureIndex }) => exposureIndex))];
  return indexes.map((exposureIndex) => {
    const times = sheet.points
      .filter((point) => point.exposureIndex === exposureIndex)
      .map(({ seconds, tenthsC }) => words().readTime(seconds, tenthsC));
    return words().readLine(sheetName(sheet), exposureIndex, times.join(", "));
  });
}

/** Everything that would go, with what would come in its place. */
export function wouldReplace({ replaced, restated }: Pick<Merged, "replaced" | "restated">): string {
  const lines = [
    ...replaced.map(({ sheet, before, after }) =>
      words().replacedTime(
        sheetName(sheet),
        before.tenthsC,
        before.exposureIndex,
        formatSeconds(before.seconds),
        formatSeconds(after.seconds),
      ),
    ),
    ...restated.map(({ sheet, name, before, after }) => {
      const [was, becomes] = [before, after].map((each) => (each === "" ? words().notSaid : plain(each)));
      return words().restatedFact(sheetName(sheet), plain(name), was ?? "", becomes ?? "");
    }),
  ];
  const rest = lines.length - MOST_NAMED;
  return [
    words().wouldReplace(replaced.length, restated.length),
    ...lines.slice(0, MOST_NAMED).map((line) => `- ${line}`),
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

export const noImport = (number: number | undefined): string =>
  number === undefined ? words().noImport : words().unknownImport(number);

export const wasTakenBack = (number: number): Reply => ({
  text: words().wasTakenBack(number),
  fields: { import: number, times: 0, sheets: 0 },
});

/** One sheet of the import and what became of it. */
export interface SheetUndone {
  readonly name: Sheet;
  readonly undone: Undone;
}

export function takenBack(number: number, each: readonly SheetUndone[]): Reply {
  const gone = each.filter(({ undone }) => undone.hindrance === null && undone.sheet === null).length;
  const times = each.reduce((sum, { undone }) => sum + (undone.sheet === null ? 0 : undone.times), 0);
  const parts = [
    ...(gone > 0 ? [words().sheetsGone(gone)] : []),
    ...(times > 0 ? [words().timesBack(times)] : []),
  ];
  return {
    text: [words().takenBack(number, parts), ...each.flatMap(sayLeft)].join("\n"),
    fields: { import: number, times, sheets: gone },
  };
}

function sayLeft({ name, undone: { hindrance, left } }: SheetUndone): string[] {
  if (hindrance === "gone") return [words().sheetGone(sheetName(name))];
  if (hindrance === "contradiction") return [words().contradiction(sheetName(name))];
  return left.length === 0 ? [] : [words().left(sheetName(name), joinAnd(left.map(sayLeftTime)))];
}

const sayLeftTime = ({ seconds, tenthsC, exposureIndex }: Point): string =>
  words().leftTime(seconds, tenthsC, exposureIndex);
