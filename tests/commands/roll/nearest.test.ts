import { describe, expect, it } from "vitest";
import { parseDays } from "../../../commands/roll/dates.ts";
import { nearest, pickNearest } from "../../../commands/roll/nearest.ts";

const FILMS = [
  { value: "Lantern 400", uses: 20 },
  { value: "Lantern 100", uses: 5 },
  { value: "Quay 100", uses: 9 },
  { value: "Pier Fine", uses: 1 },
];

describe("values over a slip of the finger", () => {
  it.each([
    ["lan", ["Lantern 400", "Lantern 100"]],
    ["lnatern", ["Lantern 400", "Lantern 100"]],
    ["lantren 400", ["Lantern 400", "Lantern 100"]],
    ["quya", ["Quay 100"]],
    ["fine", ["Pier Fine"]],
    ["zzzz", []],
    ["", ["Lantern 400", "Quay 100", "Lantern 100", "Pier Fine"]],
  ])("%j offers %j", (typed, offered) => {
    expect(nearest(typed, FILMS, 25)).toEqual(offered);
  });

  it.each([
    ["Lantern 400", "Lantern 400"],
    ["lantern-400", "Lantern 400"],
    ["lantren 400", "Lantern 400"],
    ["quay", "Quay 100"],
    // Two films are as near.
    ["lantern", undefined],
    ["", undefined],
    ["xylophone", undefined],
  ])("%j is taken for %j", (typed, value) => {
    expect(pickNearest(typed, FILMS)).toBe(value);
  });

  it("takes the very spelling where two differ in case alone", () => {
    const two = [
      { value: "MINA", uses: 9 },
      { value: "Mina", uses: 1 },
    ];
    expect(pickNearest("Mina", two)).toBe("Mina");
  });
});

// Thursday, 15 January 2026, 18:00 UTC.
const NOW = Date.UTC(2026, 0, 15, 18);
const day = (year: number, month: number, date: number): number => Date.UTC(year, month - 1, date);

describe("days", () => {
  it.each([
    ["2026-03-01", day(2026, 3, 1), day(2026, 3, 2)],
    ["2026-03", day(2026, 3, 1), day(2026, 4, 1)],
    // With dots the day comes first (DIN 5008).
    ["1.12.2026", day(2026, 12, 1), day(2026, 12, 2)],
    ["19. 11. 2026", day(2026, 11, 19), day(2026, 11, 20)],
    ["12.2026", day(2026, 12, 1), day(2027, 1, 1)],
    ["2026-12", day(2026, 12, 1), day(2027, 1, 1)],
    ["today", day(2026, 1, 15), day(2026, 1, 16)],
    ["Yesterday", day(2026, 1, 14), day(2026, 1, 15)],
    ["this week", day(2026, 1, 12), day(2026, 1, 19)],
    ["last week", day(2026, 1, 5), day(2026, 1, 12)],
    ["last month", day(2025, 12, 1), day(2026, 1, 1)],
    ["this year", day(2026, 1, 1), day(2027, 1, 1)],
    ["3 days", day(2026, 1, 13), day(2026, 1, 16)],
    ["last 2 weeks", day(2026, 1, 2), day(2026, 1, 16)],
  ])("%s", (text, fromMs, untilMs) => {
    expect(parseDays(text, "UTC", NOW)).toEqual({ ok: true, value: { fromMs, untilMs } });
  });

  it.each([
    "",
    "someday",
    "2026-13",
    "2026-02-30",
    "30.2.2026",
    "12.31.2026",
    "26-01-01",
    "5 fortnights",
    "-3 days",
  ])("%j is refused", (text) => {
    expect(parseDays(text, "UTC", NOW)).toMatchObject({ fault: { code: "ERR_NO_DAY" } });
  });

  it("are the class's own, also over a change of the clock", () => {
    // IANA: Pacific/Chatham is at UTC+13:45 in January.
    expect(parseDays("today", "Pacific/Chatham", NOW)).toMatchObject({
      value: { fromMs: Date.UTC(2026, 0, 15, 10, 15) },
    });
    const spring = parseDays("2026-03-29", "Europe/Berlin", NOW);
    expect(spring.ok && spring.value.untilMs - spring.value.fromMs).toBe(23 * 3_600_000);
  });
});
