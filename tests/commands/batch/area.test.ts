import fc from "fast-check";
import { expect, test } from "vitest";
import { areaOf, fromSquareMetres, rollsIn } from "../../../commands/batch/area.ts";
import { formatRolls } from "../../../commands/batch/batch-words.ts";

test.each([
  // brodie-tyrrell.org, FixerCapacity, and photoscapes.com, managing fixer exhaustion (practitioners' pages): units of
  // 80 sq in.
  ["135", 1, 80],
  ["120", 1, 80],
  ["4x5", 1, 20],
  ["4x5", 4, 80],
] as const)("%s, %i film: %i sq in", (format, films, sqIn) => {
  expect(areaOf([{ format, films }])).toBe(sqIn);
});

test("a sheet of 4x5 in is 20 sq in by itself, and the unit is 0.0516 square metres", () => {
  expect(areaOf([{ format: "4x5", films: 1 }])).toBe(4 * 5);
  // 80 sq in at 0.0254 m to the inch: 0.051613 m2.
  expect(fromSquareMetres(80 * 0.0254 ** 2)).toBe(80);
});

test("mixed loads add up: two 135, one 120 and six sheets are four and a half rolls", () => {
  const loads = [
    { format: "135", films: 2 },
    { format: "120", films: 1 },
    { format: "4x5", films: 6 },
  ] as const;
  expect(areaOf(loads)).toBe(360);
  expect(formatRolls(areaOf(loads), "fixer")).toBe("4.5 rolls");
  expect(rollsIn(areaOf(loads))).toBe(4);
});

test("the area of many loads is the sum of their areas, whatever the order", () => {
  const load = fc.record({
    format: fc.constantFrom("135", "120", "4x5"),
    films: fc.integer({ min: 0, max: 40 }),
  });
  fc.assert(
    fc.property(fc.array(load), (loads) => {
      const one = loads.reduce((sum, each) => sum + areaOf([each]), 0);
      expect(areaOf(loads)).toBe(one);
      expect(areaOf([...loads].reverse())).toBe(one);
    }),
  );
});
