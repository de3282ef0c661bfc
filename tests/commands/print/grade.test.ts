import { describe, expect, test } from "vitest";
import { byGrade, filterLight, harderBy, OWN_LIGHT_FACTOR } from "../../../commands/print/grade.ts";
import { factorOf, stopsOf } from "../../../commands/print/light.ts";
import { aPaper } from "../../support/print.ts";

describe("filters beside each other", () => {
  test("a shop's text on a maker's filters: 00 to 3 1/2 one time, 4 to 5 double", () => {
    for (const grade of [-10, 0, 5, 20, 35]) expect(factorOf(filterLight(grade, null, null).stops)).toBe(1);
    for (const grade of [40, 45, 50]) expect(factorOf(filterLight(grade, null, null).stops)).toBe(2);
  });

  test("a printer's own light (a forum, thread 161641): 2 to 1 1/2 wants 1.22 times, back 0.82; the rule has 1", () => {
    const paper = aPaper({
      filters: [
        { gradeTenths: 15, enlarger: null, milliStops: Math.round(1000 * stopsOf(OWN_LIGHT_FACTOR)) },
      ],
    });
    expect(factorOf(byGrade(20, 15, paper, null).stops)).toBeCloseTo(1.22, 2);
    expect(factorOf(byGrade(15, 20, paper, null).stops)).toBeCloseTo(0.82, 2);
    expect(byGrade(20, 15, paper, null).basis).toBe("measured");
    expect(byGrade(20, 15, null, null)).toEqual({ stops: 0, basis: "rule" });
  });

  test("what was measured with this enlarger goes before what was measured with any, and half a measurement does not count", () => {
    const paper = aPaper({
      filters: [
        { gradeTenths: 30, enlarger: null, milliStops: 300 },
        { gradeTenths: 30, enlarger: 2, milliStops: 500 },
      ],
    });
    expect(byGrade(20, 30, paper, 2)).toEqual({ stops: 0.5, basis: "measured" });
    expect(byGrade(20, 30, paper, 1)).toEqual({ stops: 0.3, basis: "measured" });
    expect(byGrade(30, 40, paper, 1)).toEqual({ stops: 1, basis: "rule" });
  });

  test("half a grade harder stays within the grades there are", () => {
    expect(harderBy(20, 5)).toBe(25);
    expect(harderBy(50, 5)).toBe(50);
    expect(harderBy(0, -5)).toBe(-5);
  });
});
