import { expect, test } from "vitest";
import { collectedFrom } from "../../../commands/batch/silver.ts";
import { aBatch, ledger, mixed, tested, topped, used } from "../../support/batch.ts";

const discard = (ml: number, to: "silver" | "supplier" = "silver") =>
  ({ kind: "discarded", ml, to, isAll: ml === 1000, note: "" }) as const;

test("a litre with its twenty rolls carries 2 to 6 g, which is what spent fixer is published to hold", () => {
  const { ml, lowMg, highMg } = collectedFrom(aBatch(), ledger(mixed(), used(20), discard(1000)));
  expect({ ml, lowMg, highMg }).toEqual({ ml: 1000, lowMg: 2000, highMg: 6000 });
  // Harvard EHS: 3,000 to 4,000 ppm in used fixer; printers' compliance guidance: 3,000 to 5,000.
  for (const published of [3000, 4000, 5000]) {
    expect(published).toBeGreaterThanOrEqual(lowMg);
    expect(published).toBeLessThanOrEqual(highMg);
  }
});

test("a strip's reading comes before the rule of thumb", () => {
  const lines = ledger(mixed(), used(20), tested(60, { silverMgPerLitre: 3500 }), discard(1000));
  expect(collectedFrom(aBatch(), lines)).toEqual({ ml: 1000, lowMg: 3500, highMg: 3500, measuredMl: 1000 });
});

test("a part carries its part, and what is topped up afterwards its own", () => {
  const lines = ledger(mixed(), used(10), topped(500, 500), used(10), discard(1000));
  // Half of ten rolls went out first, the other half and ten more at the end.
  expect(collectedFrom(aBatch(), lines)).toEqual({ ml: 1500, lowMg: 2000, highMg: 6000, measuredMl: 0 });
});

test("what went back to the supplier is not in the collection", () => {
  expect(collectedFrom(aBatch(), ledger(mixed(), used(20), discard(1000, "supplier")))).toMatchObject({
    ml: 0,
  });
});

test("no estimate is above the most that was ever published for such waste, 12 g a litre (Weill Cornell EHS)", () => {
  const lines = ledger(mixed(), used(90), discard(1000));
  expect(collectedFrom(aBatch(), lines).highMg).toBe(12_000);
});
