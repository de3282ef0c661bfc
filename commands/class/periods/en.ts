import { countOf } from "../../speech/wording.ts";

/* Periods and instants come worded. */

export const en = {
  none: "The class has no periods yet: `/class periods days:mon, wed from:18:00 to:20:30 name:Evening class`.",
  count: (periods: number, zone: string) => `**${countOf(periods, "period")}** a week (${zone}):`,
  setup: "Set-up",
  rings: (time: string, relative: string) => `The bell rings at ${time}, ${relative}.`,
  nextBegins: (relative: string, period: string) => `The next one begins ${relative}: ${period}.`,
  added: (count: number) => `Noted: ${countOf(count, "period")}.`,
  removed: (period: string) => `Taken off: ${period}.`,
  noWeekly: (notes: string) =>
    `**Nothing is taken from the file:** no event in it is there every week.\n${notes}`,
  incomplete: "Say all three: `days:mon, wed from:18:00 to:20:30`.",
  noneToRemove: "There is no period to take off.",
  noSuchPeriod: (number: number, count: number) =>
    `There is no period ${number}. They are numbered 1 to ${count}: see \`/class periods\`.`,
};
export type BellWords = typeof en;
