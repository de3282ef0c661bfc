import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Batch } from "../../../../store/shapes/batch.ts";
import type { Candidate } from "../../../../commands/batch/choose.ts";
import type { LineBody } from "../../../../store/shapes/ledger.ts";
import type { Shelved } from "../../../../store/shapes/shelf.ts";
import { stateOf } from "../../../../commands/batch/state.ts";
import { intoBottles, planClass, type ClassDay } from "../../../../commands/mix/class/needs.ts";
import { aBatch, aDeveloper, DAY_MS, ledger, mixed, used } from "../../../support/batch.ts";
import { START } from "../../../support/make.ts";

function candidate(batch: Batch, bodies: readonly LineBody[] = [], atMs = START): Candidate {
  const state = stateOf(batch, ledger(mixed(batch.volumeMl), ...bodies), atMs);
  return { batch, state, reservedMl: 0, reservedSqIn: 0, place: null, isAllowed: false };
}

const DAY: ClassDay = {
  rolls: 24,
  format: "135",
  isTabular: false,
  developer: "House MQ",
  dilution: { concentrateParts: 1, waterParts: 1 },
  minConcentrateMl: null,
  kinds: ["developer", "fixer"],
  tankMl: 1200,
  candidates: [],
  shelf: [],
  usual: { fixer: { product: "Pier Fix", dilution: { concentrateParts: 1, waterParts: 4 } } },
};

const powder: Shelved = {
  product: "House MQ",
  pack: { kind: "developer", form: "powder", packMl: 1000, dilution: { concentrateParts: 1, waterParts: 0 } },
  leftMl: 2000,
};
const concentrate: Shelved = {
  product: "Pier Fix",
  pack: { kind: "fixer", form: "liquid", packMl: 500, dilution: { concentrateParts: 1, waterParts: 4 } },
  leftMl: 100,
};

describe("developer used once", () => {
  test("24 rolls of 135 take 24 times 300 ml, half of it stock", () => {
    const [developer] = planClass(DAY);
    expect(developer).toMatchObject({
      kind: "developer",
      needMl: 7200,
      readyMl: 0,
      mixMl: 7200,
      concentrateMl: 3600,
      waterMl: 3600,
      bottlesMl: [5000, 2000, 250],
    });
  });

  test("stock that is ready counts for twice its volume at 1+1", () => {
    const stock = candidate(aDeveloper(), [used(1, { ml: 4000 })]);
    const [developer] = planClass({ ...DAY, candidates: [stock] });
    expect(developer).toMatchObject({ readyMl: 2000, readyFrom: [1], mixMl: 5200, concentrateMl: 2600 });
  });

  test("what will be out of date on that day does not count", () => {
    const old = candidate(aDeveloper(), [], START + 61 * DAY_MS);
    expect(planClass({ ...DAY, candidates: [old] })[0]).toMatchObject({ readyMl: 0, readyFrom: [] });
  });

  test("a least amount of concentrate for each roll makes it more", () => {
    // 200 ml of stock for each roll at 1+1 is 400 ml of bath.
    expect(planClass({ ...DAY, minConcentrateMl: 200 })[0]).toMatchObject({ needMl: 9600 });
  });

  test("powder is mixed and bought by whole packs", () => {
    const [developer] = planClass({ ...DAY, shelf: [powder] });
    expect(developer).toMatchObject({ isPowder: true, concentrateMl: 4000, buyPacks: 2, shelfMl: 2000 });
  });
});

describe("fixer poured back", () => {
  test("24 rolls against 20 a litre take a litre and a quarter", () => {
    expect(planClass(DAY)[1]).toMatchObject({
      kind: "fixer",
      product: "Pier Fix",
      needSqIn: 24 * 80,
      mixMl: 1250,
      concentrateMl: 250,
      waterMl: 1000,
    });
  });

  test("tabular-grain film takes twice that", () => {
    expect(planClass({ ...DAY, isTabular: true })[1]).toMatchObject({ mixMl: 2500 });
  });

  test("what is left in open bottles counts, and enough is enough", () => {
    const used14 = candidate(aBatch(), [used(14)]);
    // 6 rolls are left, 18 are short: 900 ml by area, but the largest tank must be filled.
    expect(planClass({ ...DAY, candidates: [used14] })[1]).toMatchObject({ readySqIn: 480, mixMl: 1250 });
    const plenty = candidate(aBatch({ volumeMl: 2000, bottleMl: 2000 }));
    expect(planClass({ ...DAY, candidates: [plenty] })[1]).toMatchObject({
      mixMl: 0,
      bottlesMl: [],
      readyFrom: [3],
    });
  });

  test("says what to buy when the shelf has too little", () => {
    expect(planClass({ ...DAY, shelf: [concentrate] })[1]).toMatchObject({ shelfMl: 100, buyPacks: 1 });
  });
});

test("into full bottles, the largest first, and the rest into the smallest that holds it", () => {
  expect(intoBottles(7500)).toEqual([5000, 2000, 500]);
  expect(intoBottles(1250)).toEqual([1000, 250]);
  expect(intoBottles(300)).toEqual([250, 250]);
  expect(intoBottles(0)).toEqual([]);
});

test("the bottles always hold what is mixed, and only the last may be part-full", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60_000 }), (ml) => {
      const bottles = intoBottles(ml);
      const all = bottles.reduce((sum, size) => sum + size, 0);
      expect(all).toBeGreaterThanOrEqual(ml);
      expect(all - ml).toBeLessThan(bottles.at(-1) ?? 0);
    }),
  );
});
