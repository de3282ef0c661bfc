import { joinAnd, plain } from "../wording.ts";
import type { SkipCode } from "./bell-event.ts";
import type { Calendar, CalendarFault } from "./calendar.ts";
import { formatPeriod } from "./periods.ts";

/* The sentences on a calendar file that was read. */

const MOST_NAMES = 6;
const MOST_FAULTS = 20;

type FaultWords = {
  readonly [C in CalendarFault["code"]]: (fault: Extract<CalendarFault, { readonly code: C }>) => string;
};

const FAULT_TEXT = {
  ERR_NO_CALENDAR: () => "This is no calendar file: it must begin with BEGIN:VCALENDAR (.ics).",
  ERR_CUT_OFF: () => "The file is cut off: its last line must be END:VCALENDAR. Take the whole file.",
  ERR_NO_EVENTS: () => "There are no events in that file.",
  ERR_UNREADABLE: ({ name }) => `${plain(name)}: I can't read it. Save it again in your calendar.`,
  ERR_NO_START: ({ name }) => `${plain(name)}: it has no start (DTSTART).`,
  ERR_NO_DATE: ({ name }) => `${plain(name)}: its start or end is no date and time there is.`,
  ERR_NO_END: ({ name }) => `${plain(name)}: it has no end, so there is no bell. Give it one.`,
  ERR_END_BEFORE_START: ({ name }) => `${plain(name)}: it ends before it begins.`,
  ERR_OVER_MIDNIGHT: ({ name }) =>
    `${plain(name)}: on the class's clock it goes on past midnight. End it at 24:00, or make two of it.`,
  ERR_BAD_RULE: ({ name }) => `${plain(name)}: I can't read how it is repeated (RRULE).`,
  ERR_UNKNOWN_ZONE: ({ name, zone }) =>
    `${plain(name)}: I know no time zone "${plain(zone.slice(0, 60))}", and the file does not say what it is.`,
  ERR_CLASH: ({ period, other }) => `${plain(formatPeriod(period))} runs into ${plain(formatPeriod(other))}.`,
} as const satisfies FaultWords;

/** All faults at once; nothing was taken over. */
export function sayCalendarFaults(faults: readonly CalendarFault[], clashesWithOld: boolean): string {
  const lines = faults
    .slice(0, MOST_FAULTS)
    .map((fault) => `- ${(FAULT_TEXT[fault.code] as (fault: CalendarFault) => string)(fault)}`);
  return [
    "**Nothing is taken from the file.** Mend this and send it again:",
    ...lines,
    ...(faults.length > MOST_FAULTS ? [`- and ${faults.length - MOST_FAULTS} more.`] : []),
    ...(clashesWithOld ? ["To have the file's periods in place of all there are, add `replace:yes`."] : []),
  ].join("\n");
}

const SKIP_TEXT = {
  SKIP_ONCE: "they happen once",
  SKIP_NOT_WEEKLY: "they are not the same every week",
  SKIP_ALL_DAY: "they last whole days",
  SKIP_CANCELLED: "they are cancelled",
  SKIP_MOVED_ONCE: "they move a single date",
  SKIP_OVER: "their last date is over",
} as const satisfies Record<SkipCode, string>;

/** What was left out and why, and what a week can't keep; empty where there is nothing to say. */
export function sayCalendarNotes({ skipped, withExceptions, moving }: Omit<Calendar, "periods">): string {
  const codes = Object.keys(SKIP_TEXT) as SkipCode[];
  const left = codes.flatMap((code) => {
    const names = skipped.filter((each) => each.code === code).map(({ name }) => name);
    return names.length === 0 ? [] : [`Left out, since ${SKIP_TEXT[code]}: ${sayNames(names)}.`];
  });
  return [
    ...left,
    ...(withExceptions.length > 0
      ? [`Days off and extra days are not kept; each week is alike here: ${sayNames(withExceptions)}.`]
      : []),
    ...(moving.length > 0
      ? [
          `Written in another time zone; the time is this week's, and summer time may move it: ${sayNames(moving)}.`,
        ]
      : []),
  ].join("\n");
}

function sayNames(names: readonly string[]): string {
  const once = [...new Set(names)].map(plain);
  const shown = once.slice(0, MOST_NAMES);
  return once.length > MOST_NAMES
    ? `${shown.join(", ")} and ${once.length - MOST_NAMES} more`
    : joinAnd(shown);
}
