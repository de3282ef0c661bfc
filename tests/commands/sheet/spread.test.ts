import { describe, expect, test } from "vitest";
import { spreadBetween } from "../../../commands/sheet/spread.ts";
import { timeFor } from "../../../commands/sheet/time.ts";
import { aSheet } from "../../support/make.ts";
import { calibrate, type Checked } from "./calibrate.ts";
import { BY_STOP, BY_TEMPERATURE, type Cell, type Series } from "./published.ts";

/*
 * The calibration of the spread between rows. Of each published series every three cells are taken: the outer two make a
 * sheet, the inner one is asked of it.
 */

interface Asked extends Checked {
  readonly series: Series;
  readonly given: readonly [Cell, Cell];
  /** The given cells are its next neighbours in the table. */
  readonly isNeighbour: boolean;
}

const place = ({ tenthsC, exposureIndex }: Cell): string => `${tenthsC / 10} °C EI ${exposureIndex}`;

function ask(series: Series, given: readonly [Cell, Cell], asked: Cell, isNeighbour: boolean): Asked {
  const points = given.map((cell) => ({ ...cell, source: series.source.slice(0, 200) }));
  const time = timeFor(
    aSheet({ points, boxSpeed: given[0].exposureIndex }),
    asked.tenthsC,
    asked.exposureIndex,
  );
  if (!time.ok) throw new Error(`${series.name}: ${time.fault.code}`);
  const { seconds, lowSeconds: low, highSeconds: high } = time.value;
  const name = `${series.name} [${series.source.slice(0, 40)}] ${given.map(place).join(" + ")}`;
  return { name, published: asked.seconds, series, given, seconds, low, high, isNeighbour };
}

function triples(series: Series): Asked[] {
  const { cells } = series;
  return cells.flatMap((first, i) =>
    cells.slice(i + 2).flatMap((last, more) => {
      const end = i + 2 + more;
      return cells.slice(i + 1, end).map((inner) => ask(series, [first, last], inner, end - i === 2));
    }),
  );
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
