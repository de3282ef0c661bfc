import { describe, expect, test } from "vitest";
import { exposureRange, temperatureRange, timeFor } from "../../../commands/sheet/time.ts";
import { makeCurve } from "../../../commands/sheet/curve.ts";
import type { Point } from "../../../store/shapes/sheet.ts";
import { aSheet } from "../../support/make.ts";

const point = (tenthsC: number, exposureIndex: number, seconds: number): Point => ({
  tenthsC,
  exposureIndex,
  seconds,
  source: `row ${tenthsC}/${exposureIndex}`,
});

function at(points: Point[], tenthsC: number, exposureIndex: number, over = {}) {
  const time = timeFor(aSheet({ points, ...over }), tenthsC, exposureIndex);
  if (!time.ok) throw new Error(time.fault.code);
  return time.value;
}

describe("the time model", () => {
  test("is linear in ln t over 1/T between two rows", () => {
    const curve = makeCurve(aSheet({ points: [point(180, 400, 660), point(240, 400, 405)] }));
    const inverse = (celsius: number): number => 1 / (celsius + 273.15);
    const share = (inverse(21) - inverse(18)) / (inverse(24) - inverse(18));
    expect(curve.secondsAt(21, 400)).toBeCloseTo(660 * (405 / 660) ** share, 6);
  });

  test("is linear in ln t over stops between two exposure indexes: half a stop is the geometric mean of half way", () => {
    expect(at([point(200, 400, 540), point(200, 1600, 1080)], 200, 800).seconds).toBeCloseTo(
      540 * Math.SQRT2,
      6,
    );
  });

  test("a factor of 2.1 per 10 °C is what it says from 15 to 25 °C, centred on the usual 20 °C", () => {
    const curve = makeCurve(aSheet({ points: [point(200, 400, 540)] }));
    expect(curve.secondsAt(15, 400) / curve.secondsAt(25, 400)).toBeCloseTo(2.1, 6);
  });

  // Makers' film-processing chart, worked example, from memory: 4 min at 20 °C is 3 min at 23 °C and 6 min at 16 °C.
  test("with that chart's outer two, the middle of its worked example comes out within half a minute", () => {
    expect(Math.abs(at([point(160, 400, 360), point(230, 400, 180)], 200, 400).seconds - 240)).toBeLessThan(
      30,
    );
  });

  test("a row of one temperature beside a full one takes the full one's shape beyond, and never crosses it", () => {
    const points = [point(180, 400, 660), point(200, 400, 540), point(240, 400, 405), point(200, 800, 560)];
    expect(at(points, 240, 800).seconds).toBeGreaterThanOrEqual(405);
    expect(at(points, 180, 800).seconds).toBeGreaterThanOrEqual(660);
    expect(at(points, 240, 800).basis[0]?.kind).toBe("beyond");
  });
});

describe("what a time rests on", () => {
  const two = [point(180, 400, 660), point(240, 400, 405)];

  test("a row, between rows, beyond them, one row, a rule of thumb: each says so", () => {
    expect(at(two, 180, 400).basis).toEqual([{ kind: "point", source: "row 180/400" }]);
    expect(at(two, 200, 400).basis).toEqual([{ kind: "between", sources: ["row 180/400", "row 240/400"] }]);
    expect(at(two, 260, 400).basis[0]?.kind).toBe("beyond");
    expect(at([point(200, 400, 540)], 220, 400).basis[0]).toMatchObject({
      kind: "one-point",
      factorPer10C: 2.1,
    });
    expect(at(two, 180, 800).basis.map(({ kind }) => kind)).toEqual(["point", "rule-of-thumb"]);
  });

  test("one row alone gives a spread around its time, and a stated factor a narrower one", () => {
    const alone = at([point(200, 400, 540)], 230, 400);
    expect(alone.lowSeconds).toBeLessThan(alone.seconds);
    expect(alone.highSeconds).toBeGreaterThan(alone.seconds);
    const stated = at([point(200, 400, 540)], 230, 400, { factorPer10C: 2.5 });
    expect(stated.highSeconds - stated.lowSeconds).toBeLessThan(alone.highSeconds - alone.lowSeconds);
    expect(stated.seconds).toBeLessThan(alone.seconds);
  });

  test("a row has no spread", () => {
    const exact = at(two, 180, 400);
    expect([exact.lowSeconds, exact.highSeconds]).toEqual([660, 660]);
  });
});

describe("the range", () => {
  test("is the sheet's own where it states one, and what lies beyond is refused with the nearest", () => {
    const sheet = aSheet({ minTenthsC: 180, maxTenthsC: 240 });
    expect(timeFor(sheet, 179, 400)).toEqual({
      ok: false,
      fault: { code: "ERR_TOO_COLD", tenthsC: 179, nearestTenthsC: 180 },
    });
    expect(timeFor(sheet, 990, 400)).toMatchObject({ fault: { code: "ERR_TOO_HOT", nearestTenthsC: 240 } });
    expect(timeFor(sheet, 240, 400).ok).toBe(true);
  });

  test("is the house's own otherwise, widened by the sheet's rows", () => {
    expect(temperatureRange(aSheet())).toEqual({ min: 160, max: 267 });
    expect(temperatureRange(aSheet({ points: [point(300, 400, 240)] }))).toEqual({ min: 160, max: 300 });
  });

  test("of exposure indexes is two stops down and three up, or the rows where they go further", () => {
    expect(exposureRange(aSheet())).toEqual({ min: 100, max: 3200 });
    expect(timeFor(aSheet(), 200, 6400)).toMatchObject({
      fault: { code: "ERR_PUSHED_TOO_FAR", nearest: 3200 },
    });
    expect(timeFor(aSheet(), 200, 50)).toMatchObject({ fault: { code: "ERR_PULLED_TOO_FAR", nearest: 100 } });
    expect(exposureRange(aSheet({ points: [point(200, 12_800, 1200)] })).max).toBe(12_800);
  });
});
