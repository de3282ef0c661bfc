import type { Point, Sheet } from "../../store/shapes/sheet.ts";

/*
 * How far an estimate between two rows may lie off. Calibrated on published tables (tests/commands/sheet/spread.test.ts prints
 * it): rows were taken out of Kodak F-32 part c, of two radiographic tables and of a chart of exposure indexes, and worked
 * out from those around them; nine in ten lie inside. The share of each term is ours; that there is one is not:
 *
 * - Between temperatures what is off is above all the rounding of print. Tables are printed to 15, 30 or 60 s, and the sheet's
 *   own times show to which; a little comes on top with the gap.
 * - Between exposure indexes the published step grows with each stop, so that a straight line in log time lies above what is
 *   published: the lower side of the spread is the wider one. It grows with the gap in stops.
 *
 * At a row there is none.
 */

/** Of the step of print, between two temperatures. */
const PRINT_SHARE = 0.6;
/** Of the time, for each degree between the two rows. */
const PER_DEGREE = 0.0002;
/** Of the time, for each stop between the two rows, half-way between them; above it, so much of that. */
const PER_STOP = 0.045;
const UPPER_SHARE = 0.3;

/** Steps that tables are printed to, seconds. */
const PRINT_STEPS = [60, 30, 15, 10, 5] as const;

export interface Spread {
  readonly low: number;
  readonly high: number;
}

/** Seconds of an estimate's lowest and highest, `seconds` among them; both are `seconds` at a row and beyond the rows. */
export function spreadBetween(sheet: Sheet, tenthsC: number, exposureIndex: number, seconds: number): Spread {
  const rows = rowsAround(sheet.points, exposureIndex);
  const widths = rows.map(({ points }) => widthAt(points, tenthsC, sheet, seconds));
  const warmth = Math.max(0, ...widths);
  const stops = stopsWidth(rows, exposureIndex) * seconds;
  const { least, most } = boundsAt(sheet.points, tenthsC, exposureIndex);
  return {
    low: Math.min(seconds, Math.max(least, seconds - warmth - stops)),
    high: Math.max(seconds, Math.min(most, seconds + warmth + stops * UPPER_SHARE)),
  };
}

/** The longest step that all times of the sheet are whole multiples of. */
function printStep({ points }: Sheet): number {
  return PRINT_STEPS.find((step) => points.every(({ seconds }) => seconds % step === 0)) ?? 1;
}

interface Row {
  readonly exposureIndex: number;
  readonly points: readonly Point[];
}

/** The rows a time at this exposure index comes from: its own, or its two neighbours. */
function rowsAround(points: readonly Point[], exposureIndex: number): Row[] {
  const known = points.map((point) => point.exposureIndex);
  const below = Math.max(...known.filter((index) => index <= exposureIndex));
  const above = Math.min(...known.filter((index) => index >= exposureIndex));
  return [...new Set([below, above])].filter(Number.isFinite).map((index) => ({
    exposureIndex: index,
    points: points.filter((point) => point.exposureIndex === index),
  }));
}

/** Seconds of half a spread between two temperatures of one row; 0 at each of them and beyond. */
function widthAt(points: readonly Point[], tenthsC: number, sheet: Sheet, seconds: number): number {
  const cold = Math.max(...points.map((point) => point.tenthsC).filter((each) => each <= tenthsC));
  const hot = Math.min(...points.map((point) => point.tenthsC).filter((each) => each >= tenthsC));
  if (!Number.isFinite(cold) || !Number.isFinite(hot) || cold === hot) return 0;
  const share = (tenthsC - cold) / (hot - cold);
  const width = PRINT_SHARE * printStep(sheet) + (PER_DEGREE * (hot - cold) * seconds) / 10;
  // Rounding is there all the way between two rows, and fades only next to them.
  return Math.min(1, 8 * share * (1 - share)) * width;
}

/** As a share of the time: widest half-way between two exposure indexes, 0 at each. */
function stopsWidth(rows: readonly Row[], exposureIndex: number): number {
  const [below, above] = rows;
  if (!below || !above) return 0;
  const gap = Math.log2(above.exposureIndex / below.exposureIndex);
  const share = Math.log2(exposureIndex / below.exposureIndex) / gap;
  return 4 * share * (1 - share) * PER_STOP * gap;
}

/** No row that must be shorter (hotter, lower index) is longer than this, and the other way round. */
export function boundsAt(
  points: readonly Point[],
  tenthsC: number,
  exposureIndex: number,
): { least: number; most: number } {
  let most = Infinity;
  let least = 0;
  for (const point of points) {
    if (point.tenthsC <= tenthsC && point.exposureIndex >= exposureIndex)
      most = Math.min(most, point.seconds);
    if (point.tenthsC >= tenthsC && point.exposureIndex <= exposureIndex)
      least = Math.max(least, point.seconds);
  }
  return { least, most };
}
