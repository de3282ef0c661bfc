import { inEach } from "../../speech/language.ts";
import { plain } from "../../speech/wording.ts";
import type { SkipCode } from "./event.ts";
import type { Calendar, CalendarFault } from "./calendar.ts";
import { formatPeriod } from "../period-words.ts";
import { de } from "./bell-file.de.ts";
import { en } from "./bell-file.en.ts";

/* The sentences on a calendar file that was read. */

const MOST_NAMES = 6;
const MOST_FAULTS = 20;

const words = inEach({ en, de });

function faultWords(fault: CalendarFault): string {
  const { faults } = words();
  if (fault.code === "ERR_CLASH")
    return faults.ERR_CLASH(plain(formatPeriod(fault.period)), plain(formatPeriod(fault.other)));
  if (fault.code === "ERR_UNKNOWN_ZONE")
    return faults.ERR_UNKNOWN_ZONE(plain(fault.name), plain(fault.zone.slice(0, 60)));
  return faults[fault.code]("name" in fault ? plain(fault.name) : "");
}

/** All faults at once; nothing was taken over. */
export function sayCalendarFaults(faults: readonly CalendarFault[], clashesWithOld: boolean): string {
  const lines = faults.slice(0, MOST_FAULTS).map((fault) => `- ${faultWords(fault)}`);
  return [
    words().nothingTaken,
    ...lines,
    ...(faults.length > MOST_FAULTS ? [`- ${words().moreFaults(faults.length - MOST_FAULTS)}`] : []),
    ...(clashesWithOld ? [words().replaceHint] : []),
  ].join("\n");
}

/** What was left out and why, and what a week can't keep; empty where there is nothing to say. */
export function sayCalendarNotes({ skipped, withExceptions, moving }: Omit<Calendar, "periods">): string {
  const codes = Object.keys(words().skipped) as SkipCode[];
  const left = codes.flatMap((code) => {
    const names = skipped.filter((each) => each.code === code).map(({ name }) => name);
    return names.length === 0 ? [] : [words().skipped[code](sayNames(names))];
  });
  return [
    ...left,
    ...(withExceptions.length > 0 ? [words().exceptions(sayNames(withExceptions))] : []),
    ...(moving.length > 0 ? [words().moving(sayNames(moving))] : []),
  ].join("\n");
}

function sayNames(names: readonly string[]): string {
  const once = [...new Set(names)].map(plain);
  return words().names(once.slice(0, MOST_NAMES), Math.max(0, once.length - MOST_NAMES));
}

/** Names an event of a file that has no name itself. */
export function eventName(number: number): string {
  return words().event(number);
}
