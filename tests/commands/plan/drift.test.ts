import { createRequire } from "node:module";
import { describe, expect, test } from "vitest";
import { DEFAULT_HABITS } from "../../../store/shapes/usual-habits.ts";
import { dosePercent } from "../../../commands/plan/dose.ts";
import { calibrateTimeConstant } from "../../../commands/tank/measure/calibrate.ts";
import {
  coolingPath,
  defaultTimeConstantSeconds,
  doseBetween,
  secondsForDose,
} from "../../../commands/plan/drift.ts";
import { makePlan } from "../../../commands/plan/process.ts";
import { bareRequest } from "../../../commands/plan/request.ts";
import { makeCurve } from "../../../commands/sheet/curve.ts";
import { aSheet } from "../../support/make.ts";

/** odex: Hairer's general solver of differential equations; it knows nothing of ours. */
interface Odex {
  Solver: new (dimension: number) => {
    absoluteTolerance: number;
    relativeTolerance: number;
    solve(f: (t: number, y: number[]) => number[], t0: number, y0: number[], t1: number): { y: number[] };
  };
}
const odex = createRequire(import.meta.url)("odex") as Odex;

const sheet = aSheet({
  points: [
    { tenthsC: 180, exposureIndex: 400, seconds: 660, source: "invented" },
    { tenthsC: 200, exposureIndex: 400, seconds: 540, source: "invented" },
    { tenthsC: 240, exposureIndex: 400, seconds: 405, source: "invented" },
  ],
});

/** Solves dT/dt = -(T - room)/tau and dDose/dt = 1/t(T) together. */
function solve(
  secondsAt: (c: number) => number,
  startC: number,
  roomC: number,
  tau: number,
  seconds: number,
) {
  const solver = new odex.Solver(2);
  solver.absoluteTolerance = 1e-10;
  solver.relativeTolerance = 1e-10;
  const { y } = solver.solve(
    (_, [celsius = 0]) => [-(celsius - roomC) / tau, 1 / secondsAt(celsius)],
    0,
    [startC, 0],
    seconds,
  );
  return { celsius: y[0] ?? Number.NaN, dose: y[1] ?? Number.NaN };
}

describe("against a general solver of differential equations (odex)", () => {
  const secondsAt = (celsius: number): number => makeCurve(sheet).secondsAt(celsius, 400);
  const cases = [
    [24, 14, 1200],
    [20, 15, 3600],
    [26, 18, 900],
    [18, 30, 600],
    [20, 5, 300],
  ] as const;

  test.each(cases)(
    "from %d °C in a room of %d °C, tau %d s: cooling and dose agree to a millionth",
    (start, room, tau) => {
      for (const seconds of [30, 240, 540, 1800]) {
        const known = solve(secondsAt, start, room, tau, seconds);
        const path = coolingPath(start, room, tau);
        const dose = doseBetween(secondsAt, path, 0, seconds);
        expect(Math.abs(path(seconds) / known.celsius - 1)).toBeLessThan(1e-6);
        expect(Math.abs(dose / known.dose - 1)).toBeLessThan(1e-6);
      }
    },
  );

  test.each(cases)(
    "the time for the sheet's dose gives, solved independently, that dose (%d, %d, %d)",
    (start, room, tau) => {
      const seconds = secondsForDose(secondsAt, coolingPath(start, room, tau), 1);
      expect(Math.abs(solve(secondsAt, start, room, tau, seconds).dose - 1)).toBeLessThan(1e-6);
    },
  );
});

test("a line that jumps where the tank passes 15.2 °C is integrated to the moment it does so (closed form)", () => {
  const secondsAt = (celsius: number): number => (celsius < 15.2 ? 2949 : 15);
  const [room, tau] = [28, 3600];
  for (const start of [12.8, 14, 15.1]) {
    // Newton's law solved for the time at which 15.2 °C is reached; up to it the rate is 1/2949, after it 1/15.
    const crossing = tau * Math.log((room - start) / (room - 15.2));
    const exact = crossing / 2949 >= 1 ? 2949 : crossing + (1 - crossing / 2949) * 15;
    expect(secondsForDose(secondsAt, coolingPath(start, room, tau), 1)).toBeCloseTo(exact, 3);
    expect(doseBetween(secondsAt, coolingPath(start, room, tau), 0, exact)).toBeCloseTo(1, 6);
  }
});

test("hours in an ice-cold developer beside a hot room: a tenth of a degree more is never a second longer", () => {
  const secondsAt = (celsius: number): number => makeCurve(sheet).secondsAt(celsius, 400);
  const times = Array.from({ length: 50 }, (_, index) =>
    secondsForDose(secondsAt, coolingPath(5 + index / 10, 33.7, 60), 1),
  );
  expect(times).toEqual(times.toSorted((a, b) => b - a));
});

describe("the plan's allowance", () => {
  const at = (tenthsC: number, roomTenthsC: number | null) => {
    const made = makePlan({ ...bareRequest(sheet, tenthsC), roomTenthsC }, DEFAULT_HABITS);
    if (!made.ok) throw new Error(made.fault.code);
    return made.value;
  };

  test("a cold room lengthens the time, a warm one shortens it, an equal one leaves the sheet's", () => {
    expect(at(200, null).steps[0]?.seconds).toBe(540);
    expect(at(200, 200).steps[0]?.seconds).toBe(540);
    expect(at(200, 140).steps[0]?.seconds).toBeGreaterThan(545);
    expect(at(200, 280).steps[0]?.seconds).toBeLessThan(535);
  });

  test("a warning is given when the drift is worth 3 % of the time", () => {
    const codes = (roomTenthsC: number): string[] => at(240, roomTenthsC).cautions.map(({ code }) => code);
    expect(codes(100)).toContain("WARN_DRIFT");
    expect(codes(230)).not.toContain("WARN_DRIFT");
  });

  test("the tank's own measured constant is used before the default", () => {
    const tank = {
      number: 3,
      reels: 1,
      volumeMl: 300,
      format: "any" as const,
      condition: null,
      timeConstantSeconds: 600,
    };
    const made = makePlan({ ...bareRequest(sheet, 240), roomTenthsC: 140, tank }, DEFAULT_HABITS);
    expect(made.ok && made.value.drift).toEqual({ roomTenthsC: 140, timeConstantSeconds: 600 });
    expect(made.ok && (made.value.steps[0]?.seconds ?? 0)).toBeGreaterThan(
      at(240, 140).steps[0]?.seconds ?? 0,
    );
  });

  test("the default constant is an hour at 300 ml and grows with the cube root of the volume", () => {
    expect(defaultTimeConstantSeconds(300)).toBe(3600);
    expect(defaultTimeConstantSeconds(2400)).toBe(7200);
  });
});

describe("the dose really given", () => {
  const made = makePlan(bareRequest(sheet, 200), DEFAULT_HABITS);
  if (!made.ok) throw new Error(made.fault.code);
  const plan = made.value;

  test("is 100 % as planned, and follows the pour-out time", () => {
    expect(dosePercent(plan, 540)).toEqual({ ok: true, value: 100 });
    expect(dosePercent(plan, 475)).toEqual({ ok: true, value: 88 });
    expect(dosePercent(plan, 594)).toEqual({ ok: true, value: 110 });
  });

  test("is more when a thermometer read 24 °C all along: 540 s at 405 s is 133 %", () => {
    const hot = dosePercent(plan, 540, [
      { atSeconds: 0, tenthsC: 240 },
      { atSeconds: 540, tenthsC: 240 },
    ]);
    expect(hot).toEqual({ ok: true, value: 133.3 });
  });

  test("a steady fall from 20 to 18 °C lies between the two", () => {
    const fallen = dosePercent(plan, 540, [{ atSeconds: 540, tenthsC: 180 }]);
    expect(fallen.ok && fallen.value).toBeGreaterThan((100 * 540) / 660);
    expect(fallen.ok && fallen.value).toBeLessThan(100);
  });
});

describe("a tank's constant from two readings", () => {
  test("is the one the readings were made with", () => {
    const path = coolingPath(26, 16, 1800);
    expect(calibrateTimeConstant(260, Math.round(path(600) * 10), 160, 600)).toBeGreaterThan(1750);
    expect(calibrateTimeConstant(260, Math.round(path(600) * 10), 160, 600)).toBeLessThan(1850);
  });

  test("is refused where the readings can't tell it", () => {
    expect(calibrateTimeConstant(205, 202, 200, 600)).toBe("ERR_TOO_NEAR_ROOM");
    expect(calibrateTimeConstant(240, 240, 200, 600)).toBe("ERR_NO_CHANGE");
    expect(calibrateTimeConstant(240, 250, 200, 600)).toBe("ERR_WRONG_WAY");
    expect(calibrateTimeConstant(240, 190, 200, 600)).toBe("ERR_TOO_NEAR_ROOM");
  });
});
