import { Temporal } from "temporal-polyfill";
import type { Period } from "../../store/shapes/school.ts";

/* When the bell rings: the periods of the week laid on the class's own wall clock, summer time and all. */

/** One period on one day. Its end is the bell. */
export interface Sitting {
  readonly period: Period;
  readonly startsAtMs: number;
  readonly endsAtMs: number;
}

/** The sitting that is on at `nowMs`; null between sittings. */
export function sittingNow(periods: readonly Period[], zone: string, nowMs: number): Sitting | null {
  const today = dayOf(zone, nowMs);
  return (
    sittingsOn(periods, zone, today).find(
      ({ startsAtMs, endsAtMs }) => startsAtMs <= nowMs && nowMs < endsAtMs,
    ) ?? null
  );
}

/** The next sitting that begins after `nowMs`; null where the class has none. */
export function nextSitting(periods: readonly Period[], zone: string, nowMs: number): Sitting | null {
  const today = dayOf(zone, nowMs);
  for (let days = 0; days <= 7; days += 1) {
    const next = sittingsOn(periods, zone, today.add({ days })).find(({ startsAtMs }) => startsAtMs > nowMs);
    if (next) return next;
  }
  return null;
}

function dayOf(zone: string, nowMs: number): Temporal.PlainDate {
  return Temporal.Instant.fromEpochMilliseconds(nowMs).toZonedDateTimeISO(zone).toPlainDate();
}

/** In order of time. */
function sittingsOn(periods: readonly Period[], zone: string, day: Temporal.PlainDate): Sitting[] {
  return periods
    .filter(({ weekday }) => weekday === day.dayOfWeek)
    .map((period) => ({
      period,
      startsAtMs: instantOf(day, period.startMinute, zone),
      endsAtMs: instantOf(day, period.endMinute, zone),
    }))
    .sort((a, b) => a.startsAtMs - b.startsAtMs);
}

/** The instant at which the wall clock shows this minute; a minute that summer time leaves out comes as the next there is. */
function instantOf(day: Temporal.PlainDate, minute: number, zone: string): number {
  const date = minute === 24 * 60 ? day.add({ days: 1 }) : day;
  const time = Temporal.PlainTime.from({ hour: Math.floor(minute / 60) % 24, minute: minute % 60 });
  return date.toZonedDateTime({ timeZone: zone, plainTime: time }).epochMilliseconds;
}
