import { countOf, formatBothScales, formatSeconds, joinAnd } from "../../speech/wording.ts";

export const en = {
  notImported: (faults: number) => `Nothing was imported. ${countOf(faults, "fault")} in the file:`,
  moreFaults: (count: number) => `… and ${count} more.`,
  nothingChanged: (faults: string) => `${faults}\nNothing was changed.`,
  newSheets: (count: number) => countOf(count, "new data sheet"),
  newTimes: (count: number) => countOf(count, "new time"),
  replacedTimes: (count: number) => `${countOf(count, "time")} replaced`,
  restated: (count: number) => `${countOf(count, "other fact")} changed`,
  nothingNew: "Nothing in the file is new: every time of it is there already.",
  wouldReplace: (times: number, facts: number) =>
    `**Nothing was imported yet.** ${joinAnd([
      ...(times > 0 ? [countOf(times, "time")] : []),
      ...(facts > 0 ? [countOf(facts, "other fact")] : []),
    ])} would become another. If that is meant, send it with \`replace:yes\`.`,
  replacedTime: (sheet: string, tenthsC: number, exposureIndex: number, before: string, after: string) =>
    `${sheet} at ${formatBothScales(tenthsC)}, EI ${exposureIndex}: ${before} would become ${after}`,
  restatedFact: (sheet: string, name: string, before: string, after: string) =>
    `${sheet}, ${name}: ${before} would become ${after}`,
  notSaid: "not said",
  andMore: (count: number) => `… and ${count} more.`,
  imported: (parts: readonly string[]) => `Imported: ${joinAnd(parts)}. See them with \`/sheet list\`.`,
  /** A line of a pasted table, read: `Lantern 400 in House MQ 1+1, EI 400: 11:00 at 18 °C, 9:00 at 20 °C`. */
  readLine: (sheet: string, exposureIndex: number, times: string) =>
    `${sheet}, EI ${exposureIndex}: ${times}`,
  readTime: (seconds: number, tenthsC: number) => `${formatSeconds(seconds)} at ${formatBothScales(tenthsC)}`,
  aside: (lines: readonly number[]) =>
    `${lines.length === 1 ? "Line" : "Lines"} ${joinAnd(lines.map(String))} ${lines.length === 1 ? "holds" : "hold"} no time and ${lines.length === 1 ? "was" : "were"} left out.`,
  check: "Check them against the paper.",
  takeBack: "Take it all back",

  noImport: "There is no import to take back.",
  unknownImport: (number: number) => `There is no import ${number}.`,
  wasTakenBack: (number: number) => `Import ${number} was taken back already. Nothing was changed.`,
  takenBack: (number: number, parts: readonly string[]) =>
    parts.length === 0
      ? `**Import ${number}:** nothing of it is there as it came.`
      : `**Import ${number} is taken back:** ${joinAnd(parts)}.`,
  timesBack: (count: number) => `${countOf(count, "time is", "times are")} as before`,
  sheetsGone: (count: number) => `${countOf(count, "data sheet is", "data sheets are")} gone again`,
  left: (sheet: string, times: string) => `- ${sheet} keeps what was changed since: ${times}`,
  leftTime: (seconds: number, tenthsC: number, exposureIndex: number) =>
    `${formatSeconds(seconds)} at ${formatBothScales(tenthsC)}, EI ${exposureIndex}`,
  sheetGone: (sheet: string) => `- ${sheet} is not there any more.`,
  contradiction: (sheet: string) =>
    `- ${sheet} stays as it is: with what was added since, the times before would contradict each other.`,
};
export type ImportWords = typeof en;
