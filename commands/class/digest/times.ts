import { Temporal } from "temporal-polyfill";
import type { Habits, Period } from "../../../store/shapes/school.ts";

/* When a class's digests are due, on its own wall clock. Pure. */

export interface DueDigest {
  readonly kind: "period" | "week";
  readonly dueAtMs: number;
  /** The wall-clock day and minute it belongs to: each comes once, whatever summer time does to the clock. */
  readonly name: string;
  readonly period: Period | null;
  readonly startsAtMs: number;
}

const MINUTE_MS = 60_000;
/** Older than this, a missed digest is of no use to anybody. */
const LONGEST_BACK_DAYS = 14;

type Times = Pick<Habits, "periods" | "digestLeadMinutes" | "weekDigestWeekday" | "weekDigestMinute">;

/** Those due after `fromMs` and up to `toMs`, in order of time. */
export function dueDigests(times: Times, zone: string, fromMs: number, toMs: number): DueDigest[] {
  const last = dayOf(zone, toMs + times.digestLeadMinutes * MINUTE_MS);
  const oldest = last.subtract({ days: LONGEST_BACK_DAYS });
  const first = dayOf(zone, fromMs);
  const due: DueDigest[] = [];
  for (
    let day = Temporal.PlainDate.compare(first, oldest) < 0 ? oldest : first;
    Temporal.PlainDate.compare(day, last) <= 0;
    day = day.add({ days: 1 })
  )
    due.push(...digestsOf(times, zone, day));
  return due
    .filter(({ dueAtMs }) => dueAtMs > fromMs && dueAtMs <= toMs)
    .sort((a, b) => a.dueAtMs - b.dueAtMs);
}

function digestsOf(times: Times, zone: string, day: Temporal.PlainDate): DueDigest[] {
  const name = (minute: number): string => `${day.toString().replaceAll("-", "").slice(2)}.${minute}`;
  const periods = times.periods
    .filter(({ weekday }) => weekday === day.dayOfWeek)
    .map((period): DueDigest => {
      const startsAtMs = instantOf(day, period.startMinute, zone);
      const dueAtMs = startsAtMs - times.digestLeadMinutes * MINUTE_MS;
      return { kind: "period", dueAtMs, name: name(period.startMinute), period, startsAtMs };
    });
  if (day.dayOfWeek !== times.weekDigestWeekday) return periods;
  const at = instantOf(day, times.weekDigestMinute, zone);
  return [
    ...periods,
    { kind: "week", dueAtMs: at, name: `${name(times.weekDigestMinute)}w`, period: null, startsAtMs: at },
  ];
}

function dayOf(zone: string, atMs: number): Temporal.PlainDate {
  return Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone).toPlainDate();
}

/** A minute that summer time leaves out comes as much later; one that comes twice is meant the first time. */
function instantOf(day: Temporal.PlainDate, minute: number, zone: string): number {
  const plainTime = Temporal.PlainTime.from({ hour: Math.floor(minute / 60), minute: minute % 60 });
  return day.toPlainDateTime(plainTime).toZonedDateTime(zone, { disambiguation: "compatible" })
    .epochMilliseconds;
}
