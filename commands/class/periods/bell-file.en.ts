import { joinAnd } from "../../speech/wording.ts";
import type { SkipCode } from "./event.ts";
import type { CalendarFault } from "./calendar.ts";

/* Names of events come harmless, periods worded. */

export const en = {
  /** Names an event that has no summary. */
  event: (number: number) => `Event ${number}`,
  faults: {
    ERR_NO_CALENDAR: () => "This is no calendar file: it must begin with BEGIN:VCALENDAR (.ics).",
    ERR_CUT_OFF: () => "The file is cut off: its last line must be END:VCALENDAR. Take the whole file.",
    ERR_NO_EVENTS: () => "There are no events in that file.",
    ERR_UNREADABLE: (name: string) => `${name}: I can't read it. Save it again in your calendar.`,
    ERR_NO_START: (name: string) => `${name}: it has no start (DTSTART).`,
    ERR_NO_DATE: (name: string) => `${name}: its start or end is no date and time there is.`,
    ERR_NO_END: (name: string) => `${name}: it has no end, so there is no bell. Give it one.`,
    ERR_END_BEFORE_START: (name: string) => `${name}: it ends before it begins.`,
    ERR_OVER_MIDNIGHT: (name: string) =>
      `${name}: on the class's clock it goes on past midnight. End it at 24:00, or make two of it.`,
    ERR_BAD_RULE: (name: string) => `${name}: I can't read how it is repeated (RRULE).`,
    ERR_UNKNOWN_ZONE: (name: string, zone: string) =>
      `${name}: there is no time zone "${zone}", and the file does not say what it is.`,
    ERR_CLASH: (period: string, other: string) => `${period} runs into ${other}.`,
  } satisfies Record<CalendarFault["code"], (one: string, other: string) => string>,
  nothingTaken: "**Nothing is taken from the file.** Mend this and send it again:",
  moreFaults: (count: number) => `and ${count} more.`,
  replaceHint: "To have the file's periods in place of all there are, add `replace:yes`.",
  skipped: {
    SKIP_ONCE: (names: string) => `Left out, since they happen once: ${names}.`,
    SKIP_NOT_WEEKLY: (names: string) => `Left out, since they are not the same every week: ${names}.`,
    SKIP_ALL_DAY: (names: string) => `Left out, since they last whole days: ${names}.`,
    SKIP_CANCELLED: (names: string) => `Left out, since they are cancelled: ${names}.`,
    SKIP_MOVED_ONCE: (names: string) => `Left out, since they move a single date: ${names}.`,
    SKIP_OVER: (names: string) => `Left out, since their last date is over: ${names}.`,
  } satisfies Record<SkipCode, (names: string) => string>,
  exceptions: (names: string) => `Days off and extra days are not kept; each week is alike here: ${names}.`,
  moving: (names: string) =>
    `Written in another time zone; the time is this week's, and summer time may move it: ${names}.`,
  names: (shown: readonly string[], more: number) =>
    more > 0 ? `${shown.join(", ")} and ${more} more` : joinAnd(shown),
};
export type BellFileWords = typeof en;
