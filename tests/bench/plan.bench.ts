import { bench, describe } from "vitest";
import { DEFAULT_HABITS } from "../../store/shapes/usual-habits.ts";
import { makePlan } from "../../commands/plan/process.ts";
import { bareRequest } from "../../commands/plan/request.ts";
import { aSheet } from "../support/make.ts";

/* How long one plan takes; the goal is under 1 ms at the median. The floor is the least there is: copying a plan as JSON. */

const row = (tenthsC: number, exposureIndex: number, seconds: number) => ({
  tenthsC,
  exposureIndex,
  seconds,
  source: "invented",
});
const sheet = aSheet({
  points: [
    row(180, 400, 660),
    row(200, 400, 540),
    row(220, 400, 460),
    row(240, 400, 405),
    row(200, 800, 690),
    row(240, 800, 520),
    row(200, 1600, 930),
  ],
});
const plain = { ...bareRequest(sheet, 213), exposureIndex: 500 };
const drifting = { ...plain, roomTenthsC: 150 };
const made = makePlan(plain, DEFAULT_HABITS);

describe("one plan", () => {
  bench("floor: the same plan through JSON", () => {
    JSON.parse(JSON.stringify(made));
  });
  bench("between points, no drift", () => {
    makePlan(plain, DEFAULT_HABITS);
  });
  bench("between points, drifting to a cold room", () => {
    makePlan(drifting, DEFAULT_HABITS);
  });
});
