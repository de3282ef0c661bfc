import { Temporal } from "temporal-polyfill";
import { fail, ok, type Result } from "../result.ts";
import type { FigureFault } from "./figures.ts";

const NEAR = { today: 0, yesterday: -1, tomorrow: 1, heute: 0, gestern: -1, morgen: 1 } as const;

/** The day's first instant on the class's wall clock, from `2026-05-31`, `31.5.2026`, `today`, `yesterday`, `tomorrow`, `heute`. */
export function parseDay(text: string, zone: string, nowMs: number): Result<number, FigureFault> {
  const typed = text.normalize("NFKC").trim().toLowerCase();
  try {
    const near = NEAR[typed as keyof typeof NEAR] as number | undefined;
    const day = near === undefined ? readDay(typed) : todayIn(zone, nowMs).add({ days: near });
    return ok(day.toZonedDateTime(zone).epochMilliseconds);
  } catch {
    return fail({ code: "ERR_NO_DATE", typed });
  }
}

function readDay(typed: string): Temporal.PlainDate {
  const [, day, month, year] = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})$/.exec(typed) ?? [];
  if (day !== undefined)
    return Temporal.PlainDate.from(
      { year: Number(year), month: Number(month), day: Number(day) },
      { overflow: "reject" },
    );
  if (!/^\d{4}-\d{2}-\d{2}$/.test(typed)) throw new RangeError("not a date");
  return Temporal.PlainDate.from(typed, { overflow: "reject" });
}

function todayIn(zone: string, nowMs: number): Temporal.PlainDate {
  return Temporal.Instant.fromEpochMilliseconds(nowMs).toZonedDateTimeISO(zone).toPlainDate();
}
