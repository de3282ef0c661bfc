import { countOf, formatBothScales, formatSeconds, joinAnd } from "../../speech/wording.ts";

export const en = {
  /** `9:00 at 20 °C, EI 400`. */
  point: (seconds: number, tenthsC: number, exposureIndex: number) =>
    `${formatSeconds(seconds)} at ${formatBothScales(tenthsC)}, EI ${exposureIndex}`,
  upTo: (max: number) => `up to ${formatBothScales(max)}`,
  from: (min: number) => `from ${formatBothScales(min)}`,
  between: (min: number, max: number) => `${formatBothScales(min)} to ${formatBothScales(max)}`,
  sheet: {
    contradiction: (first: string, second: string) =>
      `These two rows contradict each other: ${first}, but ${second}. A hotter developer never takes longer, nor does a lower exposure index. Check both in the source.`,
    rowTwice: (row: string) => `This row is there twice: ${row}. Keep one.`,
    twoTimes: (first: string, second: string) =>
      `Two times for one place: ${first}, and ${second}. Keep the one you trust.`,
    outsideRange: (row: string, range: string) =>
      `The row ${row} lies outside the data sheet's own range, ${range}. Change the range or the row.`,
    emptyRange: (min: number, max: number) =>
      `The coldest temperature, ${formatBothScales(min)}, is above the hottest, ${formatBothScales(max)}. Swap them.`,
    scheme:
      "The agitation does not work: each burst must be shorter than its cycle. Write it like 30/5/60 or continuous.",
  },
  file: {
    noSheets: "there are no data sheets in it.",
    noTable:
      "no columns can be told. Head them by temperatures, like 18 °C and 20 °C, or by the names that `/sheet export` writes.",
    notSaid: {
      film: "the table doesn't say the film. Give it beside it: `film:`.",
      developer: "the table doesn't say the developer. Give it beside it: `developer:`.",
      dilution: "the table doesn't say the dilution. Give it beside it, like `dilution:1+9`.",
      film_speed: "the film's own speed isn't said. Give it beside it, like `speed:400`.",
    },
    fewCells: (has: number, wants: number) =>
      `${countOf(has, "cell")} where the heads are ${wants}. Write - where there is no time.`,
    quotes: 'a quotation mark (") is left open or stands in the middle of a cell.',
    tooManyCells: "more cells than the first line has names.",
    tooLong: "the file is too long. Import it in parts.",
    tooManyPoints: "more than 200 times in one data sheet.",
    columnUnknown: (name: string, known: readonly string[]) =>
      `There is no column ${name}. There are ${joinAnd(known)}.`,
    columnTwice: (name: string) => `the column ${name} is there twice.`,
    columnMissing: (name: string) => `the column ${name} is missing.`,
    cellEmpty: (name: string) => `${name} is empty.`,
    cell: (name: string, text: string, like: string) => `${name} can't be ${text}. Write it like ${like}.`,
    differs: (name: string, otherLine: number) =>
      `${name} differs from line ${otherLine} of the same data sheet. Write the same, or leave one empty.`,
    sheetTwice: (otherLine: number) => `this film, developer and dilution are already in line ${otherLine}.`,
    json: (what: string) => `this is not JSON (${what}).`,
    notOurFormat: 'the file must begin with "format": "sinkside sheets". Export a data sheet to see one.',
    value: (path: string, what: string) => `${path} must be ${what}.`,
    theFile: '"the file"',
    withLine: (otherLine: number, fault: string) => `(with line ${otherLine}) ${fault}`,
  },
  line: (line: number, fault: string) => `Line ${line}: ${fault}`,
};
export type FileWords = typeof en;
