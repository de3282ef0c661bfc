import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { afterSilence } from "../../../commands/batch/silence.ts";

const NIGHT = { silenceFrom: 22 * 60, silenceTo: 7 * 60 };

test.each([
  ["2026-01-15T21:59:00Z", "2026-01-15T21:59:00Z"],
  ["2026-01-15T22:00:00Z", "2026-01-16T07:00:00Z"],
  ["2026-01-16T03:00:00Z", "2026-01-16T07:00:00Z"],
  ["2026-01-16T06:59:59Z", "2026-01-16T07:00:00Z"],
  ["2026-01-16T07:00:00Z", "2026-01-16T07:00:00Z"],
])("over midnight: %s is said at %s", (at, said) => {
  expect(new Date(afterSilence(Date.parse(at), "UTC", NIGHT)).toISOString()).toBe(
    new Date(said).toISOString(),
  );
});

test("in the middle of the day", () => {
  const noon = { silenceFrom: 12 * 60, silenceTo: 13 * 60 };
  expect(afterSilence(Date.parse("2026-01-15T12:30:00Z"), "UTC", noon)).toBe(
    Date.parse("2026-01-15T13:00:00Z"),
  );
  expect(afterSilence(Date.parse("2026-01-15T11:59:00Z"), "UTC", noon)).toBe(
    Date.parse("2026-01-15T11:59:00Z"),
  );
});

test("from and to alike: never silent", () => {
  const at = Date.parse("2026-01-15T03:00:00Z");
  expect(afterSilence(at, "UTC", { silenceFrom: 60, silenceTo: 60 })).toBe(at);
});

test("goes by the class's wall clock, in the night summer time begins too", () => {
  // Lisbon, 29 March 2026: 01:00 becomes 02:00, so 07:00 is 06:00 UTC.
  const at = Date.parse("2026-03-28T23:30:00Z");
  expect(afterSilence(at, "Europe/Lisbon", NIGHT)).toBe(Date.parse("2026-03-29T06:00:00Z"));
});

/** The same by a calendar that is not ours: the proposed standard's, and the day after it where silence goes over midnight. */
function byCalendar(atMs: number, zone: string, from: number, to: number): number {
  const local = Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone);
  const minute = local.hour * 60 + local.minute;
  if (from < to ? minute < from || minute >= to : minute < from && minute >= to) return atMs;
  const day = local.toPlainDate().add({ days: from > to && minute >= from ? 1 : 0 });
  const plainTime = Temporal.PlainTime.from({ hour: Math.floor(to / 60), minute: to % 60 });
  return day.toZonedDateTime({ timeZone: zone, plainTime }).epochMilliseconds;
}

test("ends as a calendar has it, whatever clocks do meanwhile", () => {
  const zones = [
    "UTC",
    "Europe/Lisbon",
    "America/New_York",
    "Australia/Lord_Howe",
    "Asia/Kathmandu",
    "America/St_Johns",
  ];
  // Days around the changes of 2026, and any other.
  const changes = [
    "2026-03-08",
    "2026-03-29",
    "2026-04-05",
    "2026-10-04",
    "2026-10-25",
    "2026-11-01",
    "2026-06-15",
  ];
  const instants = fc
    .tuple(fc.constantFrom(...changes), fc.integer({ min: -36 * 3600, max: 36 * 3600 }))
    .map(([day, seconds]) => Date.parse(day) + seconds * 1000);
  const minutes = fc.oneof(fc.integer({ min: 0, max: 1439 }), fc.integer({ min: 55, max: 185 }));
  let silent = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...zones),
      instants,
      minutes,
      minutes,
      (zone, atMs, silenceFrom, silenceTo) => {
        fc.pre(silenceFrom !== silenceTo);
        const said = afterSilence(atMs, zone, { silenceFrom, silenceTo });
        const wanted = byCalendar(atMs, zone, silenceFrom, silenceTo);
        if (wanted >= atMs) expect(said).toBe(wanted);
        // In the hour that comes twice the first end is over: the second one is meant.
        else expect(said - wanted).toBeOneOf([1_800_000, 3_600_000]);
        if (said !== atMs) silent += 1;
      },
    ),
    { numRuns: 3000 },
  );
  expect(silent).toBeGreaterThan(500);
});
