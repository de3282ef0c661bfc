import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Bar,
  barsOf,
  exposuresOf,
  moveBy,
  readBar,
  series,
  spanOf,
} from "../../../commands/print/bars.ts";
import { stopsBetween } from "../../../commands/print/light.ts";
import type { Strip, StripStep } from "../../../store/shapes/print.ts";

const made = (strip: Pick<Strip, "baseTenths" | "step" | "bars" | "timerTenths">): Bar[] => {
  const bars = barsOf(strip);
  if (!bars.ok) throw new Error(bars.fault.code);
  return bars.value;
};
const stops = (twelfths: number): StripStep => ({ kind: "stops", twelfths });
const seconds = (tenths: number): StripStep => ({ kind: "seconds", tenths });
const totals = (bars: readonly Bar[]) => bars.map(({ totalTenths }) => totalTenths / 10);

describe("published strips", () => {
  test("US Navy NAVEDTRA 14209, p. 297: 4 bands of 5 s", () => {
    expect(totals(made({ baseTenths: 50, step: seconds(50), bars: 4, timerTenths: 10 }))).toEqual([
      5, 10, 15, 20,
    ]);
  });
  test("US Army SS0509, p. 52: 5 bands of 2 s", () => {
    expect(totals(made({ baseTenths: 20, step: seconds(20), bars: 5, timerTenths: 10 }))).toEqual([
      2, 4, 6, 8, 10,
    ]);
  });
  test("US Army SS0509-8, p. 54, and a page that quotes a maker: begin at 2 s and double; all pale or dark moves 2 stops", () => {
    const bars = made({ baseTenths: 20, step: stops(12), bars: 5, timerTenths: 10 });
    expect(totals(bars)).toEqual([2, 4, 8, 16, 32]);
    expect(moveBy(bars)).toBe(2);
  });
  test("a printer's page: half stops 5.6, 8, 11, 16, 22, 32 s, which are rounded names; ours lie within 0.04 stop", () => {
    const named = [5.6, 8, 11, 16, 22, 32];
    series(5.6, stops(6), 6).forEach((each, at) =>
      expect(Math.abs(stopsBetween(named[at] ?? 0, each))).toBeLessThan(0.04),
    );
  });
  test("the same page: equal seconds mislead, 5 to 10 s is a stop and 25 to 30 s about 1/4", () => {
    const bars = made({ baseTenths: 50, step: seconds(50), bars: 6, timerTenths: 10 });
    expect(stopsBetween(bars[0]?.totalTenths ?? 0, bars[1]?.totalTenths ?? 0)).toBe(1);
    expect(stopsBetween(bars[4]?.totalTenths ?? 0, bars[5]?.totalTenths ?? 0)).toBeCloseTo(0.263, 3);
  });
});

// Derived by hand from 8 s times powers of 2: totals, then what is added for each bar.
test.each([
  [6, [8, 11.31, 16, 22.63, 32], [8, 3.31, 4.69, 6.63, 9.37]],
  [4, [8, 10.08, 12.7, 16, 20.16, 25.4, 32], [8, 2.08, 2.62, 3.3, 4.16, 5.24, 6.6]],
  [3, [8, 9.51, 11.31, 13.45, 16], [8, 1.51, 1.8, 2.14, 2.55]],
  [2, [8, 8.98, 10.08, 11.31, 12.7, 14.25, 16], [8, 0.98, 1.1, 1.23, 1.39, 1.56, 1.75]],
])("%i twelfths of a stop from 8 s", (twelfths, wanted, added) => {
  const exact = series(8, stops(twelfths), wanted.length);
  exact.forEach((each, at) => expect(each).toBeCloseTo(wanted[at] ?? 0, 1.9));
  exact.forEach((each, at) =>
    expect(each - (at === 0 ? 0 : (exact[at - 1] ?? 0))).toBeCloseTo(added[at] ?? 0, 1.9),
  );
});

test("what is added sums to what a bar has, and no total is off by more than half the timer's step", () => {
  fc.assert(
    fc.property(
      fc.record({
        baseTenths: fc.integer({ min: 1, max: 600 }),
        step: fc.oneof(
          fc.integer({ min: 1, max: 12 }).map(stops),
          fc.integer({ min: 1, max: 100 }).map(seconds),
        ),
        bars: fc.integer({ min: 2, max: 12 }),
        timerTenths: fc.constantFrom(1, 2, 5, 10),
      }),
      (strip) => {
        const bars = barsOf(strip);
        if (!bars.ok) return;
        const exact = series(strip.baseTenths / 10, strip.step, strip.bars);
        let sum = 0;
        bars.value.forEach(({ addTenths, totalTenths }, at) => {
          sum += addTenths;
          expect(totalTenths).toBe(sum);
          expect(totalTenths % strip.timerTenths).toBe(0);
          expect(addTenths).toBeGreaterThan(0);
          if ((exact[at] ?? 0) * 10 >= strip.timerTenths)
            expect(Math.abs(totalTenths - (exact[at] ?? 0) * 10)).toBeLessThanOrEqual(
              strip.timerTenths / 2 + 1e-9,
            );
        });
        for (const way of ["cover", "uncover"] as const) {
          const given = new Map<number, number>();
          for (const { tenths, fromBar, toBar } of exposuresOf(bars.value, way))
            for (let bar = fromBar; bar <= toBar; bar += 1) given.set(bar, (given.get(bar) ?? 0) + tenths);
          expect(bars.value.map(({ number }) => given.get(number))).toEqual(
            bars.value.map((bar) => bar.totalTenths),
          );
        }
      },
    ),
  );
});

test("uncovering begins with the darkest bar and ends with the base time", () => {
  const bars = made({ baseTenths: 80, step: stops(6), bars: 3, timerTenths: 1 });
  expect(exposuresOf(bars, "uncover").map(({ tenths, fromBar }) => [tenths, fromBar])).toEqual([
    [47, 3],
    [33, 2],
    [80, 1],
  ]);
});

test("a timer too coarse for the step is a fault, with the bar it fails at", () => {
  expect(barsOf({ baseTenths: 80, step: stops(1), bars: 5, timerTenths: 10 })).toEqual({
    ok: false,
    fault: { code: "ERR_STRIP_FINE", bar: 2 },
  });
});

test("a bar is read as what it got, and between two bars half-way in stops", () => {
  const bars = made({ baseTenths: 80, step: stops(12), bars: 3, timerTenths: 1 });
  expect(readBar(bars, { bar: 2, isBetween: false })).toBe(16);
  expect(readBar(bars, { bar: 1, isBetween: true })).toBeCloseTo(11.31, 2);
  expect(readBar(bars, { bar: 3, isBetween: true })).toBeUndefined();
  expect(readBar(bars, { bar: 4, isBetween: false })).toBeUndefined();
  expect(spanOf(bars)).toBe(2);
});
