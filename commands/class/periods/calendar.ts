import { Temporal } from "temporal-polyfill";
import { fail, ok, type Result } from "../../result.ts";
import { readEvent, type EventFaultCode, type SkipCode, type Wall, type WeeklyEvent } from "./event.ts";
import { ianaClock, ownClock, UTC_CLOCK, type ZoneClock } from "./zone.ts";
import type { Period } from "../../../store/shapes/school.ts";
import { isSameStart, overlaps } from "../periods.ts";

/* A school's calendar file (iCalendar, RFC 5545) as periods of the week on the class's own clock. */

export const LONGEST_CALENDAR = 200_000;
const MINUTE_MS = 60_000;
const HALF_YEAR = { weeks: 26 };

export type CalendarFault =
  | { readonly code: "ERR_NO_CALENDAR" | "ERR_CUT_OFF" | "ERR_NO_EVENTS" }
  | { readonly code: EventFaultCode | "ERR_OVER_MIDNIGHT"; readonly name: string }
  | { readonly code: "ERR_UNKNOWN_ZONE"; readonly name: string; readonly zone: string }
  | { readonly code: "ERR_CLASH"; readonly name: string; readonly period: Period; readonly other: Period };

export interface Calendar {
  readonly periods: readonly Period[];
  readonly skipped: readonly { readonly name: string; readonly code: SkipCode }[];
  /** Events with days off or extra days, which the class's week has not. */
  readonly withExceptions: readonly string[];
  /** Events of another zone whose time on the class's clock is another one half a year on. */
  readonly moving: readonly string[];
}

/**
 * The weekly events of a file; all that is wrong with it at once. `zone` is the class's; `eventName` names an event that has
 * no name itself, counted from 1.
 */
export function readCalendar(
  text: string,
  zone: string,
  nowMs: number,
  eventName: (number: number) => string,
): Result<Calendar, CalendarFault[]> {
  // RFC 5545, 3.1: a line that begins with a blank goes on with the one before.
  const unfolded = text.replace(/^\ufeff/, "").replace(/\r?\n[ \t]/g, "");
  if (!/^\s*BEGIN:VCALENDAR\s/i.test(unfolded)) return fail([{ code: "ERR_NO_CALENDAR" }]);
  if (!/^END:VCALENDAR\s*$/im.test(unfolded)) return fail([{ code: "ERR_CUT_OFF" }]);
  const blocks = blocksOf(unfolded, "VEVENT");
  if (blocks.length === 0) return fail([{ code: "ERR_NO_EVENTS" }]);
  const events = blocks.map((block, at) => readEvent(block, eventName(at + 1)));
  const clockOf = createClocks(unfolded, zone);

  const faults: CalendarFault[] = [];
  const skipped: { name: string; code: SkipCode }[] = [];
  const placed: { event: WeeklyEvent; laid: WeekOfEvent }[] = [];
  for (const each of events) {
    if (each.kind === "fault") faults.push({ code: each.code, name: each.name });
    else if (each.kind === "skipped") skipped.push({ name: each.name, code: each.code });
    else {
      const laid = layOut(each.event, clockOf, zone, nowMs);
      if (!laid.ok) faults.push({ ...laid.fault, name: each.event.name });
      else if (laid.value === "over") skipped.push({ name: each.event.name, code: "SKIP_OVER" });
      else placed.push({ event: each.event, laid: laid.value });
    }
  }
  const periods: Period[] = [];
  for (const period of placed.flatMap(({ laid }) => laid.periods)) {
    const other = periods.find((each) => overlaps(each, period));
    if (!other) periods.push(period);
    else if (!isSame(other, period)) faults.push({ code: "ERR_CLASH", name: period.name, period, other });
  }
  if (faults.length > 0) return fail(faults);
  return ok({
    periods,
    skipped,
    withExceptions: placed.filter(({ event }) => event.hasExceptions).map(({ event }) => event.name),
    moving: placed.filter(({ laid }) => laid.isMoving).map(({ event }) => event.name),
  });
}

/** What of the file runs into a period the class has already; one of the same start is replaced, not in the way. */
export function findClashes(existing: readonly Period[], fresh: readonly Period[]): CalendarFault[] {
  const stays = existing.filter((each) => !fresh.some((period) => isSameStart(each, period)));
  return fresh.flatMap((period) =>
    stays
      .filter((other) => overlaps(other, period))
      .map((other) => ({ code: "ERR_CLASH" as const, name: period.name, period, other })),
  );
}

/** Each event is read by itself, so that one that can't be read hides no other. */
function blocksOf(unfolded: string, kind: string): string[] {
  return unfolded.match(new RegExp(`^BEGIN:${kind}[ \\t]*$.*?^END:${kind}[ \\t]*$`, "gims")) ?? [];
}

type ClockOf = (zone: Wall["zone"]) => ZoneClock | undefined;

/** A name of the IANA database is better kept there than in a file's copy; others are what the file says they are. */
function createClocks(unfolded: string, classZone: string): ClockOf {
  const known = new Map<string, ZoneClock | undefined>();
  const own = new Map(
    blocksOf(unfolded, "VTIMEZONE").map((block) => [/^TZID[^:]*:(.*?)\s*$/im.exec(block)?.[1] ?? "", block]),
  );
  const ownOf = (name: string): ZoneClock | undefined => {
    const block = own.get(name);
    return block === undefined ? undefined : ownClock(block);
  };
  return (zone) => {
    if (zone.kind === "utc") return UTC_CLOCK;
    const name = "name" in zone ? zone.name : classZone;
    if (!known.has(name)) known.set(name, ianaClock(name) ?? ownOf(name));
    return known.get(name);
  };
}

interface WeekOfEvent {
  readonly periods: readonly Period[];
  readonly isMoving: boolean;
}

type LayFault =
  | { readonly code: "ERR_END_BEFORE_START" | "ERR_OVER_MIDNIGHT" }
  | { readonly code: "ERR_UNKNOWN_ZONE"; readonly zone: string };

/** The event's next week, on the class's clock. */
function layOut(
  event: WeeklyEvent,
  clockOf: ClockOf,
  zone: string,
  nowMs: number,
): Result<WeekOfEvent | "over", LayFault> {
  const clock = clockOf(event.start.zone);
  const endClock = "time" in event.end ? clockOf(event.end.zone) : clock;
  if (!clock || !endClock) {
    const unknown: Wall["zone"] = clock && "time" in event.end ? event.end.zone : event.start.zone;
    return fail({ code: "ERR_UNKNOWN_ZONE", zone: "name" in unknown ? unknown.name : "" });
  }
  const startMs = clock(event.start.time);
  const lengthMs = "time" in event.end ? endClock(event.end.time) - startMs : event.end.seconds * 1000;
  if (lengthMs < MINUTE_MS) return fail({ code: "ERR_END_BEFORE_START" });
  if (isOver(event, clockOf, startMs, nowMs)) return ok("over");

  const from = startMs > nowMs ? event.start.time : onDayOf(event.start.time, nowMs, zone);
  const layFrom = (first: Temporal.PlainDateTime): (Period | undefined)[] =>
    event.weekdays.map((weekday) => {
      const day = first.add({ days: (weekday - first.dayOfWeek + 7) % 7 });
      return periodAt(clock(day), lengthMs, zone, event.name);
    });
  const periods = layFrom(from);
  if (periods.some((period) => !period)) return fail({ code: "ERR_OVER_MIDNIGHT" });
  const later = layFrom(from.add(HALF_YEAR));
  const isMoving = periods.some((period, at) => period?.startMinute !== later[at]?.startMinute);
  return ok({ periods: periods.filter((period) => period !== undefined), isMoving });
}

function onDayOf(time: Temporal.PlainDateTime, nowMs: number, zone: string): Temporal.PlainDateTime {
  const today = Temporal.Instant.fromEpochMilliseconds(nowMs).toZonedDateTimeISO(zone).toPlainDate();
  return today.toPlainDateTime(time.toPlainTime());
}

/** Undefined where it goes on past midnight: the class's day ends there. */
function periodAt(startMs: number, lengthMs: number, zone: string, name: string): Period | undefined {
  const start = Temporal.Instant.fromEpochMilliseconds(startMs).toZonedDateTimeISO(zone);
  const startMinute = start.hour * 60 + start.minute;
  const endMinute = startMinute + Math.round(lengthMs / MINUTE_MS);
  return endMinute > 24 * 60 ? undefined : { weekday: start.dayOfWeek, startMinute, endMinute, name };
}

/** Its last time, by `UNTIL` or `COUNT` (RFC 5545, 3.3.10), lies behind us. */
function isOver(event: WeeklyEvent, clockOf: ClockOf, startMs: number, nowMs: number): boolean {
  if (event.until) {
    // An UNTIL without a Z counts by the clock of the start.
    const { kind } = event.until.zone;
    const clock = clockOf(kind === "utc" ? event.until.zone : event.start.zone);
    return (clock?.(event.until.time) ?? Infinity) < nowMs;
  }
  if (event.count === null) return false;
  const weeks = Math.ceil(event.count / Math.max(1, event.weekdays.length));
  return startMs + weeks * 7 * 86_400_000 < nowMs;
}

function isSame(a: Period, b: Period): boolean {
  return isSameStart(a, b) && a.endMinute === b.endMinute && a.name === b.name;
}
