import { de } from "./words/periods.de.ts";
import { en } from "./words/periods.en.ts";
import { fail, ok, type Result } from "../result.ts";
import type { Period, PeriodFault } from "../../store/shapes/school.ts";

/* The class's week: days and clock times as people write them, and the list they make. */

export const MOST_PERIODS = 60;

/** ISO weekdays from `mon`, `Monday`, `mon, wed`, `mon-fri`, `weekdays`, or `mo, mi`, `montags`; ascending, each once. */
export function parseDays(text: string): Result<number[], PeriodFault> {
  const days = new Set<number>();
  for (const part of text.toLowerCase().split(/[,;/+]|\band\b|\bund\b/)) {
    const range = readRange(part.trim());
    if (!range) return fail({ code: "ERR_NO_DAYS", typed: text });
    for (let day = range.from; ; day = (day % 7) + 1) {
      days.add(day);
      if (day === range.to) break;
    }
  }
  return ok([...days].sort((a, b) => a - b));
}

function readRange(part: string): { from: number; to: number } | undefined {
  if (/^(weekdays?|school days?|werktags|schultags)$/.test(part)) return { from: 1, to: 5 };
  if (/^(daily|every ?day|täglich|jeden tag)$/.test(part)) return { from: 1, to: 7 };
  const [first = "", last = first, more] = part.split(/\s*(?:-|–|\bto\b|\bbis\b)\s*/);
  const from = readDay(first);
  const to = readDay(last);
  return from === undefined || to === undefined || more !== undefined ? undefined : { from, to };
}

/** Two letters and more name a day: none of them begin alike, in either language, but for those of the same day. */
function readDay(word: string): number | undefined {
  const clean = word.trim().replace(/s?\.?$/, "");
  if (clean.length < 2) return undefined;
  const index = en.weekdays.findIndex((english, at) =>
    [english, de.weekdays[at] ?? english].some((day) => day.toLowerCase().startsWith(clean)),
  );
  return index >= 0 ? index + 1 : undefined;
}

/** Minutes of the day from `18:00`, `18.30`, `6 pm`, `6:30pm`, `1830`, `18 Uhr`; 24:00 is midnight at the day's end. */
export function parseClock(text: string): Result<number, PeriodFault> {
  const match = /^\s*(\d{1,2})(?:\s*[:.h]\s*([0-5]\d)|([0-5]\d))?\s*(am|pm|h|uhr)?\s*$/i.exec(text);
  const hour = Number(match?.[1]);
  const minute = Number(match?.[2] ?? match?.[3] ?? 0);
  const half = match?.[4]?.toLowerCase();
  const isBare = match && match[2] === undefined && match[3] === undefined && half === undefined;
  const noClock = fail({ code: "ERR_NO_CLOCK" as const, typed: text });
  if (!match || isBare) return noClock;
  if (half === "am" || half === "pm") {
    if (hour < 1 || hour > 12) return noClock;
    return ok(((hour % 12) + (half === "pm" ? 12 : 0)) * 60 + minute);
  }
  const minutes = hour * 60 + minute;
  return minutes > 24 * 60 ? noClock : ok(minutes);
}

/** `18:00`. */
export function formatMinute(minute: number): string {
  return `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
}

/** The list with these periods in it, in order of the week. A period of the same day and start is replaced. */
export function addPeriods(
  periods: readonly Period[],
  added: readonly Period[],
): Result<Period[], PeriodFault> {
  let list = [...periods];
  for (const period of added) {
    if (period.endMinute <= period.startMinute)
      return fail({ code: "ERR_BELL_BEFORE_START", from: period.startMinute, to: period.endMinute });
    list = list.filter((each) => !isSameStart(each, period));
    const other = list.find((each) => overlaps(each, period));
    if (other) return fail({ code: "ERR_OVERLAP", other });
    list.push(period);
  }
  if (list.length > MOST_PERIODS) return fail({ code: "ERR_TOO_MANY_PERIODS", most: MOST_PERIODS });
  return ok(list.sort((a, b) => a.weekday - b.weekday || a.startMinute - b.startMinute));
}

export function isSameStart(a: Period, b: Period): boolean {
  return a.weekday === b.weekday && a.startMinute === b.startMinute;
}

export function overlaps(a: Period, b: Period): boolean {
  return a.weekday === b.weekday && a.startMinute < b.endMinute && b.startMinute < a.endMinute;
}
