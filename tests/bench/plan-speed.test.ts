import { performance } from "node:perf_hooks";
import { expect, test } from "vitest";
import { DEFAULT_HABITS } from "../../store/shapes/usual-habits.ts";
import { makePlan } from "../../commands/plan/process.ts";
import { bareRequest } from "../../commands/plan/request.ts";
import { aSheet } from "../support/make.ts";

test("a plan, drift and all, is worked out in under 1 ms at the median", () => {
  const sheet = aSheet({
    points: [180, 200, 220, 240].map((tenthsC) => ({
      tenthsC,
      exposureIndex: 400,
      seconds: 1800 - tenthsC * 5,
      source: "invented",
    })),
  });
  const times: number[] = [];
  for (let run = 0; run < 2_000; run += 1) {
    const startedAt = performance.now();
    makePlan({ ...bareRequest(sheet, 190 + (run % 40)), roomTenthsC: 150 }, DEFAULT_HABITS);
    times.push(performance.now() - startedAt);
  }
  times.sort((a, b) => a - b);
  const median = times[times.length / 2] ?? Number.NaN;
  console.log(`median ${(median * 1000).toFixed(0)} µs a plan`);
  expect(median).toBeLessThan(1);
});
