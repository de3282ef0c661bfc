import * as fc from "fast-check";
import { expect, it } from "vitest";
import { openStores } from "../../store/index.ts";
import { logFileSchema } from "../../store/shapes/log-file.ts";
import { EVERY_PRINT, type PrintFilter } from "../../store/shapes/print.ts";
import { EVERY_ROLL } from "../../store/shapes/roll.ts";
import { START } from "../support/make.ts";
import { aPrint } from "../support/print.ts";

/* The walk through the log of prints, slice by slice. */

const DAY = 86_400_000;
const day = fc.integer({ min: 0, max: 9 });

const prints = fc.array(
  fc.record({
    classId: fc.constantFrom(1, 1, 2),
    personId: fc.constantFrom("room:mina", "room:ben"),
    title: fc.constantFrom("Harbour at dusk", "Gulls"),
    frame: fc.constantFrom("", "12A"),
    day,
    rating: fc.constantFrom(null, 4),
    fault: fc.constantFrom("", "grey whites"),
  }),
  { maxLength: 25 },
);
const filters: fc.Arbitrary<Partial<PrintFilter>> = fc.record(
  {
    words: fc.constantFrom(["har"], ["gulls grey"], ["nothing"], [""]),
    personId: fc.constantFrom("room:mina", "room:nobody"),
    frame: fc.constantFrom("12a"),
    rating: fc.constantFrom(4),
    isFaulty: fc.boolean(),
    fromMs: day.map((at) => START + at * DAY),
    untilMs: day.map((at) => START + at * DAY),
  },
  { requiredKeys: [] },
);

it("comes by what a search finds, by every filter and in slices of any size, and counts as many", () => {
  fc.assert(
    fc.property(prints, filters, fc.integer({ min: 1, max: 9 }), (list, over, size) => {
      const stores = openStores(":memory:");
      for (const name of ["one", "two"]) stores.classes.add(`room:${name}`, name, "UTC", false, 0);
      for (const { day: at, rating, fault, ...print } of list) {
        const { id } = stores.prints.add(aPrint({ ...print, madeAt: START + at * DAY }));
        if (rating !== null) stores.prints.rate(id, rating);
        if (fault !== "") stores.prints.blame(id, fault, null);
      }
      const filter = { ...EVERY_PRINT, ...over };
      const found = stores.prints.search(1, filter, 100, 0).prints;
      const walked = [];
      let below: number | null = stores.prints.lastNumber(1) + 1;
      while (below !== null) {
        const slice = stores.prints.slice(1, filter, below, size);
        walked.push(...slice.list);
        below = slice.next;
      }
      expect(walked).toEqual(found);
      expect(stores.prints.count(1, filter, 100)).toBe(found.length);
      expect(stores.prints.count(1, filter, 2)).toBe(Math.min(2, found.length));
      stores.close();
    }),
    { numRuns: 60 },
  );
});

it("leaves out a print that can't be read, and goes on behind it", () => {
  const stores = openStores(":memory:");
  stores.classes.add("room:one", "one", "UTC", false, 0);
  for (let at = 0; at < 4; at += 1) stores.prints.add(aPrint());
  stores.db.exec("update prints set body = '{}' where number in (2, 3)");
  const { list, next } = stores.prints.slice(1, EVERY_PRINT, 5, 3);
  expect(list.map(({ number }) => number)).toEqual([4]);
  expect(next).toBe(2);
  expect(stores.prints.slice(1, EVERY_PRINT, 2, 3)).toMatchObject({ list: [{ number: 1 }], next: null });
  stores.close();
});

it("is of rolls where a kept answer does not say of what", () => {
  const kept = { classId: 1, filter: EVERY_ROLL, format: "csv", below: 3, line: "roll export" };
  expect(logFileSchema.parse(kept)).toEqual({ of: "roll", ...kept });
  const ofPrints = { ...kept, of: "print", filter: EVERY_PRINT };
  expect(logFileSchema.parse(ofPrints)).toEqual(ofPrints);
});
