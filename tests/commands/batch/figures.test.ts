import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseDay } from "../../../commands/batch/dates.ts";
import { formatShelfLife, parseCapacity, parseShelfLife } from "../../../commands/batch/figures.ts";

describe("capacities, in sq in per litre", () => {
  test.each([
    ["20 films/l", 1600],
    ["20/l", 1600],
    ["20 rolls per litre", 1600],
    ["12 films a litre", 960],
    // 80 rolls in a US gallon are 21.13 in a litre (Anchell, p. 108, rounds that to 20).
    ["80 per gal", 1691],
    ["1600 sq in/l", 1600],
    ["1 m2/l", 1550],
    ["7,5 films/l", 600],
  ])("%s", (text, sqIn) => expect(parseCapacity(text)).toEqual({ ok: true, value: sqIn }));

  test.each(["", "20", "many", "-3 films/l", "20 films/kg", "9999999 films/l"])("not %j", (text) => {
    expect(parseCapacity(text)).toMatchObject({ ok: false, fault: { code: "ERR_NO_CAPACITY" } });
  });

  test.each(["12 films", "10 Filme", "1 m2"])("%s is asked of what", (text) => {
    expect(parseCapacity(text)).toMatchObject({ ok: false, fault: { code: "ERR_CAPACITY_OF_WHAT" } });
  });

  test.each(["0 films/l", "0.2 films/l", "101 films/l", "1000 films/l", "8001 sq in/l"])(
    "%s is out of range",
    (text) => {
      expect(parseCapacity(text)).toMatchObject({ ok: false, fault: { code: "ERR_CAPACITY_RANGE" } });
    },
  );
});

describe("shelf lives, in hours", () => {
  test.each([
    ["24 h", 24],
    ["7 days", 168],
    ["2 weeks", 336],
    ["6 months", 4320],
    ["1 year", 8760],
    ["1month", 720],
  ])("%s", (text, hours) => expect(parseShelfLife(text)).toEqual({ ok: true, value: hours }));

  test.each(["", "soon", "7", "0 days", "99 years"])("not %j", (text) => {
    expect(parseShelfLife(text)).toMatchObject({ ok: false });
  });

  test("what is said is read back the same", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8760 }), (hours) => {
        expect(parseShelfLife(formatShelfLife(hours))).toEqual({ ok: true, value: hours });
      }),
    );
  });
});

describe("days, on the class's wall clock", () => {
  const evening = Date.UTC(2026, 0, 15, 20, 30);

  test("begin at the class's midnight", () => {
    expect(parseDay("2026-01-15", "Europe/Lisbon", evening)).toEqual({
      ok: true,
      value: Date.UTC(2026, 0, 15),
    });
    expect(parseDay("2026-07-15", "Europe/Lisbon", evening)).toEqual({
      ok: true,
      value: Date.UTC(2026, 6, 14, 23),
    });
  });

  test("with dots the day comes first (DIN 5008)", () => {
    expect(parseDay("1.12.2026", "UTC", evening)).toEqual({ ok: true, value: Date.UTC(2026, 11, 1) });
    expect(parseDay("01.12.2026", "UTC", evening)).toEqual({ ok: true, value: Date.UTC(2026, 11, 1) });
  });

  test("today is the class's today", () => {
    // 20:30 in Greenwich is the morning of the 16th in Auckland, whose day began at 11:00 Greenwich time.
    expect(parseDay("today", "Pacific/Auckland", evening)).toEqual({
      ok: true,
      value: Date.UTC(2026, 0, 15, 11),
    });
    expect(parseDay("Tomorrow", "UTC", evening)).toEqual({ ok: true, value: Date.UTC(2026, 0, 16) });
  });

  test.each(["2026-02-30", "30.2.2026", "1.15.2026", "15.1.26", "", "someday", "constructor"])(
    "not %j",
    (text) => {
      expect(parseDay(text, "UTC", evening)).toMatchObject({ ok: false, fault: { code: "ERR_NO_DATE" } });
    },
  );
});
