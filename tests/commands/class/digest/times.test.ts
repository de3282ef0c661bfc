import { describe, expect, test } from "vitest";
import { dueDigests } from "../../../../commands/class/digest/times.ts";
import { DEFAULT_HABITS } from "../../../../store/shapes/usual-habits.ts";

const HOUR = 3_600_000;
const at = (iso: string): number => Date.parse(iso);
const period = (weekday: number, start: number, name = "Evening class") => ({
  weekday,
  startMinute: start,
  endMinute: start + 120,
  name,
});
const times = (periods = [period(4, 18 * 60)]) => ({ ...DEFAULT_HABITS, periods });

describe("before each period", () => {
  test("an hour before it begins, on the class's wall clock", () => {
    // Thursday 15 January 2026, 18:00 in Auckland is 05:00 UTC.
    const due = dueDigests(times(), "Pacific/Auckland", at("2026-01-14T00:00Z"), at("2026-01-15T06:00Z"));
    expect(due.map(({ dueAtMs }) => dueAtMs)).toEqual([at("2026-01-15T04:00Z")]);
    expect(due[0]?.startsAtMs).toBe(at("2026-01-15T05:00Z"));
  });

  test("due at the instant itself, not before it, and not again after it", () => {
    const due = (from: string, to: string) => dueDigests(times(), "UTC", at(from), at(to)).length;
    expect(due("2026-01-15T16:00Z", "2026-01-15T16:59:59Z")).toBe(0);
    expect(due("2026-01-15T16:59:59Z", "2026-01-15T17:00Z")).toBe(1);
    expect(due("2026-01-15T17:00Z", "2026-01-15T23:00Z")).toBe(0);
  });

  test("an early period's digest falls on the day before", () => {
    const due = dueDigests(times([period(4, 20)]), "UTC", at("2026-01-14T20:00Z"), at("2026-01-15T05:00Z"));
    expect(due.map(({ dueAtMs }) => dueAtMs)).toEqual([at("2026-01-14T23:20Z")]);
  });
});

describe("once a week", () => {
  test("Monday at eight, unless the class wants otherwise", () => {
    const due = dueDigests({ ...times([]) }, "UTC", at("2026-01-10T00:00Z"), at("2026-01-20T00:00Z"));
    expect(due).toMatchObject([
      { kind: "week", dueAtMs: at("2026-01-12T08:00Z") },
      { kind: "week", dueAtMs: at("2026-01-19T08:00Z") },
    ]);
  });
});

describe("summer time", () => {
  const daily = [1, 2, 3, 4, 5, 6, 7].map((weekday) => period(weekday, 90, "Night class"));

  /** Looked at every minute, as the bot does; each must come exactly once. */
  function minuteByMinute(zone: string, from: string, days: number): string[] {
    const names: string[] = [];
    for (let now = at(from); now < at(from) + days * 24 * HOUR; now += 60_000)
      names.push(...dueDigests(times(daily), zone, now - 60_000, now).map(({ name }) => name));
    return names;
  }

  test.each([
    // The clock is put on at 01:00 in Lisbon: 01:30 is left out on 29 March 2026.
    ["Europe/Lisbon", "2026-03-27T12:00Z"],
    // It is put back at 02:00: 01:30 comes twice on 25 October 2026.
    ["Europe/Lisbon", "2026-10-23T12:00Z"],
    // New York: 02:00 is left out on 8 March, 01:00 to 02:00 comes twice on 1 November 2026.
    ["America/New_York", "2026-03-06T12:00Z"],
    ["America/New_York", "2026-10-30T12:00Z"],
    // Lord Howe puts its clock on by half an hour, at 02:00 on 4 October 2026.
    ["Australia/Lord_Howe", "2026-10-02T00:00Z"],
    // Chatham lies 45 minutes off the others and ends its summer time on 5 April 2026.
    ["Pacific/Chatham", "2026-04-03T00:00Z"],
  ])("%s from %s: one each day, none skipped, none doubled", (zone, from) => {
    const names = minuteByMinute(zone, from, 4).filter((name) => !name.endsWith("w"));
    expect(new Set(names).size).toBe(names.length);
    expect(names).toHaveLength(4);
  });

  test("a period keeps its wall-clock hour over the change, so the instants lie 23 and 25 hours apart", () => {
    const evening = [6, 7, 1].map((weekday) => period(weekday, 18 * 60));
    const starts = (from: string, to: string) =>
      dueDigests(times(evening), "Europe/Lisbon", at(from), at(to))
        .filter(({ kind }) => kind === "period")
        .map(({ startsAtMs }) => startsAtMs);
    const spring = starts("2026-03-28T00:00Z", "2026-03-29T23:00Z");
    expect((spring[1] ?? 0) - (spring[0] ?? 0)).toBe(23 * HOUR);
    const autumn = starts("2026-10-24T00:00Z", "2026-10-25T23:00Z");
    expect((autumn[1] ?? 0) - (autumn[0] ?? 0)).toBe(25 * HOUR);
  });

  test("two periods that the missing hour brings to one instant both come", () => {
    const both = [period(7, 90, "First"), period(7, 150, "Second")];
    const due = dueDigests(times(both), "Europe/Lisbon", at("2026-03-28T20:00Z"), at("2026-03-29T06:00Z"));
    expect(due.map((each) => each.period?.name)).toEqual(["First", "Second"]);
    expect(due[0]?.dueAtMs).toBe(due[1]?.dueAtMs);
  });
});

test("what was missed longer ago than two weeks is left out", () => {
  const due = dueDigests(times(), "UTC", at("2025-01-01T00:00Z"), at("2026-01-16T00:00Z"));
  expect(due.filter(({ kind }) => kind === "period")).toHaveLength(2);
});
