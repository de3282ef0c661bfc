import { countOf, formatBothScales, formatMl, formatSeconds } from "../../speech/wording.ts";

export const en = {
  noSpeed: "The data sheet is new: add the film's own speed, like `speed:400`.",
  full: "This data sheet holds 200 times already: that is the most.",
  nothingChanged: (faults: string) => `${faults}\nNothing was changed.`,
  orReplace: (fault: string) => `${fault} To put the new one in its place, add \`replace:yes\`.`,

  added: (seconds: number, tenthsC: number, sheet: string, times: number) =>
    `**${formatSeconds(seconds)}** at ${formatBothScales(tenthsC)} is in the data sheet of ${sheet}. It holds ${countOf(times, "time")} now.`,
  slipOf: (film: string, known: string) =>
    `**A new film, ${film}: ${known} is there already.** Only a slip? \`/sheet undo\` takes it back; then type it like that one.`,
  readRatio: (dilution: string) => `I read the dilution as ${dilution}: makers' 1:9 means 1+9.`,
  showSheet: "Show the data sheet",

  head: (sheet: string, speed: number) => `**${sheet}**, film speed ${speed}`,
  row: (seconds: number, tenthsC: number, exposureIndex: number, source: string) =>
    `- **${formatSeconds(seconds)}** at ${formatBothScales(tenthsC)}, EI ${exposureIndex} (${source})`,
  moreTimes: (count: number) => `… and ${countOf(count, "more time", "more times")}: see \`/sheet export\`.`,
  agitation: (scheme: string) => `Agitation: ${scheme}.`,
  source: (source: string) => `Source: ${source}`,
  notBelow: (tenthsC: number) => `Not below ${formatBothScales(tenthsC)}.`,
  notAbove: (tenthsC: number) => `Not above ${formatBothScales(tenthsC)}.`,
  factor: (factor: string) => `Its maker's factor per 10 °C: ${factor}.`,
  leastConcentrate: (ml: number) => `At least ${formatMl(ml)} of concentrate or stock for each roll.`,
  tabular: "Tabular grain: fix for three clearing times.",
  reuse: (rule: string) => `Reuse (films in a litre/what they add/most films): ${rule}.`,
  usedOnce: "Used once, then discarded.",

  noneNamed: (typed: string) => `No data sheet has ${typed} in its name. \`/sheet list\` alone shows all.`,
  sheets: (count: number) => `${countOf(count, "data sheet")}:`,
  listed: (sheet: string, times: number) => `- ${sheet} (${countOf(times, "time")})`,
  moreSheets: (count: number) => `… and ${count} more. Name a film to see fewer.`,

  noSheetFor: (film: string) => `There is no data sheet for ${film}. \`/sheet list\` shows what there is.`,
  exported: (count: number, format: string) =>
    `${countOf(count, "data sheet")} as ${format}. \`/sheet import\` reads it back.`,
};
export type ReplyWords = typeof en;
