import type { Point, Sheet } from "../../store/shapes/sheet.ts";
import { boundsAt } from "./spread.ts";

/*
 * The time model: ln t is linear in 1/T (absolute) and in stops of exposure index, exact at the sheet's points.
 * That the rate of development rises by a fixed factor for each degree: Ferguson and Howard (1905); the 1/T form is
 * Arrhenius's, and within 10 °C differs from it by less than a printed table's rounding.
 */

/** Median of the published rows (Kodak F-32, rotary tube: 16 rows, factors 1.43 to 2.96 per 10 °C). */
export const DEFAULT_FACTOR_PER_10C = 2.1;
/** Range of the published rows. */
export const LOWEST_FACTOR_PER_10C = 1.4;
export const HIGHEST_FACTOR_PER_10C = 3;
/** One printed row fixes a factor no better than this: its times are rounded to a quarter or half minute. */
const STATED_FACTOR_MARGIN = 0.4;
/** A row must span this much before its own factor means anything. */
const LEAST_SPAN_TENTHS = 20;

export interface Curve {
  /**
   * Seconds at a temperature (°C) and exposure index. Never refuses: beyond the sheet's temperatures it goes on with
   * `factor`, beyond its exposure indexes it keeps to the last row. Never rises with temperature, never falls with
   * exposure index, as long as the sheet's points don't contradict each other.
   */
  secondsAt(celsius: number, exposureIndex: number, factor?: number): number;
  /** The factor per 10 °C used beyond the points: stated, else the sheet's own rows', else the default. */
  readonly factorPer10C: number;
  readonly lowFactor: number;
  readonly highFactor: number;
}

interface Knot {
  readonly inverseK: number;
  readonly logSeconds: number;
  readonly point: Point;
}
interface Row {
  readonly stops: number;
  /** From cold to hot. */
  readonly knots: readonly Knot[];
}

export function makeCurve(sheet: Sheet): Curve {
  const rows = toRows(sheet.points);
  const factorPer10C = sheet.factorPer10C ?? factorOfRows(rows) ?? DEFAULT_FACTOR_PER_10C;
  const stated = sheet.factorPer10C;
  return {
    factorPer10C,
    lowFactor: stated === null ? LOWEST_FACTOR_PER_10C : Math.max(1, stated - STATED_FACTOR_MARGIN),
    highFactor: stated === null ? HIGHEST_FACTOR_PER_10C : stated + STATED_FACTOR_MARGIN,
    secondsAt: (celsius, exposureIndex, factor = factorPer10C) =>
      readRows(rows, sheet.points, celsius, exposureIndex, slopeOf(factor)),
  };
}

function toRows(points: readonly Point[]): Row[] {
  const byIndex = new Map<number, Knot[]>();
  for (const point of [...points].sort((a, b) => a.tenthsC - b.tenthsC)) {
    const knot = { inverseK: inverseKelvin(point.tenthsC / 10), logSeconds: Math.log(point.seconds), point };
    const row = byIndex.get(point.exposureIndex);
    if (row) row.push(knot);
    else byIndex.set(point.exposureIndex, [knot]);
  }
  return [...byIndex]
    .map(([exposureIndex, knots]) => ({ stops: Math.log2(exposureIndex), knots }))
    .sort((a, b) => a.stops - b.stops);
}

function inverseKelvin(celsius: number): number {
  return 1 / (celsius + 273.15);
}

/** d ln t / d(1/T) of a factor per 10 °C, taken from 15 to 25 °C. */
function slopeOf(factorPer10C: number): number {
  return Math.log(factorPer10C) / (inverseKelvin(15) - inverseKelvin(25));
}

/** Median over the rows that span enough, kept within the published range; undefined where no row does. */
function factorOfRows(rows: readonly Row[]): number | undefined {
  const factors: number[] = [];
  for (const { knots } of rows) {
    const [cold, hot] = [knots[0], knots.at(-1)];
    if (!cold || !hot || hot.point.tenthsC - cold.point.tenthsC < LEAST_SPAN_TENTHS) continue;
    const slope = (cold.logSeconds - hot.logSeconds) / (cold.inverseK - hot.inverseK);
    factors.push(Math.exp(slope * (inverseKelvin(15) - inverseKelvin(25))));
  }
  factors.sort((a, b) => a - b);
  const middle = factors[Math.floor(factors.length / 2)];
  return middle === undefined
    ? undefined
    : Math.min(HIGHEST_FACTOR_PER_10C, Math.max(LOWEST_FACTOR_PER_10C, middle));
}

function readRows(
  rows: readonly Row[],
  points: readonly Point[],
  celsius: number,
  exposureIndex: number,
  slope: number,
): number {
  const inverseK = inverseKelvin(celsius);
  const stops = Math.log2(exposureIndex);
  // The running maximum keeps a row beyond its own temperatures from crossing the row of a lower index.
  let below: { stops: number; log: number } | undefined;
  let log = Number.NaN;
  for (const row of rows) {
    const here = { stops: row.stops, log: Math.max(below?.log ?? -Infinity, readRow(row, inverseK, slope)) };
    log = here.log;
    if (row.stops >= stops) {
      if (below)
        log = below.log + ((stops - below.stops) / (row.stops - below.stops)) * (here.log - below.log);
      break;
    }
    below = here;
  }
  return clampToPoints(points, celsius, exposureIndex, Math.exp(log));
}

function readRow({ knots }: Row, inverseK: number, slope: number): number {
  const next = knots.findIndex((knot) => knot.inverseK <= inverseK);
  const [cold, hot] = next === -1 ? [knots.at(-1), undefined] : [knots[next - 1], knots[next]];
  if (cold && hot) {
    const share = (inverseK - cold.inverseK) / (hot.inverseK - cold.inverseK);
    return cold.logSeconds + share * (hot.logSeconds - cold.logSeconds);
  }
  const end = cold ?? hot;
  return end ? end.logSeconds + slope * (inverseK - end.inverseK) : Number.NaN;
}

/**
 * Keeps a value between the points that must be longer (colder, higher index) and those that must be shorter.
 * At a point both bounds are its own time: this is what makes the model exact there whatever the rows around it do.
 */
function clampToPoints(
  points: readonly Point[],
  celsius: number,
  exposureIndex: number,
  seconds: number,
): number {
  const { least, most } = boundsAt(points, celsius * 10, exposureIndex);
  return Math.max(least, Math.min(most, seconds));
}
