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
