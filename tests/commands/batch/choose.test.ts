import { describe, expect, test } from "vitest";
import type { Batch } from "../../../store/shapes/batch.ts";
import { chooseBatch, needOf, takenMl, type Candidate, type Need } from "../../../commands/batch/choose.ts";
import type { LineBody } from "../../../store/shapes/ledger.ts";
import { stateOf } from "../../../commands/batch/state.ts";
import { aBatch, aDeveloper, DAY_MS, ledger, mixed, used } from "../../support/batch.ts";
import { aPlan, aStep, START } from "../../support/make.ts";

function candidate(batch: Batch, bodies: readonly LineBody[] = [], over: Partial<Candidate> = {}): Candidate {
  const lines = ledger(mixed(batch.volumeMl, batch.kind === "fixer" ? 45 : null), ...bodies);
  return {
    batch,
    state: stateOf(batch, lines, START),
    reservedMl: 0,
    reservedSqIn: 0,
    place: null,
    isAllowed: false,
    ...over,
  };
}

const FIX: Need = {
  kind: "fixer",
  product: null,
  dilution: null,
  ml: 300,
  concentrateMl: null,
  areaSqIn: 80,
  isTabular: false,
  films: 1,
  place: null,
};
const DEVELOP: Need = {
  ...FIX,
  kind: "developer",
  product: "House MQ",
  dilution: { concentrateParts: 1, waterParts: 1 },
  concentrateMl: 150,
};

const numberOf = (result: ReturnType<typeof chooseBatch>): number | null | string =>
  result.ok ? (result.value?.batch.number ?? null) : result.fault.code;

describe("left to itself", () => {
  test("takes what goes out of date first, then what was mixed first", () => {
    const old = candidate(aBatch({ number: 5, mixedAtMs: START - DAY_MS }));
    const young = candidate(aBatch({ number: 4 }));
    expect(numberOf(chooseBatch(FIX, [young, old], null, true))).toBe(5);
    expect(numberOf(chooseBatch(FIX, [candidate(aBatch({ number: 7 })), young], null, true))).toBe(4);
  });

  test("passes over what is exhausted, too full, or promised to films under way", () => {
    const worn = candidate(aBatch({ number: 1 }), [used(20)]);
    const promised = candidate(aBatch({ number: 2 }), [used(18)], { reservedSqIn: 160 });
    const good = candidate(aBatch({ number: 3 }), [used(19)]);
    expect(numberOf(chooseBatch(FIX, [worn, promised, good], null, true))).toBe(3);
    expect(numberOf(chooseBatch({ ...FIX, areaSqIn: 160 }, [worn, promised, good], null, true))).toBe(
      "ERR_BATCH_ROOM",
    );
  });

  test("counts a tabular-grain roll as two in a bath that takes half as many of them", () => {
    const two = candidate(aBatch(), [used(18)]);
    expect(numberOf(chooseBatch({ ...FIX, isTabular: true }, [two], null, true))).toBe(3);
    const one = candidate(aBatch(), [used(19)]);
    expect(numberOf(chooseBatch({ ...FIX, isTabular: true }, [one], null, true))).toBe("ERR_BATCH_ROOM");
  });

  test("takes a developer of the right name at the plan's strength, else as stock", () => {
    const other = candidate(aDeveloper({ number: 1, product: "Pier Fine" }));
    const stock = candidate(aDeveloper({ number: 2 }));
    const strong = candidate(aDeveloper({ number: 3, dilution: { concentrateParts: 1, waterParts: 3 } }));
    const ready = candidate(aDeveloper({ number: 4, dilution: { concentrateParts: 2, waterParts: 2 } }));
    expect(numberOf(chooseBatch(DEVELOP, [other, strong, stock], null, true))).toBe(2);
    expect(numberOf(chooseBatch(DEVELOP, [stock, ready], null, true))).toBe(4);
    expect(numberOf(chooseBatch({ ...DEVELOP, product: "house  mq" }, [stock], null, true))).toBe(2);
  });

  test("needs no batch where the class keeps none, but a fixer that was counted once is counted always", () => {
    expect(numberOf(chooseBatch(FIX, [], null, false))).toBe(null);
    expect(numberOf(chooseBatch(FIX, [], null, true))).toBe("ERR_NO_BATCH_READY");
    expect(numberOf(chooseBatch(DEVELOP, [], null, true))).toBe(null);
  });

  test("refuses where only worn-out bottles stand there, unless one was allowed this person", () => {
    const worn = candidate(aBatch(), [used(20)]);
    expect(numberOf(chooseBatch(FIX, [worn], null, true))).toBe("ERR_NO_BATCH_READY");
    const allowed = chooseBatch(FIX, [{ ...worn, isAllowed: true }], null, true);
    expect(allowed).toMatchObject({ ok: true, value: { isOverride: true } });
  });
});

describe("a bottle named", () => {
  const good = candidate(aBatch({ number: 5 }));
  const worn = candidate(aBatch({ number: 3 }), [used(20)]);

  test("is taken if it is fit, even out of turn", () => {
    const later = candidate(aBatch({ number: 6, mixedAtMs: START + 1 }));
    expect(numberOf(chooseBatch(FIX, [good, later], 6, true))).toBe(6);
  });

  test("is refused exhausted, with the bottle to use instead", () => {
    expect(chooseBatch(FIX, [worn, good], 3, true)).toMatchObject({
      fault: { code: "ERR_BATCH_WORN", standing: "exhausted", instead: 5 },
    });
    expect(chooseBatch(FIX, [worn], 3, true)).toMatchObject({ fault: { instead: null } });
  });

  test("is taken exhausted by whom it was allowed", () => {
    expect(numberOf(chooseBatch(FIX, [{ ...worn, isAllowed: true }, good], 3, true))).toBe(3);
  });

  test("is refused for what it is not", () => {
    expect(chooseBatch(DEVELOP, [good], 5, true)).toMatchObject({ fault: { code: "ERR_WRONG_BATCH" } });
    expect(chooseBatch(FIX, [good], 9, true)).toMatchObject({ fault: { code: "ERR_UNKNOWN_BATCH" } });
  });
});

test("the clearing time a plan reckons with is the one after the films promised before it", () => {
  const free = chooseBatch(FIX, [candidate(aBatch(), [used(10)])], null, true);
  expect(free).toMatchObject({ value: { clearingSeconds: 68 } });
  const behind = chooseBatch(FIX, [candidate(aBatch(), [used(10)], { reservedSqIn: 320 })], null, true);
  // 4 rolls more of 20: 45 s x (1 + 14/20) = 76.5 s.
  expect(behind).toMatchObject({ value: { clearingSeconds: 77 } });
});

test("a developer poured back tells how many films each litre has done", () => {
  const again = { usage: "again", capacitySqInPerLitre: 800, volumeMl: 2000, bottleMl: 2000 } as const;
  const working = aDeveloper({ ...again, dilution: { concentrateParts: 1, waterParts: 1 } });
  const chosen = chooseBatch(DEVELOP, [candidate(working, [used(7)])], null, true);
  expect(chosen).toMatchObject({ value: { filmsDone: 3 } });
  // Diluted in the tank it is fresh each time.
  const stock = chooseBatch(DEVELOP, [candidate(aDeveloper(again), [used(7)])], null, true);
  expect(stock).toMatchObject({ value: { filmsDone: 0 } });
});

test("of stock only the concentrate's part leaves the bottle; of a bath poured back nothing", () => {
  expect(takenMl(aDeveloper(), DEVELOP)).toBe(150);
  expect(takenMl(aDeveloper({ dilution: { concentrateParts: 1, waterParts: 1 } }), DEVELOP)).toBe(300);
  expect(takenMl(aDeveloper({ usage: "again" }), DEVELOP)).toBe(150);
  expect(takenMl(aBatch(), FIX)).toBe(0);
});

test("a step says what it takes; a wash takes nothing from a bottle", () => {
  const plan = aPlan({ rolls: 2 });
  const need = needOf(plan, aStep({ kind: "fix", ml: 500 }), true);
  expect(need).toMatchObject({ kind: "fixer", ml: 500, areaSqIn: 160, isTabular: true, films: 2 });
  expect(needOf(plan, aStep({ kind: "wash" }), false)).toBeUndefined();
});
