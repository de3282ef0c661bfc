import type { Plan } from "../../store/shapes/plan.ts";
import type { PaperSize } from "../../store/shapes/paper.ts";
import { unitsOf } from "../plan/frames.ts";

/*
 * Film area, in whole square inches: the unit capacities are published in is 80 sq in, one 135-36 or one 120 or one
 * 8x10 in; a sheet of 4x5 in is 20 (practitioners' pages; 4 x 5 in is 20 by itself).
 */

export const SQ_IN_PER_ROLL = 80;
const SQ_IN_PER_SQUARE_METRE = 1550.0031;

export interface Load {
  readonly format: Plan["format"];
  readonly films: number;
  /** On each of them; left out: a full one. */
  readonly frames?: number;
  readonly frame?: Plan["frame"];
}

/** sq in of all loads together. */
export function areaOf(loads: readonly Load[]): number {
  return loads.reduce(
    (sum, { format, films, frames, frame }) =>
      sum + Math.round(unitsOf(format, frames, frame) * SQ_IN_PER_ROLL * films),
    0,
  );
}

const MM_PER_INCH = 25.4;

/** Of sheets of paper, rounded for all of them together. */
export function printsSqIn({ shortMm, longMm }: PaperSize, prints: number): number {
  return Math.round((shortMm * longMm * prints) / MM_PER_INCH ** 2);
}

export function fromSquareMetres(squareMetres: number): number {
  return Math.round(squareMetres * SQ_IN_PER_SQUARE_METRE);
}

/** Whole rolls that fit into an area. */
export function rollsIn(sqIn: number): number {
  return Math.max(0, Math.floor(sqIn / SQ_IN_PER_ROLL));
}
