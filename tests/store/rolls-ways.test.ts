import * as fc from "fast-check";
import { expect, it } from "vitest";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { EVERY_ROLL, type RollFilter } from "../../store/shapes/roll.ts";
import { START } from "../support/make.ts";
import { aNewRoll } from "../support/rolls.ts";

/* The walk through the log, slice by slice. */

const DAY = 86_400_000;
const FILMS = ["Lantern 400", "Quay 100"];

function aLog(): { stores: OpenedStores; add(film: string, day: number, classId?: number): number } {
  const stores = openStores(":memory:");
  for (const name of ["one", "two"]) stores.classes.add(`room:${name}`, name, "UTC", false, 0);
  return {
    stores,
    add: (film, day, classId = 1) =>
      stores.rolls.add(aNewRoll({ classId, runId: null as never, film, endedAt: START + day * DAY })).number,
  };
}

/** The numbers a walk comes by; `between` happens after each slice. */
function walk(
  stores: OpenedStores,
  filter: RollFilter,
  limit: number,
  between: (seen: readonly number[]) => void = () => {},
): number[] {
  const seen: number[] = [];
  let below: number | null = stores.rolls.lastNumber(1) + 1;
  while (below !== null) {
    const { list, next } = stores.rolls.slice(1, filter, below, limit);
    seen.push(...list.map(({ number }) => number));
    below = next;
    between(seen);
  }
  return seen;
}

const filters: fc.Arbitrary<Partial<RollFilter>> = fc.record(
  {
    film: fc.constantFrom(...FILMS),
    words: fc.constantFrom(["quay"], ["min"], ["lantern", "400"], ["nothing"]),
    fault: fc.constantFrom([], ["thin"]),
    fromMs: fc.integer({ min: 0, max: 40 }).map((day) => START + day * DAY),
    untilMs: fc.integer({ min: 0, max: 40 }).map((day) => START + day * DAY),
  },
  { requiredKeys: [] },
);

it("comes by what a search finds, by every filter and in slices of any size, among rolls of other classes", () => {
  const roll = fc.record({
    film: fc.constantFrom(...FILMS),
    day: fc.integer({ min: 0, max: 40 }),
    classId: fc.constantFrom(1, 1, 2),
    isFaulty: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(roll, { maxLength: 30 }), filters, fc.nat(9), (list, over, size) => {
      const { stores, add } = aLog();
      for (const { film, day, classId, isFaulty } of list) {
        const number = add(film, day, classId);
        const kept = stores.rolls.find(classId, number);
        if (isFaulty && kept) stores.rolls.blame(kept.id, "thin", null);
      }
      const filter = { ...EVERY_ROLL, ...over };
      const found = stores.rolls.search(1, filter, 100, 0).rolls.map(({ number }) => number);
      expect(walk(stores, filter, size + 1)).toEqual(found.toSorted((a, b) => b - a));
      stores.close();
    }),
    { numRuns: 60 },
  );
});

it.each<[string, RollFilter]>([
  ["all", EVERY_ROLL],
  ["by the index of words", { ...EVERY_ROLL, words: ["min"] }],
])(
  "shows what is logged meanwhile to nobody who set out before, what was erased no more, and each roll once: %s",
  (_, filter) => {
    const { stores, add } = aLog();
    for (let at = 0; at < 20; at += 1) add("Quay 100", at);
    const erase = stores.db.prepare("delete from rolls where class_id = 1 and number = ?");
    const seen = walk(stores, filter, 5, (so) => {
      add("Lantern 400", 0);
      // The next one, the last of the slice that was just read, and one far ahead.
      if (so.length === 5) for (const number of [15, 16, 3]) erase.run(number);
    });
    expect(seen).toEqual([20, 19, 18, 17, 16, 14, 13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 2, 1]);
  },
);

it("leaves out a roll that can't be read, and goes on behind it", () => {
  const { stores, add } = aLog();
  for (let at = 0; at < 6; at += 1) add("Quay 100", at);
  stores.db.exec("update rolls set body = '{}' where number in (2, 5)");
  expect(walk(stores, EVERY_ROLL, 2)).toEqual([6, 4, 3, 1]);
});
