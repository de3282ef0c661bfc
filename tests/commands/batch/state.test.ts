import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LineBody } from "../../../store/shapes/ledger.ts";
import { presetFor } from "../../../commands/batch/presets.ts";
import { stateOf } from "../../../commands/batch/state.ts";
import { fixTime } from "../../../commands/plan/fix.ts";
import {
  aBatch,
  aDeveloper,
  corrected,
  DAY_MS,
  HOUR_MS,
  ledger,
  mixed,
  tested,
  topped,
  used,
} from "../../support/batch.ts";
import { START } from "../../support/make.ts";

const NOW = START + HOUR_MS;
const fixer = (...bodies: LineBody[]) => stateOf(aBatch(), ledger(mixed(1000, 45), ...bodies), NOW);

describe("a bath that is poured back", () => {
  test("takes its rolls and not one more", () => {
    expect(fixer(used(19))).toMatchObject({ standing: "ready", leftRolls: 1, leftSqIn: 80 });
    expect(fixer(used(20))).toMatchObject({ standing: "exhausted", exhaustedBy: "capacity", leftRolls: 0 });
  });

  test("tabular-grain film wears it faster, mixed loads in proportion", () => {
    // 5 of 10 tabular rolls are half of the bath: 10 of 20 plain ones are left.
    expect(fixer(used(5, { isTabular: true }))).toMatchObject({ leftRolls: 10, usedPercent: 50 });
    expect(fixer(used(5, { isTabular: true }), used(10))).toMatchObject({ standing: "exhausted" });
  });

  test("half its bath changed for fresh takes half its load with it", () => {
    const state = fixer(used(16), topped(500, 500));
    expect(state).toMatchObject({ volumeMl: 1000, leftRolls: 12, usedSqIn: 1280, loadSqIn: 640, topUps: 1 });
  });

  test("without a known capacity it has no last roll", () => {
    const batch = aBatch({ kind: "wash-aid", capacitySqInPerLitre: null, tabularSqInPerLitre: null });
    expect(stateOf(batch, ledger(mixed(), used(99)), NOW)).toMatchObject({
      leftRolls: null,
      standing: "ready",
    });
  });
});

describe("a developer used once", () => {
  const developer = (...bodies: LineBody[]) => stateOf(aDeveloper(), ledger(mixed(5000), ...bodies), NOW);

  test("goes down by what is taken, to the millilitre", () => {
    expect(developer(used(1, { ml: 150 }), used(2, { ml: 301 }))).toMatchObject({
      volumeMl: 4549,
      usedMl: 451,
      leftRolls: 30,
    });
  });

  test("more poured than was mixed is seen, and nothing is left", () => {
    expect(developer(used(1, { ml: 5001 }))).toMatchObject({
      volumeMl: -1,
      leftRolls: 0,
      exhaustedBy: "volume",
      standing: "exhausted",
    });
  });
});

describe("clearing time", () => {
  test("doubles over the capacity, in a straight line, while nobody tests", () => {
    expect(fixer().predictedSeconds).toBe(45);
    expect(fixer(used(10)).predictedSeconds).toBe(67.5);
    expect(fixer(used(19)).predictedSeconds).toBeCloseTo(87.75);
  });

  test("follows a test, and from there is never flatter than the bath has shown itself", () => {
    // After 10 rolls 60 s instead of 67.5: goes on by the straight line to capacity, 2.25 s a roll.
    expect(fixer(used(10), tested(60), used(4)).predictedSeconds).toBeCloseTo(69);
    // After 5 rolls 70 s: 5 s a roll so far, so it reaches 90 s, twice fresh, after 4 more.
    expect(fixer(used(5), tested(70), used(3))).toMatchObject({ standing: "ready" });
    expect(fixer(used(5), tested(70), used(4))).toMatchObject({
      standing: "exhausted",
      exhaustedBy: "prediction",
    });
  });

  test("tested at twice its fresh time the bath is exhausted, a second under it is not (US Navy NAVEDTRA 14209)", () => {
    expect(fixer(used(3), tested(90))).toMatchObject({ standing: "exhausted", exhaustedBy: "test" });
    expect(fixer(used(3), tested(89))).toMatchObject({ standing: "ready" });
  });

  test("a test can show a bath good again that was only reckoned to be exhausted", () => {
    const wrong = [used(5), tested(70), used(4)] as const;
    expect(fixer(...wrong, tested(75))).toMatchObject({ standing: "ready", predictedSeconds: 75 });
  });

  test("a first test after use is worked back to the fresh time", () => {
    const state = stateOf(aBatch(), ledger(mixed(1000, null), used(10), tested(60)), NOW);
    expect(state.clearing?.freshSeconds).toBe(40);
    expect(state.predictedSeconds).toBe(60);
  });

  test("a top-up brings it down by the share of fresh bath", () => {
    expect(fixer(used(10), tested(65), topped(500, 500)).predictedSeconds).toBe(55);
  });
});

describe("age", () => {
  const at = (days: number, ...bodies: LineBody[]) =>
    stateOf(aBatch(), ledger(mixed(1000, 45), ...bodies), START + days * DAY_MS).standing;

  test("a full bottle keeps its full time, to the hour", () => {
    expect(stateOf(aBatch(), ledger(mixed()), START + 60 * DAY_MS - 1).standing).toBe("ready");
    expect(at(60)).toBe("out-of-date");
  });

  test("a bottle clearly less than full ages as part-full from then on, and a refill does not turn that back", () => {
    const discard = { kind: "discarded", ml: 200, to: "silver", isAll: false, note: "" } as const;
    expect(at(31, discard)).toBe("out-of-date");
    expect(at(31, discard, topped(200))).toBe("out-of-date");
    expect(at(29, discard)).toBe("ready");
  });

  test("a bath poured back counts as full however many rolls it has done", () => {
    expect(at(31, used(12))).toBe("ready");
  });

  test("a developer that is portioned out becomes part-full", () => {
    const lines = ledger(mixed(5000), used(4, { ml: 600 }));
    expect(stateOf(aDeveloper(), lines, START + 31 * DAY_MS).standing).toBe("out-of-date");
    expect(
      stateOf(aDeveloper(), ledger(mixed(5000), used(1, { ml: 300 })), START + 31 * DAY_MS).standing,
    ).toBe("ready");
  });
});

describe("published figures stand behind what is taken for granted", () => {
  const working = { concentrateParts: 1, waterParts: 4 };

  test("fixer of unknown capacity: 20 rolls a litre, working fixer keeps 2 months (Anchell, Darkroom Cookbook, 3rd ed., p. 108)", () => {
    const { capacitySqInPerLitre, fullHours } = presetFor("fixer", working);
    // 80 rolls or 8x10 sheets in a US gallon, the same source: 3.785 l.
    expect(capacitySqInPerLitre).toBe(20 * 80);
    expect(Math.abs(((capacitySqInPerLitre ?? 0) / 80) * 3.785 - 80)).toBeLessThan(5);
    expect(fullHours).toBe(60 * 24);
  });

  test("tabular-grain film: 50 to 70 % of it (brodie-tyrrell.org, T-MAX films in rapid fixer)", () => {
    const { capacitySqInPerLitre: plain, tabularSqInPerLitre: tabular } = presetFor("fixer", working);
    const share = (tabular ?? 0) / (plain ?? 1);
    expect(share).toBeGreaterThanOrEqual(0.5);
    expect(share).toBeLessThanOrEqual(0.7);
  });

  test("stop bath SB-5: about 12 rolls a litre (Anchell, p. 268)", () => {
    expect(presetFor("stop", working).capacitySqInPerLitre).toBe(12 * 80);
  });

  test("every preset says where it is from", () => {
    for (const kind of ["developer", "stop", "fixer", "wash-aid", "wetting-agent"] as const)
      expect(presetFor(kind, working).source.length).toBeGreaterThan(10);
  });
});

test("a line taken back leaves the batch as if it had never been written", () => {
  const before = fixer(used(3));
  // Lines 1 and 2 are the mixing and three rolls; line 3 is the slip.
  const after = fixer(used(3), used(5), corrected({ reverses: 3 }));
  expect(after).toEqual(before);
});

test("a correction adds to what the lines say, and says so by itself", () => {
  expect(fixer(used(3), corrected({ areaSqIn: 160 }))).toMatchObject({ leftRolls: 15, usedSqIn: 400 });
  expect(fixer(corrected({ ml: -100 }))).toMatchObject({ volumeMl: 900, leftRolls: 18 });
});

test("whatever is written, the sums of the ledger are the sums of its lines", () => {
  const use = fc.record({
    rolls: fc.integer({ min: 1, max: 8 }),
    ml: fc.integer({ min: 0, max: 900 }),
    isTabular: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(use, { maxLength: 60 }), (uses) => {
      const lines = ledger(mixed(5000), ...uses.map(({ rolls, ...rest }) => used(rolls, rest)));
      const state = stateOf(aDeveloper(), lines, NOW);
      const ml = uses.reduce((sum, each) => sum + each.ml, 0);
      expect(state.usedMl).toBe(ml);
      expect(state.volumeMl).toBe(5000 - ml);
      expect(state.usedSqIn).toBe(uses.reduce((sum, each) => sum + each.rolls * 80, 0));
      expect(state.tabularSqIn).toBe(
        uses.reduce((sum, each) => sum + (each.isTabular ? each.rolls * 80 : 0), 0),
      );
    }),
  );
});

test("a bath never gets better by being used, nor a clearing time shorter", () => {
  const use = fc.record({ rolls: fc.integer({ min: 1, max: 4 }), isTabular: fc.boolean() });
  fc.assert(
    fc.property(fc.array(use, { maxLength: 30 }), (uses) => {
      const lines = ledger(mixed(1000, 45), ...uses.map(({ rolls, ...rest }) => used(rolls, rest)));
      let last = stateOf(aBatch(), lines.slice(0, 1), NOW);
      for (let count = 2; count <= lines.length; count += 1) {
        const next = stateOf(aBatch(), lines.slice(0, count), NOW);
        expect(next.leftSqIn ?? 0).toBeLessThan(last.leftSqIn ?? 0);
        expect(next.predictedSeconds ?? 0).toBeGreaterThanOrEqual(last.predictedSeconds ?? 0);
        if (last.standing === "exhausted") expect(next.standing).toBe("exhausted");
        last = next;
      }
    }),
  );
});

test("a bath near its end fixes for four times the fresh clearing time (twice twice: NAVEDTRA 14209; brodie-tyrrell.org)", () => {
  const { predictedSeconds } = fixer(used(19.75));
  const { seconds } = fixTime(Math.ceil(predictedSeconds ?? 0), false, 60, 200);
  expect(seconds).toBeGreaterThanOrEqual(4 * 45 - 3);
  expect(seconds).toBeLessThanOrEqual(4 * 45);
});
