import { describe, expect, test } from "vitest";
import {
  byAperture,
  byArea,
  byDensity,
  byDistance,
  byDryDown,
  byEnlargement,
  byMeter,
  enlargementAt,
  factorOf,
  lensToPaperMm,
  onTimer,
  stopsBetween,
  timerCost,
} from "../../../commands/print/light.ts";
import { enlargementTo, parseSize } from "../../../commands/print/sizes.ts";
import { negativeMm } from "../../../commands/plan/frames.ts";

/* Published rows, each with its source; where a source slips, its slip is caught. */

const sizeOf = (name: string) => {
  const read = parseSize(name);
  if (!read.ok) throw new Error(name);
  return read.value;
};

describe("light from the lens to the paper", () => {
  // R. Rodman Smith's photographic dictionary, p. 372: 45 s at 12 in, then 24, 36 and 48 in.
  test.each([
    [24, 180],
    [48, 720],
  ])("45 s at 12 in are at %i in %i s", (inches, seconds) => {
    expect(45 * factorOf(byDistance(12, inches))).toBeCloseTo(seconds, 6);
  });
  test("the page has 395 s at 36 in: a slip, since three times as far is nine times as long, 405 s", () => {
    expect(45 * factorOf(byDistance(12, 36))).toBeCloseTo(405, 6);
    expect(stopsBetween(395, 405)).toBeGreaterThan(0.03);
  });
  test("a handbook (chestofbooks.com, Enlarging 2): 12 in to 20 in is 144 to 400", () => {
    expect(factorOf(byDistance(12, 20))).toBeCloseTo(400 / 144, 6);
  });
  test("lens to paper 10 to 15 in, 11 s: 24.75 s (a forum post that quotes a textbook)", () => {
    expect(11 * factorOf(byDistance(10, 15))).toBeCloseTo(24.75, 6);
  });
});

describe("enlargement", () => {
  // Clerc, Photography: Theory and Practice, section 770: diffuse light, fixed stop.
  test.each([
    [2, 9],
    [3, 16],
    [4, 25],
    [5, 36],
  ])("%i times wants %i", (times, share) => {
    expect(factorOf(byEnlargement(2, times))).toBeCloseTo(share / 9, 6);
  });
  test("4x5 in to 8x10, then to 16x20: 2.78 (a question page; 750 by 450 mm squared)", () => {
    const negative = negativeMm("4x5");
    const [small, large] = [
      enlargementTo(sizeOf("8x10"), negative),
      enlargementTo(sizeOf("16x20"), negative),
    ];
    expect(factorOf(byEnlargement(small, large))).toBeCloseTo((750 / 450) ** 2, 2);
  });
  test("4x5 in, 8x10 to 11x14, m from 2 to 2.8: 1.6 times, between 1/2 and 3/4 stop (a forum)", () => {
    expect(factorOf(byEnlargement(2, 2.8))).toBeCloseTo(1.6, 2);
    expect(byEnlargement(2, 2.8)).toBeGreaterThan(0.5);
    expect(byEnlargement(2, 2.8)).toBeLessThan(0.75);
  });
  test("a measured match: 21 s on 8x10 is 38 s, give or take 1, on 11x14 of the same 24x36 (a forum)", () => {
    const negative = negativeMm("24x36");
    const [small, large] = [
      enlargementTo(sizeOf("8x10"), negative),
      enlargementTo(sizeOf("11x14"), negative),
    ];
    const seconds = 21 * factorOf(byEnlargement(small, large));
    expect(Math.abs(seconds - 38)).toBeLessThan(1);
    // The rival rule of areas, by the long sides' share: 39.7 s, outside of what was measured.
    expect(21 * factorOf(byArea(8, 11))).toBeCloseTo(39.7, 1);
  });
  test("the rule of areas: 8x12 to 12x18, 8 s are 18 s, 1.2 stops (a question page)", () => {
    expect(8 * factorOf(byArea(8, 12))).toBeCloseTo(18, 6);
    expect(byArea(8, 12)).toBeCloseTo(1.17, 2);
  });
  test("the height of a thin lens and its enlargement agree, and nothing draws sharp below four focal lengths", () => {
    for (const times of [1.5, 2, 5, 10])
      expect(enlargementAt((50 * (times + 1) ** 2) / times, 50)).toBeCloseTo(times, 6);
    expect(enlargementAt(199, 50)).toBeUndefined();
    expect(lensToPaperMm(4, 50)).toBe(250);
  });
});

describe("what is measured", () => {
  test("Wellington handbook, p. 105: a meter on the paper from 15 to 12 s makes 40 s 32", () => {
    expect(40 * factorOf(byMeter(15, 12))).toBeCloseTo(32, 6);
  });
  test("a handbook (chestofbooks.com, Enlarging 2): actinometer 30 to 40 s makes 60 s 80", () => {
    expect(60 * factorOf(byMeter(30, 40))).toBeCloseTo(80, 6);
  });
  test("Clerc, section 511: 12 s under density 1.5 are 30 s under 1.9", () => {
    expect(12 * factorOf(byDensity(1.5, 1.9))).toBeCloseTo(30, 0);
  });
  test("dry-down of 8 to 12 % is 0.12 to 0.18 stop less (trials on grainmag.com; stops derived)", () => {
    expect(byDryDown(8)).toBeCloseTo(-0.12, 2);
    expect(byDryDown(12)).toBeCloseTo(-0.184, 2);
  });
});

describe("apertures", () => {
  // The series of f-numbers is rounded names of powers of the root of 2 (common practice).
  test.each([
    [8, 11, 1],
    [8, 4, -2],
    [8, 16, 2],
    [5.6, 22, 4],
    [2.8, 3.5, 2 / 3],
    [8, 9.5, 0.5],
  ])("f/%f to f/%f is %f stops", (from, to, stops) => {
    expect(byAperture(from, to)).toBeCloseTo(stops, 6);
  });
});

describe("third stops from ten minutes", () => {
  // A table in a forum (thread 1553308), down by 1/3 stop; two entries are cut off instead of rounded.
  const PUBLISHED = [476, 378, 300, 238, 188, 150, 118, 94, 75, 60];
  const SLIPS = [188, 118];
  test("are the published ones, but for two slips of a second", () => {
    const ours = PUBLISHED.map((_, at) => onTimer(600 * factorOf(-(at + 1) / 3), 10) / 10);
    const differ = PUBLISHED.filter((seconds, at) => ours[at] !== seconds);
    expect(differ).toEqual(SLIPS);
    expect(SLIPS.map((slip) => ours[PUBLISHED.indexOf(slip)])).toEqual([189, 119]);
  });
  test("1/3 stop more is 12:36", () => {
    expect(onTimer(600 * factorOf(1 / 3), 10)).toBe(7560);
  });
});

test("nothing is ever set to no time, and the cost of a timer's steps is told in stops", () => {
  expect(onTimer(0.2, 10)).toBe(10);
  expect(timerCost(12.6, onTimer(12.6, 10))).toBeCloseTo(stopsBetween(12.6, 13), 9);
  // A trial in a forum (thread 970724) tells 9 from 10 s: 0.15 stop is seen.
  expect(stopsBetween(9, 10)).toBeCloseTo(0.15, 2);
});
