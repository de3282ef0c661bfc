import { limitsOf } from "../speech/shaped.ts";
import { gradeSchema, type Paper } from "../../store/shapes/paper.ts";

/*
 * Grades. What filters want beside each other is published in two ways that do not agree: one time for 00 to 3 1/2 and twice
 * it for 4 to 5 (a shop's text on a maker's filters), and 1.22 times from 2 to 1 1/2 with somebody's own light. Equal speed
 * holds near the light the filters were made for, and nowhere else: what a class measured goes before it.
 */

/** From this grade on filters want twice the light, where nobody has measured. */
const DOUBLE_FROM_TENTHS = 40;

/** Light by the published rule beside grade 2, in stops. */
export const ruleOfFilters = (gradeTenths: number): number => (gradeTenths >= DOUBLE_FROM_TENTHS ? 1 : 0);

/** One printer's own light: 2 to 1 1/2 wanted 1.22 times, and 0.82 back. */
export const OWN_LIGHT_FACTOR = 1.22;

export interface FilterLight {
  /** Light wanted beside grade 2, in stops. */
  readonly stops: number;
  readonly basis: "measured" | "rule";
}

/** As measured on this paper, with this enlarger before any other; else by the rule. */
export function filterLight(gradeTenths: number, paper: Paper | null, enlarger: number | null): FilterLight {
  if (gradeTenths === 20) return { stops: 0, basis: paper && paper.filters.length > 0 ? "measured" : "rule" };
  const measured = paper?.filters.filter((each) => each.gradeTenths === gradeTenths) ?? [];
  const own =
    measured.find((each) => each.enlarger === enlarger) ?? measured.find((each) => each.enlarger === null);
  return own
    ? { stops: own.milliStops / 1000, basis: "measured" }
    : { stops: ruleOfFilters(gradeTenths), basis: "rule" };
}

/** From one grade to another; measured only where both ends are. */
export function byGrade(
  from: number,
  to: number,
  paper: Paper | null,
  enlarger: number | null,
): { readonly stops: number; readonly basis: FilterLight["basis"] } {
  const [start, end] = [filterLight(from, paper, enlarger), filterLight(to, paper, enlarger)];
  if (start.basis === "measured" && end.basis === "measured")
    return { stops: end.stops - start.stops, basis: "measured" };
  return { stops: ruleOfFilters(to) - ruleOfFilters(from), basis: "rule" };
}

const LIMITS = limitsOf(gradeSchema);

/** A grade so much harder, within those there are. The step from 00 to 0 counts as one. */
export const harderBy = (gradeTenths: number, tenths: number): number =>
  Math.min(LIMITS.most, Math.max(LIMITS.least, gradeTenths + tenths));
