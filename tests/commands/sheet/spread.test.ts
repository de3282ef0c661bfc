import { describe, expect, test } from "vitest";
import { spreadBetween } from "../../../commands/sheet/spread.ts";
import { timeFor } from "../../../commands/sheet/time.ts";
import { aSheet } from "../../support/make.ts";
import { BY_STOP, BY_TEMPERATURE, type Cell, type Series } from "./published.ts";

/*
 * The calibration of the spread between rows. Of each published series every three cells are taken: the outer two make a
 * sheet, the inner one is asked of it.
 */

interface Checked {
  readonly series: Series;
  readonly given: readonly [Cell, Cell];
  readonly asked: Cell;
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
  /** The given cells are its next neighbours in the table. */
  readonly isNeighbour: boolean;
}

function ask(series: Series, given: readonly [Cell, Cell], asked: Cell, isNeighbour: boolean): Checked {
  const points = given.map((cell) => ({ ...cell, source: series.source.slice(0, 200) }));
  const time = timeFor(
    aSheet({ points, boxSpeed: given[0].exposureIndex }),
    asked.tenthsC,
    asked.exposureIndex,
  );
  if (!time.ok) throw new Error(`${series.name}: ${time.fault.code}`);
  const { seconds, lowSeconds: low, highSeconds: high } = time.value;
  return { series, given, asked, seconds, low, high, isNeighbour };
}

function triples(series: Series): Checked[] {
  const { cells } = series;
  return cells.flatMap((first, i) =>
    cells.slice(i + 2).flatMap((last, more) => {
      const end = i + 2 + more;
      return cells.slice(i + 1, end).map((inner) => ask(series, [first, last], inner, end - i === 2));
    }),
  );
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? Number.NaN) + (sorted[Math.floor(half)] ?? Number.NaN)) / 2;
}

interface Calibration {
  readonly points: number;
  readonly inside: number;
  readonly medianError: number;
  /** Half of the whole spread. */
  readonly medianWidth: number;
}

function calibrate(title: string, checked: readonly Checked[]): Calibration {
  const isInside = ({ asked, low, high }: Checked): boolean =>
    asked.seconds >= low - 0.5 && asked.seconds <= high + 0.5;
  const inside = checked.filter(isInside).length / checked.length;
  const medianError = median(checked.map(({ seconds, asked }) => Math.abs(seconds - asked.seconds)));
  const medianWidth = median(checked.map(({ low, high }) => (high - low) / 2));
  const outside = checked
    .filter((each) => !isInside(each))
    .map(
      ({ series, given, asked, low, high }) =>
        `  outside: ${series.name} [${series.source.slice(0, 40)}] ${given.map(({ tenthsC, exposureIndex }) => `${tenthsC / 10} °C EI ${exposureIndex}`).join(" + ")} -> published ${asked.seconds} s, spread ${Math.round(low)}-${Math.round(high)}`,
    );
  console.log(
    [
      `${title}: ${checked.length} points, ${(inside * 100).toFixed(0)} % inside, median error ${medianError.toFixed(1)} s, median half of the spread ${medianWidth.toFixed(1)} s (${(medianWidth / medianError).toFixed(2)} times)`,
      ...outside,
    ].join("\n"),
  );
  return { points: checked.length, inside, medianError, medianWidth };
}

describe("the spread between two rows, on published tables", () => {
  const temperatures = BY_TEMPERATURE.flatMap(triples);
  const ends = BY_TEMPERATURE.flatMap((series) =>
    triples(series).filter(
      ({ given: [first, last] }) => first === series.cells[0] && last === series.cells.at(-1),
    ),
  );
  const stops = BY_STOP.flatMap(triples);

  test.each([
    ["temperatures, every two rows around", temperatures, 50],
    ["temperatures, the ends of each table", ends, 20],
    ["exposure indexes, every two rows around", stops, 60],
    ["exposure indexes, the next neighbours", stops.filter(({ isNeighbour }) => isNeighbour), 15],
  ])(
    "%s: nine in ten inside, and no wider than twice what the median error needs",
    (title, checked, least) => {
      const { points, inside, medianError, medianWidth } = calibrate(title, checked);
      expect(points).toBeGreaterThan(least);
      expect(inside).toBeGreaterThanOrEqual(0.9);
      expect(medianWidth).toBeLessThanOrEqual(2 * medianError);
    },
  );

  test("there is none at a row, and it grows with the gap", () => {
    const two = (hot: number, index: number) =>
      aSheet({
        points: [
          { tenthsC: 200, exposureIndex: 400, seconds: 600, source: "invented" },
          { tenthsC: hot, exposureIndex: 400, seconds: 400, source: "invented" },
          { tenthsC: 200, exposureIndex: index, seconds: 1200, source: "invented" },
        ],
      });
    expect(spreadBetween(two(240, 1600), 200, 400, 600)).toEqual({ low: 600, high: 600 });
    expect(spreadBetween(two(240, 1600), 200, 1600, 1200)).toEqual({ low: 1200, high: 1200 });
    const width = (hot: number): number => {
      const { low, high } = spreadBetween(two(hot, 1600), (200 + hot) / 2, 400, 490);
      return high - low;
    };
    expect(width(280)).toBeGreaterThan(width(240));
    const stopWidth = (index: number): number => {
      const { low, high } = spreadBetween(two(240, index), 200, Math.round(Math.sqrt(400 * index)), 849);
      return high - low;
    };
    expect(stopWidth(6400)).toBeGreaterThan(stopWidth(1600));
  });
});
