import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { carriedMl } from "../../../commands/batch/carry.ts";
import { placeIn, rotated, withPair } from "../../../commands/batch/pairs.ts";
import { stateOf } from "../../../commands/batch/state.ts";
import { leastVolumeMl, splitVolume, strengthOff } from "../../../commands/plan/volume.ts";
import { hypoLeftByChanges } from "../../../commands/plan/wash.ts";
import { measurableMl } from "../../../commands/speech/tenths.ts";
import { parseCarry } from "../../../commands/class/baths/carry.ts";
import type { Carry, LineBody } from "../../../store/shapes/ledger.ts";
import { aBatch, aDeveloper, HOUR_MS, ledger, mixed, topped, used } from "../../support/batch.ts";
import { START } from "../../support/make.ts";

const NOW = START + HOUR_MS;
const carry = (over: Partial<Carry> = {}): Carry => ({
  inMl: 20,
  outMl: 20,
  inStrength: 0,
  loadSqIn: 0,
  ...over,
});
const fixer = (...bodies: LineBody[]) => stateOf(aBatch(), ledger(mixed(1000, 45), ...bodies), NOW);
const times = (count: number, body: LineBody): LineBody[] => Array.from({ length: count }, () => body);

describe("what film carries over", () => {
  // R. Suzuki on replenishing: about 20 ml for 80 sq in, about what is carried over and lost.
  test("goes by the film's area", () => {
    expect(carriedMl(20, 80)).toBe(20);
    expect(carriedMl(20, 160)).toBe(40);
    // A sheet of 4x5 in is 20 sq in.
    expect(carriedMl(20, 20)).toBe(5);
  });

  test("is written for a roll or for an area; 80 sq in are 516 cm2", () => {
    expect(parseCarry("20 ml")).toBe(20);
    expect(parseCarry("0,04 ml/cm2")).toBe(20.6);
    expect(parseCarry("400 ml/m²")).toBe(20.6);
    expect(parseCarry("17.5 ml je Film")).toBe(17.5);
    expect(parseCarry("a little")).toBeUndefined();
  });

  // Published arithmetic of a wash turned round: a bath of V that takes in v keeps V / (V + v) of its strength each time.
  test("water brought in thins a bath and leaves its volume", () => {
    const once = fixer(used(1, { carry: carry() }));
    expect(once.volumeMl).toBe(1000);
    expect(once.strength).toBeCloseTo(1000 / 1020, 10);
    const ten = fixer(...times(10, used(1, { carry: carry() })));
    expect(ten.volumeMl).toBe(1000);
    expect(ten.strength).toBeCloseTo((1000 / 1020) ** 10, 10);
    expect(ten).toMatchObject({ carriedInMl: 200, carriedOutMl: 200 });
  });

  test("dry film brings nothing and takes some of the first bath away, whose strength stays", () => {
    const developer = aDeveloper({ usage: "again", volumeMl: 1000, bottleMl: 1000 });
    const state = stateOf(
      developer,
      ledger(mixed(1000), ...times(3, used(1, { carry: carry({ inMl: 0 }) }))),
      NOW,
    );
    expect(state).toMatchObject({ volumeMl: 940, strength: 1, carriedOutMl: 60 });
  });

  test("a thinned fixer takes less film: of 20 rolls in a litre not all fit, and the forecast knows it before", () => {
    const rolls = (count: number) => fixer(...times(count, used(1, { carry: carry() })));
    const first = rolls(1);
    const done = (first.leftRolls ?? 0) + 1;
    expect(done).toBeLessThan(20);
    expect(rolls(done - 1).standing).toBe("ready");
    expect(rolls(done)).toMatchObject({ standing: "exhausted", exhaustedBy: "capacity" });
  });

  test("before the first film the forecast goes by what the class states", () => {
    const fresh = (carryMlPerRoll: number | null) =>
      stateOf(aBatch({ carryMlPerRoll }), ledger(mixed(1000, 45)), NOW).leftRolls;
    expect(fresh(null)).toBe(20);
    expect(fresh(20)).toBe((fixer(used(1, { carry: carry() })).leftRolls ?? 0) + 1);
  });

  test("what was not stated is not reckoned", () => {
    expect(fixer(...times(10, used(1)))).toMatchObject({ strength: 1, leftRolls: 10, carriedInMl: 0 });
  });

  test("never makes a bath stronger than it was mixed, nor its load negative", () => {
    const line = fc.record({
      inMl: fc.integer({ min: 0, max: 500 }).map((tenths) => tenths / 10),
      outMl: fc.integer({ min: 0, max: 500 }).map((tenths) => tenths / 10),
      inStrength: fc.double({ min: 0, max: 1, noNaN: true }),
      loadSqIn: fc.double({ min: 0, max: 50, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(line, { maxLength: 30 }), (lines) => {
        const state = fixer(...lines.map((each) => used(1, { carry: each })));
        expect(state.strength).toBeGreaterThanOrEqual(0);
        expect(state.strength).toBeLessThanOrEqual(1 + 1e-12);
        expect(state.loadSqIn).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(state.leftRolls)).toBe(true);
      }),
    );
  });
});

describe("more dilute is never cleaner", () => {
  test("a thinned fixer never takes more film, clears sooner, or lasts longer", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.array(fc.integer({ min: 0, max: 60 })),
        (rolls, water) => {
          const inMl = [...water].sort((a, b) => a - b);
          const states = inMl.map((ml) =>
            fixer(...times(rolls, used(1, { carry: carry({ inMl: ml, outMl: 20 }) }))),
          );
          states.slice(1).forEach((thinner, at) => {
            const stronger = states[at];
            if (!stronger) return;
            // What film takes along of it takes silver along: held apart, as a share of what is left.
            expect(thinner.strength).toBeLessThanOrEqual(stronger.strength + 1e-12);
            expect(thinner.predictedSeconds ?? 0).toBeGreaterThanOrEqual(
              (stronger.predictedSeconds ?? 0) - 1,
            );
          });
        },
      ),
    );
  });

  test("a wash with more carried over leaves never less hypo, more water in a fill never more", () => {
    const least = fc.integer({ min: 1, max: 10 });
    const ml = fc.integer({ min: 1, max: 400 });
    fc.assert(
      fc.property(least, ml, ml, ml, (changes, volume, carried, more) => {
        const left = hypoLeftByChanges(changes, volume, carried);
        expect(hypoLeftByChanges(changes, volume, carried + more)).toBeGreaterThanOrEqual(left);
        expect(hypoLeftByChanges(changes, volume + more, carried)).toBeLessThanOrEqual(left);
        expect(hypoLeftByChanges(changes + 1, volume, carried)).toBeLessThanOrEqual(left);
      }),
    );
  });
});

describe("a class's own measure", () => {
  test("amounts are whole steps of it, and the strength they make is told", () => {
    expect([3.465, 12.3, 24.9].map((ml) => measurableMl(ml, 1))).toEqual([3, 12, 25]);
    expect([3.465, 12.3].map((ml) => measurableMl(ml, 0.1))).toEqual([3.5, 12.3]);
    // 1+100 in 350 ml is 3.47 ml: with whole ml 3, 13 % too weak.
    expect(splitVolume(350, { concentrateParts: 1, waterParts: 100 }, 1).concentrateMl).toBe(3);
    expect(strengthOff(350, { concentrateParts: 1, waterParts: 100 }, 1)).toBeCloseTo(
      3 / (350 / 101) - 1,
      10,
    );
    // A measure of 5 ml can't give 3.5: not under one step.
    expect(leastVolumeMl({ concentrateParts: 1, waterParts: 100 }, 5)).toBe(505);
  });

  test("stock is the whole bath, whatever the measure shows", () => {
    expect(splitVolume(303, { concentrateParts: 1, waterParts: 0 }, 10)).toEqual({
      concentrateMl: 303,
      waterMl: 0,
    });
  });
});

describe("a replenished developer", () => {
  // T-MAX RS by a forum quoting Kodak J-86: 1.5 US fl oz (44 ml) for each roll or 80 sq in.
  const developer = aDeveloper({
    usage: "again",
    volumeMl: 4000,
    bottleMl: 4000,
    replenishMlPerRoll: 44,
    capacitySqInPerLitre: 1600,
  });
  const after = (...bodies: LineBody[]) => stateOf(developer, ledger(mixed(4000), ...bodies), NOW);

  test("asks for so much a roll, by area", () => {
    expect(after(used(3)).replenishMl).toBe(132);
    // A sheet of 4x5 in is a quarter roll.
    expect(after(used(0.25)).replenishMl).toBe(11);
    expect(after().replenishMl).toBe(0);
  });

  test("has done no film for its time once it is replenished, and nothing is gained beyond that", () => {
    const refill: LineBody = { ...topped(132, 132), isReplenisher: true } as LineBody;
    expect(after(used(3)).filmsPerLitre).toBe(0);
    expect(after(used(8)).filmsPerLitre).toBe(2);
    const whole = after(used(3), refill);
    expect(whole.replenishMl).toBe(0);
    expect(whole.loadSqIn).toBe(0);
    expect(after(used(3), refill, refill).loadSqIn).toBe(0);
  });

  test("half the replenisher leaves half the films", () => {
    const half: LineBody = { ...topped(176), isReplenisher: true } as LineBody;
    expect(after(used(8), half)).toMatchObject({ replenishMl: 176, volumeMl: 4176 });
  });
});

describe("two fixing baths", () => {
  test("the second is spared: only what came over from the first loads it", () => {
    const second = fixer(...times(10, used(1, { place: 2 })));
    expect(second).toMatchObject({ loadSqIn: 0, usedSqIn: 800, leftRolls: 20 });
    const carried = fixer(used(1, { place: 2, carry: carry({ inStrength: 0.9, loadSqIn: 1.6 }) }));
    expect(carried.loadSqIn).toBeCloseTo((1.6 * 1000) / 1020, 10);
    expect(carried.strength).toBeCloseTo((1000 + 20 * 0.9) / 1020, 10);
  });

  test("rotate: the first is dropped, the second moves up, a fresh one is second", () => {
    const pair = { first: 3, second: 4, rotations: 0 };
    expect(rotated(pair, 5, 2)).toEqual({ first: 4, second: 5, rotations: 1 });
    expect(withPair([pair], { first: 4, second: 5, rotations: 1 })).toHaveLength(1);
    expect(placeIn([pair], 3)).toBe(1);
    expect(placeIn([pair], 4)).toBe(2);
    expect(placeIn([pair], 5)).toBeNull();
  });

  // Anchell, The Darkroom Cookbook, 3rd ed., p. 107 (on Kodak's two-bath): the third rotation renews both.
  test("the third rotation renews both", () => {
    const twice = { first: 5, second: 6, rotations: 2 };
    expect(rotated(twice, 7, 2)).toBeUndefined();
    // A practitioner's page: after the first swap three more, so four in all.
    expect(rotated(twice, 7, 4)).toBeDefined();
  });
});
