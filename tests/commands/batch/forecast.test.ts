import { describe, expect, test } from "vitest";
import { chiSquare, forecastOf, paceOf, type Use } from "../../../commands/batch/forecast.ts";
import { stateOf } from "../../../commands/batch/state.ts";
import { aBatch, DAY_MS, ledger, mixed, used } from "../../support/batch.ts";
import { START } from "../../support/make.ts";

const WEEK_MS = 7 * DAY_MS;

/** So many rolls in each week, the newest week first, all in its middle. */
function weeks(...rolls: readonly number[]): Use[] {
  const uses = rolls.flatMap((count, index) =>
    Array.from({ length: count }, () => ({ atMs: START - (index + 0.5) * WEEK_MS, areaSqIn: 80 })),
  );
  return [...uses, { atMs: START - rolls.length * WEEK_MS, areaSqIn: 0 }];
}

test.each([
  // 10 % and 90 % points of the chi-square law, as any printed table has them (from memory: 4, 10, 20, 50 degrees).
  [4, 1.064, 7.779],
  [10, 4.865, 15.987],
  [20, 12.443, 28.412],
  [50, 37.689, 63.167],
])(
  "chi-square with %i degrees: 10 %% below %f, 90 %% below %f, to one in a hundred",
  (degrees, low, high) => {
    expect(Math.abs(chiSquare(degrees, -1.2816) / low - 1)).toBeLessThan(0.02);
    expect(Math.abs(chiSquare(degrees, 1.2816) / high - 1)).toBeLessThan(0.01);
  },
);

describe("pace", () => {
  test("is the mean of the whole weeks known", () => {
    expect(paceOf(weeks(6, 8, 7, 7), START)).toMatchObject({ rollsPerWeek: 7, weeks: 4 });
  });

  test("looks back eight weeks at most", () => {
    expect(paceOf(weeks(5, 5, 5, 5, 5, 5, 5, 5, 90, 90), START)).toMatchObject({ rollsPerWeek: 5, weeks: 8 });
  });

  test("is not told from less than two weeks, nor from nothing", () => {
    expect(paceOf(weeks(9), START)).toBeNull();
    expect(paceOf([], START)).toBeNull();
    expect(paceOf(weeks(0, 0, 0), START)).toBeNull();
  });

  test("is less sure the more the weeks differ", () => {
    const even = paceOf(weeks(7, 7, 7, 7), START);
    const lumpy = paceOf(weeks(14, 0, 14, 0), START);
    expect(even?.rollsPerWeek).toBe(lumpy?.rollsPerWeek);
    expect((lumpy?.high ?? 0) - (lumpy?.low ?? 0)).toBeGreaterThan((even?.high ?? 0) - (even?.low ?? 0));
  });

  test("its range holds the true pace about eight times in ten (2,000 invented terms, fixed seed)", () => {
    const random = createRandom(20_260_115);
    let held = 0;
    for (let term = 0; term < 2000; term += 1) {
      const pace = paceOf(weeks(...Array.from({ length: 8 }, () => poisson(6, random))), START);
      if (pace && pace.low <= 6 && 6 <= pace.high) held += 1;
    }
    expect(held / 2000).toBeGreaterThan(0.76);
    expect(held / 2000).toBeLessThan(0.93);
  });
});

describe("forecast", () => {
  const state = (rolls: number) => stateOf(aBatch(), ledger(mixed(1000, 45), used(rolls)), START);
  const pace = { rollsPerWeek: 5, low: 4, high: 8, weeks: 8 };

  test("ten rolls at five a week last two weeks, between nine and eighteen days", () => {
    expect(forecastOf(state(10), pace, START)).toEqual({
      endsAtMs: START + 2 * WEEK_MS,
      ends: "used-up",
      usedUpAtMs: START + 2 * WEEK_MS,
      earliestMs: START + 1.25 * WEEK_MS,
      latestMs: START + 2.5 * WEEK_MS,
    });
  });

  test("the date on the bottle ends it where that comes first", () => {
    const slow = { ...pace, rollsPerWeek: 1 };
    expect(forecastOf(state(10), slow, START)).toMatchObject({
      ends: "out-of-date",
      endsAtMs: START + 60 * DAY_MS,
    });
  });

  test("without a pace only the date is known", () => {
    expect(forecastOf(state(10), null, START)).toMatchObject({ ends: "out-of-date", usedUpAtMs: null });
  });
});

/** mulberry32 */
function createRandom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Knuth's product of uniform numbers. */
function poisson(mean: number, random: () => number): number {
  const limit = Math.exp(-mean);
  let count = 0;
  for (let product = random(); product > limit; product *= random()) count += 1;
  return count;
}
