import { describe, expect, test } from "vitest";
import { pushRange } from "../../../commands/sheet/push.ts";
import { timeFor } from "../../../commands/sheet/time.ts";
import type { Point } from "../../../store/shapes/sheet.ts";
import { aSheet } from "../../support/make.ts";
import { TABLE_1A, TABLE_1B, TABLE_1C } from "./tables.ts";

interface Check {
  readonly row: string;
  readonly grade: string;
  readonly given: string;
  readonly at: string;
  readonly published: number;
  readonly computed: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

type Cell = Omit<Point, "source">;

function check(
  row: { film: string; developer: string; grade: string; source: string },
  boxSpeed: number,
  given: readonly Cell[],
  cell: Cell,
): Check {
  const sheet = aSheet({
    film: row.film,
    boxSpeed,
    points: given.map((each) => ({ ...each, source: row.source.slice(0, 200) })),
  });
  const time = timeFor(sheet, cell.tenthsC, cell.exposureIndex);
  if (!time.ok) throw new Error(`${row.film}: ${time.fault.code}`);
  const place = (each: Cell): string => `${each.tenthsC / 10} °C EI ${each.exposureIndex}`;
  return {
    row: `${row.film}, ${row.developer}`,
    grade: row.grade,
    given: given.map(place).join(" + "),
    at: place(cell),
    published: cell.seconds,
    computed: Math.round(time.value.seconds),
    low: Math.round(time.value.lowSeconds),
    high: Math.round(time.value.highSeconds),
    source: row.source,
  };
}

const error = ({ published, computed }: Check): number => Math.abs(published - computed);

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] ?? Number.NaN)) / 2;
}

function print(title: string, checks: readonly Check[]): void {
  const lines = checks.map(
    (each) =>
      `${each.row.padEnd(26)} ${each.grade}  ${each.given.padEnd(36)} -> ${each.at.padEnd(18)} published ${String(each.published).padStart(4)} s, computed ${String(each.computed).padStart(4)} s, off ${String(error(each)).padStart(2)} s, spread ${each.low}-${each.high}  [${each.source.slice(0, 50)}]`,
  );
  console.log(
    [title, ...lines, `median error ${median(checks.map(error))} s over ${checks.length} cells`].join("\n"),
  );
}

/** The cells of table 1A that can be read. */
const rows1A = TABLE_1A.map((row) => ({
  ...row,
  cells: row.cells.flatMap((cell) =>
    cell.minutes === null
      ? []
      : [{ tenthsC: cell.tenthsC, exposureIndex: cell.exposureIndex, seconds: cell.minutes * 60 }],
  ),
}));

const rows1C = TABLE_1C.map((row) => ({
  ...row,
  cells: row.lines.flatMap(({ exposureIndex, minutes20, minutes24 }) => [
    { tenthsC: 200, exposureIndex, seconds: minutes20 * 60 },
    ...(minutes24 === null ? [] : [{ tenthsC: 240, exposureIndex, seconds: minutes24 * 60 }]),
  ]),
}));

describe("two ends of a published row", () => {
  const inner = rows1A.flatMap((row) => {
    const [first, last] = [row.cells[0], row.cells.at(-1)];
    if (!first || !last) return [];
    return row.cells.slice(1, -1).map((cell) => check(row, cell.exposureIndex, [first, last], cell));
  });
  // Between exposure indexes: the ends of each chart at one temperature, its inner rows asked.
  const innerIndexes = rows1C.flatMap((row) =>
    [200, 240].flatMap((tenthsC) => {
      const cells = row.cells.filter((cell) => cell.tenthsC === tenthsC);
      return cells.slice(1, -1).flatMap((cell, at) => {
        const [below, above] = [cells[at], cells[at + 2]];
        return below && above ? [check(row, row.boxSpeed, [below, above], cell)] : [];
      });
    }),
  );

  test("give each inner point of table 1A within half a minute, and half of them within 10 s", () => {
    print("Table 1A (Kodak F-32), inner points from the ends", inner);
    expect(inner).toHaveLength(14);
    for (const each of inner) expect.soft(error(each), `${each.row} ${each.at}`).toBeLessThanOrEqual(30);
    expect(median(inner.map(error))).toBeLessThan(10);
  });

  test("give the exposure index between two neighbours of table 1C (and so 2A) to a tenth", () => {
    print("Table 1C, an exposure index from its neighbours", innerIndexes);
    expect(innerIndexes.length).toBeGreaterThan(10);
    for (const each of innerIndexes)
      expect.soft(error(each) / each.published, `${each.row} ${each.at}`).toBeLessThanOrEqual(0.1);
  });
});

describe("one published point alone", () => {
  const fromOne = [
    ...rows1A.map((row) => ({ ...row, boxSpeed: row.cells[0]?.exposureIndex ?? 100 })),
    ...rows1C,
  ].flatMap((row) =>
    row.cells.flatMap((given) =>
      row.cells
        .filter((cell) => cell.exposureIndex === given.exposureIndex && cell.tenthsC !== given.tenthsC)
        .map((cell) => check(row, given.exposureIndex, [given], cell)),
    ),
  );

  test("gives a spread that holds the published value in at least nine cells of ten", () => {
    print("One point alone: another temperature", fromOne);
    const outside = fromOne.filter(({ published, low, high }) => published < low || published > high);
    console.log(`outside the spread: ${outside.length} of ${fromOne.length}`);
    expect(fromOne.length).toBeGreaterThan(90);
    expect(1 - outside.length / fromOne.length).toBeGreaterThanOrEqual(0.9);
  });

  test("gives a range for a push that holds the published step in at least nine of ten", () => {
    const steps = rows1C.flatMap((row) => {
      const at20 = row.cells.filter(({ tenthsC }) => tenthsC === 200);
      const box = at20.find(({ exposureIndex }) => exposureIndex === row.boxSpeed);
      return at20
        .filter(({ exposureIndex }) => exposureIndex !== row.boxSpeed && exposureIndex >= row.boxSpeed / 4)
        .flatMap((cell) => (box ? [check(row, row.boxSpeed, [box], cell)] : []));
    });
    print("One point alone: another exposure index (rule of thumb)", steps);
    const inside = steps.filter(({ published, low, high }) => published >= low && published <= high);
    expect(inside.length / steps.length).toBeGreaterThanOrEqual(0.9);
  });
});

test("the points themselves are given back exactly, whatever else is on the sheet", () => {
  for (const row of [...rows1A, ...rows1C]) {
    for (const cell of row.cells) {
      const found = check(row, cell.exposureIndex, row.cells, cell);
      expect(found.computed, `${row.film} ${found.at}`).toBe(cell.seconds);
    }
  }
});

test("the one-stop push published as none (Kodak F-4043) and as +25 % (table 1C) both lie in the range", () => {
  const { lowFactor, highFactor } = pushRange(0, 1);
  expect(lowFactor).toBeLessThanOrEqual(1);
  expect(highFactor).toBeGreaterThanOrEqual(1.25);
});

test("the textbook's two stops, +75 to +100 % (Horenstein p. 154, as quoted in a handout, grade C), lie in the range", () => {
  const { lowFactor, highFactor } = pushRange(0, 2);
  expect(lowFactor).toBeLessThanOrEqual(1.75);
  expect(highFactor).toBeGreaterThanOrEqual(2);
});

test("a dilution is a sheet of its own: no rule of parts gives table 1B's times", () => {
  // From 1+4 to 1+7 the developer is 1.6 times thinner; the published times grow by 1.82, 1.82, 1.70 and 1.36.
  const ratio = (developer: string, film: "minutes100" | "minutes400"): number => {
    const at = (water: number): number =>
      TABLE_1B.find((row) => row.developer === developer && row.water === water)?.[film] ?? Number.NaN;
    return at(7) / at(4);
  };
  const ratios = (["T-MAX", "T-MAX RS"] as const).flatMap((developer) =>
    (["minutes100", "minutes400"] as const).map((film) => ratio(developer, film)),
  );
  expect(Math.max(...ratios) / Math.min(...ratios)).toBeGreaterThan(1.3);
});
