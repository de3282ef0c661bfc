import { describe, expect, test } from "vitest";
import {
  effectiveIndex,
  ISO_AIM,
  measure,
  timeForGradient,
} from "../../../../commands/sheet/tablet/gradient.ts";
import { readStrips } from "../../../../commands/sheet/tablet/readings.ts";

/** Published density series of a 100 film in 35 mm, one stop a step, net of fog (nhchau.com/bk/2008/07/12, grade C). */
const SERIES = [0.02, 0.11, 0.21, 0.34, 0.48, 0.62, 0.76, 0.97, 1.18, 1.33, 1.44];
const STOP = 0.301;

describe("readings as people write them", () => {
  test("a time and the densities, with points or commas, in either order", () => {
    const read = readStrips("8:00: 0,02 .11 0.21 0.34 .48 .62\n5 min: 1.2 1.0 0.8 0.6 0.4 0.2");
    expect(read).toEqual({
      ok: true,
      value: [
        { seconds: 300, densities: [0.2, 0.4, 0.6, 0.8, 1, 1.2] },
        { seconds: 480, densities: [0.02, 0.11, 0.21, 0.34, 0.48, 0.62] },
      ],
    });
  });

  test("without a densitometer: matched at 10 s and 13 s is log10(1.3) = 0.11 (zone2tone.co.uk, grade C)", () => {
    const read = readStrips("8:00 10/10 13/10 16/10 20/10 25/10 32/10");
    expect(read.ok && read.value[0]?.densities[1]).toBeCloseTo(0.11, 2);
    // A filter of 0.3 doubles the time (the same page).
    expect(read.ok && read.value[0]?.densities[3]).toBeCloseTo(0.3, 2);
  });

  test("what can't be read is named", () => {
    expect(readStrips("0.1 0.2 0.3")).toMatchObject({ fault: { code: "ERR_NO_STRIP_TIME" } });
    expect(readStrips("8:00 0.1 dark 0.3 0.4 0.5 0.6")).toMatchObject({
      fault: { code: "ERR_NO_DENSITY", typed: "dark" },
    });
    expect(readStrips("8:00 0.1 0.2")).toMatchObject({ fault: { code: "ERR_FEW_STEPS", count: 2 } });
    expect(readStrips("8:00 10/0 .2 .3 .4 .5 .6")).toMatchObject({ fault: { code: "ERR_NO_DENSITY" } });
  });
});

describe("the published series", () => {
  const measured = measure({ seconds: 480, densities: SERIES }, STOP, 0);

  test("has its speed point 0.11 stop below zone I, and 0.428 by 1.50 log H from there (derived)", () => {
    expect(((measured.speedLog ?? 0) - STOP) / STOP).toBeCloseTo(-0.11, 2);
    expect(measured.mean).toBeCloseTo(0.428, 2);
  });

  test("rises 0.55 in 1.30, so it is not developed to ISO 6's 0.80 (derived)", () => {
    expect((measured.triangle ?? 0) * 1.3).toBeCloseTo(0.55, 1);
    expect(ISO_AIM).toBeCloseTo(0.615, 3);
  });

  test("has a kink at zone VI, which is warned of and not smoothed away", () => {
    expect(measured.kinks).toEqual([7]);
    const straight = SERIES.map((_, at) => 0.02 + at * 0.14);
    expect(measure({ seconds: 480, densities: straight }, STOP, 0).kinks).toEqual([]);
  });
});

describe("a straight line", () => {
  const line = (slope: number): number[] =>
    Array.from({ length: 21 }, (_, at) => 0.2 + Math.max(0, at - 2) * 0.15 * slope);

  test("has the same gradient by every construction: its slope (exact)", () => {
    for (const slope of [0.5, 0.62, 0.8]) {
      const { triangle, mean, gamma, index } = measure({ seconds: 480, densities: line(slope) }, 0.15, null);
      expect(triangle).toBeCloseTo(slope, 6);
      expect(mean).toBeCloseTo(slope, 6);
      expect(gamma).toBeCloseTo(slope, 6);
      expect(index).toBeCloseTo(slope, 2);
    }
  });

  test("0.80 in 1.30 is ISO 6's condition, 0.615", () => {
    const { triangle } = measure({ seconds: 480, densities: line(ISO_AIM) }, 0.15, null);
    expect((triangle ?? 0) * 1.3).toBeCloseTo(0.8, 6);
  });
});

describe("a toed curve", () => {
  test("gives the constructions different numbers: they are not the same (0.62 against 0.75 on one published curve)", () => {
    const densities = Array.from(
      { length: 21 },
      (_, at) => 0.1 + (0.9 * Math.log1p(Math.exp((at * 0.15 - 1) * 3))) / 3,
    );
    const { triangle, mean, index, gamma } = measure({ seconds: 480, densities }, 0.15, 0.1);
    expect(new Set([triangle, mean, index, gamma].map((each) => each?.toFixed(3))).size).toBe(4);
    expect(gamma).toBeGreaterThan(triangle ?? 1);
  });
});

describe("a time for a wanted gradient", () => {
  const strips = [240, 480, 960].map((seconds, at) =>
    measure(
      { seconds, densities: Array.from({ length: 21 }, (_, step) => 0.1 + step * 0.15 * (0.45 + at * 0.15)) },
      0.15,
      0.1,
    ),
  );

  test("lies between the times tried, straight in log time; at one of them it is that time", () => {
    expect(timeForGradient(strips, 0.6)?.seconds).toBeCloseTo(480, 3);
    expect(timeForGradient(strips, 0.525)?.seconds).toBeCloseTo(Math.sqrt(240 * 480), 3);
  });

  test("is not guessed past them, and its spread is the readings' own scatter", () => {
    expect(timeForGradient(strips, 0.9)).toBeNull();
    const sure = timeForGradient(strips, 0.55);
    expect((sure?.highSeconds ?? 0) - (sure?.lowSeconds ?? 0)).toBeLessThan(1);
    const noisy = strips.map((each) => ({ ...each, scatter: 0.02 }));
    const open = timeForGradient(noisy, 0.55);
    expect((open?.highSeconds ?? 0) - (open?.lowSeconds ?? 0)).toBeGreaterThan(20);
  });
});

describe("the effective exposure index", () => {
  test("EI 125: speed point 0.0064 lx s, metered 0.064 (apug.org 1497075, grade C); S = 0.8 / Hm", () => {
    expect(0.8 / 125).toBeCloseTo(0.0064, 5);
    expect(8 / 125).toBeCloseTo(0.064, 4);
    // The speed point ten times below the metered step: the index is the one that was set.
    expect(effectiveIndex(1, 0.1, 21, 125)).toBeCloseTo(125, 6);
    // One stop more needed: half.
    expect(effectiveIndex(1 + Math.log10(2), 0.1, 21, 125)).toBeCloseTo(62.5, 6);
  });

  test("a published slip is caught: 2.048 lx s through D 2.70 is 0.00409, speed 196; the page multiplies by 2.70 (photrio, grade C)", () => {
    expect(2.048 * 10 ** -2.7).toBeCloseTo(0.00409, 5);
    expect(0.8 / (2.048 * 10 ** -2.7)).toBeCloseTo(196, 0);
    expect(2.7 * 10 ** -2.7).not.toBeCloseTo(0.0041, 4);
  });
});
