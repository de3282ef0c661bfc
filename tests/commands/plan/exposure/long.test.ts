import { describe, expect, test } from "vitest";
import {
  ADDED,
  BOOK_TABLE,
  byAdding,
  byPower,
  byTable,
  longExposure,
  OLD_TABLE,
} from "../../../../commands/plan/exposure/long.ts";
import { createRoom } from "../../../support/room.ts";

describe("published corrections of long exposures", () => {
  test("the power form: exponent 1.31, 10 s gives 20.4 s (copy of a maker's sheet, grade C); 60 s 213.5 s (derived)", () => {
    expect(byPower(10, 1.31)).toBeCloseTo(20.4, 1);
    expect(byPower(60, 1.31)).toBeCloseTo(213.5, 0);
    // The same sheet: 1.26 and 1.33 at 60 s (derived).
    expect(byPower(60, 1.26)).toBeCloseTo(174, 0);
    expect(byPower(60, 1.33)).toBeCloseTo(231.7, 0);
  });

  test("the added form: k 0.101, 10 s gives 14.2 s, 60 s 136.7 s (Bond and Gainer, in a forum, grade B/C; derived)", () => {
    expect(byAdding(10, 0.101)).toBeCloseTo(14.2, 1);
    expect(byAdding(60, 0.101)).toBeCloseTo(136.7, 0);
    expect([0.169, 0.061, 0.069, 0.046].map((k) => Number(byAdding(10, k).toFixed(1)))).toEqual([
      17, 12.5, 12.9, 11.9,
    ]);
  });

  test("a published slip is caught: 100 s that ask for 200 make k 0.0575, not the .056 printed (a forum, grade C)", () => {
    const k = 100 / 100 ** ADDED.power;
    expect(k).toBeCloseTo(0.0575, 4);
    expect(byAdding(100, 0.056)).not.toBeCloseTo(200, 0);
    expect(byAdding(100, k)).toBeCloseTo(200, 6);
  });

  test("the tables give back what is printed (Barnbaum 1994 p. 77, copied; an older table, copied), never more light for less", () => {
    for (const table of [BOOK_TABLE, OLD_TABLE])
      for (const [metered, corrected] of table) expect(byTable(table, metered)).toBeCloseTo(corrected, 6);
    expect(byTable(BOOK_TABLE, 241)).toBeUndefined();
    for (let at = 2; at < 120; at += 1)
      expect(byTable(OLD_TABLE, at) ?? 0).toBeGreaterThan(byTable(OLD_TABLE, at - 1) ?? 0);
  });

  test("10 s of one film: 14, 20 or 31 s by source; all lie in what is told", () => {
    const { lowSeconds, highSeconds, lessPercent } = longExposure(10, 1, null);
    for (const published of [14.2, 20.4, 31, 18, 17])
      expect(published >= lowSeconds && published <= highSeconds, String(published)).toBe(true);
    expect(lessPercent).toBeGreaterThanOrEqual(10);
    expect(lessPercent).toBeLessThanOrEqual(30);
  });

  test("up to 1 s nothing is added (Kodak E-31), and longer is never shorter", () => {
    expect(longExposure(1, 1, null)).toMatchObject({ lowSeconds: 1, highSeconds: 1, lessPercent: 0 });
    let before = 0;
    for (let metered = 1; metered <= 600; metered += 1) {
      const { middleSeconds, lowSeconds, highSeconds } = longExposure(metered, 1, 1.31);
      expect(middleSeconds).toBeGreaterThan(before);
      expect(lowSeconds).toBeGreaterThanOrEqual(metered);
      expect(highSeconds).toBeGreaterThan(middleSeconds - 1e-9);
      before = middleSeconds;
    }
  });
});

describe("/plan exposure", () => {
  test("says the time first, then what to do to the development, and that sources differ", () => {
    const text = createRoom().says("Mina", "/plan exposure metered:10 s");
    expect(text).toMatch(/^\*\*\d+ s\*\* for 10 s metered: an estimate/);
    expect(text).toMatch(/develop about 10 % less[\s\S]*Sources differ, from 12 s to 31 s/);
  });

  test("takes a film's own exponent and a filter, the filter first (a teaching page, grade C)", () => {
    const room = createRoom();
    expect(room.says("Mina", "/plan exposure metered:10 s exponent:1.31")).toMatch(/^\*\*20 s\*\*/);
    expect(room.says("Mina", "/plan exposure metered:5 s filter:2 exponent:1.31")).toMatch(
      /^\*\*20 s\*\* for 10 s[\s\S]*filter first/,
    );
    expect(room.asks("Mina", "/plan exposure metered:20 min").kind).toBe("refused");
    expect(room.asks("Mina", "/plan exposure metered:5 min filter:8").code).toBe("ERR_OUTSIDE");
  });

  test("speaks German", () => {
    const room = createRoom();
    room.asks("Mina", "/mine language language:de");
    expect(room.says("Mina", "/plan exposure metered:10 s")).toMatch(
      /^\*\*\d+ s\*\* für gemessene 10 s: eine Schätzung[\s\S]*Entwickle etwa 10 % kürzer/,
    );
  });
});
