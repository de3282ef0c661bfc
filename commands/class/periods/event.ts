import ICAL from "ical.js";
import { Temporal } from "temporal-polyfill";

/* One event of a calendar file, read and checked as far as it stands by itself. */

/** Why an event is no period of every week; it is left out, and its author has done nothing wrong. */
export const SKIP_CODES = [
  "SKIP_ONCE",
  "SKIP_NOT_WEEKLY",
  "SKIP_ALL_DAY",
  "SKIP_CANCELLED",
  "SKIP_MOVED_ONCE",
  "SKIP_OVER",
] as const;
export type SkipCode = (typeof SKIP_CODES)[number];

export type EventFaultCode =
  "ERR_UNREADABLE" | "ERR_NO_START" | "ERR_NO_DATE" | "ERR_NO_END" | "ERR_END_BEFORE_START" | "ERR_BAD_RULE";

export interface Wall {
  readonly time: Temporal.PlainDateTime;
  /** `utc`, `class` (no zone is named) or the name it is defined under. */
  readonly zone: { readonly kind: "utc" | "class" } | { readonly kind: "named"; readonly name: string };
}

export interface WeeklyEvent {
  readonly name: string;
  readonly start: Wall;
  readonly end: Wall | { readonly seconds: number };
  /** ISO, on the clock of `start`. */
  readonly weekdays: readonly number[];
  /** How often at most; null: without end. */
  readonly count: number | null;
  readonly until: Wall | null;
  /** It has days off or extra days, which a week that is always alike can't have. */
  readonly hasExceptions: boolean;
}

export type ReadEvent =
  | { readonly kind: "weekly"; readonly event: WeeklyEvent }
  | { readonly kind: "skipped"; readonly name: string; readonly code: SkipCode }
  | { readonly kind: "fault"; readonly name: string; readonly code: EventFaultCode };

const DAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"];
/** Outside these years a date is a slip, and no zone's rules are known. */
const YEARS = { first: 1970, last: 2199 };

/** Reads the text of one VEVENT (RFC 5545, 3.6.1); `fallback` names it where it has no summary. */
export function readEvent(block: string, fallback: string): ReadEvent {
  let event: ICAL.Component;
  try {
    event = new ICAL.Component(ICAL.parse(block));
  } catch (error) {
    const isRule = /frequency|rrule|recur|until|count|interval|by[a-z]+day/i.test(String(error));
    const summary = /^SUMMARY[^:]*:(.*)$/im.exec(block)?.[1];
    return {
      kind: "fault",
      name: nameOf(summary, fallback),
      code: isRule ? "ERR_BAD_RULE" : "ERR_UNREADABLE",
    };
  }
  const name = nameOf(event.getFirstPropertyValue("summary"), fallback);
  const read = readWeekly(event, name);
  return typeof read === "string"
    ? read.startsWith("SKIP")
      ? { kind: "skipped", name, code: read as SkipCode }
      : { kind: "fault", name, code: read as EventFaultCode }
    : { kind: "weekly", event: read };
}

function readWeekly(event: ICAL.Component, name: string): WeeklyEvent | SkipCode | EventFaultCode {
  if (String(event.getFirstPropertyValue("status")).toUpperCase() === "CANCELLED") return "SKIP_CANCELLED";
  if (event.hasProperty("recurrence-id")) return "SKIP_MOVED_ONCE";
  const started = event.getFirstProperty("dtstart");
  if (!started) return "ERR_NO_START";
  if (started.type === "date") return "SKIP_ALL_DAY";
  const rules = event.getAllProperties("rrule");
  const [first] = rules;
  if (!first) return event.hasProperty("rdate") ? "SKIP_NOT_WEEKLY" : "SKIP_ONCE";
  const rule = first.getFirstValue();
  if (!(rule instanceof ICAL.Recur)) return "ERR_BAD_RULE";
  if (rules.length > 1 || !isEachWeekAlike(rule)) return "SKIP_NOT_WEEKLY";
  const start = readWall(started);
  if (!start) return "ERR_NO_DATE";
  const end = readEnd(event);
  if (typeof end === "string") return end;
  const byDay = rule.parts.BYDAY?.map((day) => DAYS.indexOf(day) + 1);
  const weekdays = byDay ?? (rule.freq === "DAILY" ? [1, 2, 3, 4, 5, 6, 7] : [start.time.dayOfWeek]);
  return {
    name,
    start,
    end,
    weekdays: [...new Set(weekdays)].sort((a, b) => a - b),
    count: rule.count,
    until: rule.until ? wallOf(rule.until.toString(), null) : null,
    hasExceptions: event.hasProperty("exdate") || event.hasProperty("rdate"),
  };
}

/** Weekly, or daily which is a week of seven; by the day and by nothing else. */
function isEachWeekAlike({ freq, interval, parts }: ICAL.Recur): boolean {
  const others = Object.keys(parts).filter((part) => part !== "BYDAY");
  const isPlain = (parts.BYDAY ?? []).every((day) => DAYS.includes(day));
  return (freq === "WEEKLY" || freq === "DAILY") && interval === 1 && others.length === 0 && isPlain;
}

function readEnd(event: ICAL.Component): WeeklyEvent["end"] | EventFaultCode {
  const ended = event.getFirstProperty("dtend");
  if (ended) return readWall(ended) ?? "ERR_NO_DATE";
  const duration = event.getFirstPropertyValue("duration");
  // RFC 5545, 3.6.1: without either it ends where it starts, which is no period.
  if (!(duration instanceof ICAL.Duration)) return "ERR_NO_END";
  const seconds = duration.toSeconds();
  return seconds > 0 ? { seconds } : "ERR_END_BEFORE_START";
}

function readWall(property: ICAL.Property): Wall | null {
  const raw: unknown = property.toJSON()[3];
  const zone = property.getParameter("tzid");
  return typeof raw === "string" ? wallOf(raw, typeof zone === "string" ? zone : null) : null;
}

/** From `2026-01-15T18:00:00`, with a Z for UTC, or a date, which here stands for its end. Null for no date there is. */
function wallOf(text: string, zoneName: string | null): Wall | null {
  try {
    const time = Temporal.PlainDateTime.from(text.includes("T") ? text.replace(/Z$/, "") : `${text}T23:59`);
    if (time.year < YEARS.first || time.year > YEARS.last) return null;
    // RFC 5545, 3.3.5: a Z is UTC, and a zone's name beside it counts for nothing.
    if (text.endsWith("Z")) return { time, zone: { kind: "utc" } };
    return { time, zone: zoneName === null ? { kind: "class" } : { kind: "named", name: zoneName } };
  } catch {
    return null;
  }
}

function nameOf(summary: unknown, fallback: string): string {
  const name = typeof summary === "string" ? summary.replace(/\s+/g, " ").trim() : "";
  return name === "" ? fallback : [...name].slice(0, 60).join("");
}
