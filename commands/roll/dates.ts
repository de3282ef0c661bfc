import { Temporal } from "temporal-polyfill";
import { fail, ok, type Result } from "../result.ts";

/* Days as people write them, on the class's own clock: `2026-03-01`, `1.3.2026`, `2026-03`, `3.2026`, `today`, `3 weeks`. */

export interface Days {
  /** The first instant of the first day. */
  readonly fromMs: number;
  /** The first instant after the last day. */
  readonly untilMs: number;
}

export type DayFault = { readonly code: "ERR_NO_DAY"; readonly typed: string };

/** Days as they are said in German; who reads German may type either. */
const IN_GERMAN: Readonly<Record<string, string>> = {
  heute: "today",
  gestern: "yesterday",
  "diese woche": "this week",
  "letzte woche": "last week",
  "dieser monat": "this month",
  "diesen monat": "this month",
  "letzter monat": "last month",
  "letzten monat": "last month",
  "dieses jahr": "this year",
};

/** The stretch of days that `text` names. A count of days or weeks goes back from today and includes it. */
export function parseDays(text: string, zone: string, nowMs: number): Result<Days, DayFault> {
  const lower = text.trim().toLowerCase();
  const typed = IN_GERMAN[lower] ?? lower;
  const today = Temporal.Instant.fromEpochMilliseconds(nowMs).toZonedDateTimeISO(zone).toPlainDate();
  const read = named(typed, today) ?? counted(typed, today) ?? written(typed);
  if (!read) return fail({ code: "ERR_NO_DAY", typed: text });
  const [first, after] = read;
  return ok({ fromMs: startOf(first, zone), untilMs: startOf(after, zone) });
}

type Span = readonly [first: Temporal.PlainDate, after: Temporal.PlainDate];

function named(typed: string, today: Temporal.PlainDate): Span | undefined {
  const monday = today.subtract({ days: today.dayOfWeek - 1 });
  switch (typed) {
    case "today":
      return [today, today.add({ days: 1 })];
    case "yesterday":
      return [today.subtract({ days: 1 }), today];
    case "this week":
      return [monday, monday.add({ weeks: 1 })];
    case "last week":
      return [monday.subtract({ weeks: 1 }), monday];
    case "this month":
      return [today.with({ day: 1 }), today.with({ day: 1 }).add({ months: 1 })];
    case "last month":
      return [today.with({ day: 1 }).subtract({ months: 1 }), today.with({ day: 1 })];
    case "this year":
      return [today.with({ day: 1, month: 1 }), today.with({ day: 1, month: 1 }).add({ years: 1 })];
    default:
      return undefined;
  }
}

function counted(typed: string, today: Temporal.PlainDate): Span | undefined {
  const match =
    /^(?:last |letzte )?(\d{1,4}) ?(d|days?|w|weeks?|months?|y|years?|tage?n?|wochen?|monate?n?|jahre?n?)$/.exec(
      typed,
    );
  if (!match) return undefined;
  const count = Number(match[1]);
  const unit = match[2]?.[0];
  const back =
    unit === "d" || unit === "t"
      ? { days: count }
      : unit === "w"
        ? { weeks: count }
        : unit === "m"
          ? { months: count }
          : { years: count };
  const after = today.add({ days: 1 });
  return [after.subtract(back), after];
}

function written(typed: string): Span | undefined {
  const { year, month, day } =
    /^(?<year>\d{4})-(?<month>\d{1,2})(?:-(?<day>\d{1,2}))?$/.exec(typed)?.groups ??
    /^(?:(?<day>\d{1,2})\.\s?)?(?<month>\d{1,2})\.\s?(?<year>\d{4})$/.exec(typed)?.groups ??
    {};
  if (year === undefined) return undefined;
  const date = { year: Number(year), month: Number(month), day: Number(day ?? 1) };
  try {
    const first = Temporal.PlainDate.from(date, { overflow: "reject" });
    return [first, first.add(day === undefined ? { months: 1 } : { days: 1 })];
  } catch {
    return undefined;
  }
}

function startOf(day: Temporal.PlainDate, zone: string): number {
  return day.toZonedDateTime(zone).epochMilliseconds;
}
