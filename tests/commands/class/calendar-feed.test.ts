import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { makeCalendar } from "../../../commands/class/calendar-feed.ts";
import { type SchoolClass } from "../../../store/shapes/school.ts";
import { DEFAULT_HABITS } from "../../../store/shapes/usual-habits.ts";

/* Held against RFC 5545 by hand and against ical.js, which other calendars are read with too. */

const periods = [
  { weekday: 2, startMinute: 18 * 60, endMinute: 20 * 60 + 30, name: "Tuesday; group A, blue" },
  { weekday: 4, startMinute: 9 * 60, endMinute: 10 * 60, name: "" },
];
const school = (over: Partial<SchoolClass["habits"]> = {}): SchoolClass => ({
  id: 7,
  key: "room:1",
  name: "Evening class (invented) with a name that is long enough to be folded over two lines of the file",
  zone: "Europe/Berlin",
  demo: false,
  habits: { ...DEFAULT_HABITS, periods, ...over },
});
/** A Monday, three weeks before summer time ends in Berlin (25 October 2026). */
const NOW = Date.UTC(2026, 9, 5, 12);

const eventsOf = (text: string) =>
  new ICAL.Component(ICAL.parse(text) as never)
    .getAllSubcomponents("vevent")
    .map((each) => new ICAL.Event(each))
    .map(({ uid, summary, startDate, endDate }) => ({
      uid,
      summary,
      start: startDate.toJSDate().toISOString(),
      minutes: (endDate.toJSDate().getTime() - startDate.toJSDate().getTime()) / 60_000,
    }));

describe("the file", () => {
  const text = makeCalendar(school(), NOW);

  test("keeps to RFC 5545: lines end in CRLF and have at most 75 octets (3.1), head and events what they must (3.6)", () => {
    expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true);
    const lines = text.slice(0, -2).split("\r\n");
    expect(lines.filter((line) => /[\r\n]/.test(line) || Buffer.byteLength(line) > 75)).toEqual([]);
    expect(lines[0]).toBe("BEGIN:VCALENDAR");
    expect(lines).toContain("VERSION:2.0");
    expect(lines.some((line) => line.startsWith("PRODID:"))).toBe(true);
    const count = (start: string): number => lines.filter((line) => line.startsWith(start)).length;
    const events = count("BEGIN:VEVENT");
    expect(events).toBeGreaterThan(100);
    expect([count("UID:"), count("DTSTAMP:"), count("DTSTART:"), count("END:VEVENT")]).toEqual(
      Array.from({ length: 4 }, () => events),
    );
  });

  test("has each period at the class's own clock, on both sides of the end of summer time", () => {
    const sittings = eventsOf(text).filter(({ summary }) => summary.startsWith("Darkroom"));
    expect(sittings.slice(0, 2)).toMatchObject([
      { summary: "Darkroom: Tuesday; group A, blue", start: "2026-10-06T16:00:00.000Z", minutes: 150 },
      { summary: "Darkroom", start: "2026-10-08T07:00:00.000Z", minutes: 60 },
    ]);
    // 18:00 and 9:00 in Berlin are an hour later in UTC from 25 October on.
    const starts = sittings.map(({ start }) => start);
    expect(starts).toContain("2026-10-27T17:00:00.000Z");
    expect(starts).toContain("2026-10-29T08:00:00.000Z");
    expect(sittings).toHaveLength(52);
  });

  test("has the digests as moments: before each period, and the week's", () => {
    const moments = eventsOf(text).filter(({ minutes }) => minutes === 0);
    expect(moments.filter(({ summary }) => summary.includes("to mix"))).toHaveLength(52);
    expect(moments.filter(({ summary }) => summary.includes("the week's"))).toHaveLength(26);
    expect(moments.find(({ summary }) => summary.includes("to mix"))?.start).toBe("2026-10-06T15:00:00.000Z");
  });

  test("names each event once, and alike the next day, so that a calendar finds it again", () => {
    const uids = eventsOf(text).map(({ uid }) => uid);
    expect(new Set(uids).size).toBe(uids.length);
    const later = eventsOf(makeCalendar(school(), NOW + 24 * 3_600_000)).map(({ uid }) => uid);
    expect(uids.filter((uid) => later.includes(uid)).length).toBeGreaterThan(uids.length - 4);
  });
});

test("a class that speaks German has it in German; one without periods has the week's digest alone", () => {
  const german = eventsOf(makeCalendar(school({ language: "de" }), NOW)).map(({ summary }) => summary);
  expect(german.filter((summary) => summary.startsWith("Dunkelkammer"))).toHaveLength(52);
  expect(eventsOf(makeCalendar(school({ periods: [] }), NOW))).toHaveLength(26);
});

test.each(["\r\n", "\n", "\r", "\u2028", "\u0085"])(
  "a line end (%j) in a name begins no line of the file",
  (end) => {
    const named = { ...school(), name: `Evening${end}X-EVIL:1` };
    const evil = [{ weekday: 2 as const, startMinute: 0, endMinute: 60, name: `A${end}END:VEVENT` }];
    const text = makeCalendar({ ...named, habits: { ...named.habits, periods: evil } }, NOW);
    const lines = text.split(/\r\n|[\n\r\u2028\u0085]/);
    expect(lines.filter((line) => line.startsWith("X-EVIL"))).toEqual([]);
    expect(lines.filter((line) => line === "END:VEVENT").length).toBe(
      lines.filter((line) => line === "BEGIN:VEVENT").length,
    );
    expect(text).toContain("NAME:Evening X-EVIL:1");
  },
);
