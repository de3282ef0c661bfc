import { gradeSchema } from "../../store/shapes/paper.ts";
import { limitsOf } from "../speech/shaped.ts";

/*
 * The range of a negative and what grade prints it: how far the density that is to print as the lightest tone with detail lies
 * over the one that is to print as the darkest, in hundredths of a log unit. That is how papers are measured (ISO 6846, as a
 * handbook has it): the log of the exposures from 0.04 over base and fog to 90 % of the blackest, times 100.
 */

/** From flatter than any paper prints to what no negative has; hundredths. */
export const RANGE = { least: 20, most: 250 } as const;

const GRADES = limitsOf(gradeSchema);

/** One paper of variable contrast by its maker's filters (a page that quotes its data sheet): 180 is soft, 40 hard. */
export const RANGE_BY_FILTER: readonly (readonly [gradeTenths: number, range: number])[] = [
  [-10, 180],
  [0, 160],
  [10, 130],
  [20, 110],
  [30, 90],
  [40, 60],
  [50, 40],
];
export const SOFTEST = 180;
export const HARDEST = 40;

/** The filter for it by that data sheet, to half a grade: straight between two filters. */
export function filterForRange(range: number): number {
  const next = RANGE_BY_FILTER.findIndex(([, each]) => each <= range);
  const [hard, soft] = [RANGE_BY_FILTER[next], RANGE_BY_FILTER[next - 1]];
  if (!hard) return GRADES.most;
  if (!soft) return GRADES.least;
  const share = (soft[1] - range) / (soft[1] - hard[1]);
  return Math.round((soft[0] + share * (hard[0] - soft[0])) / 5) * 5;
}

/** Graded papers as sorted by range: the upper end of 5, 4, 3, 2 and 1; from memory, no source seen. */
const GRADE_UPTO: readonly (readonly [gradeTenths: number, range: number])[] = [
  [50, 65],
  [40, 80],
  [30, 95],
  [20, 115],
  [10, 140],
];

/** The graded paper for it; 0 for the longest. */
export const gradeForRange = (range: number): number => GRADE_UPTO.find(([, most]) => range < most)?.[0] ?? 0;

/** ANSI PH2.2-1966 cut 0.50 to 1.70 into six, 5 to 0 (a handbook); that the six are alike is our reading. */
const OLD = { from: 50, upto: 170, grades: 6 } as const;

/** The grade by that older standard; null where it has none. */
export function oldGradeForRange(range: number): number | null {
  if (range < OLD.from || range > OLD.upto) return null;
  const each = (OLD.upto - OLD.from) / OLD.grades;
  return 10 * Math.max(0, OLD.grades - 1 - Math.floor((range - OLD.from) / each));
}

/** A draft of 1978 put 0.35 to 0.50 as a grade 6; it was dropped with the rest in 1981 (the same handbook). */
export const isDraftGrade6 = (range: number): boolean => range >= 35 && range < OLD.from;

/** What two schools take for the middle of grade 2, from a scene of so many hundredths (7 1/3 stops; 7 stops): forum, 1396476. */
export const MIDDLES = [
  { range: 105, scene: 220 },
  { range: 120, scene: 210 },
] as const;

/** How steep a negative of such a scene is to be developed to have that range. */
export const slopeFor = ({ range, scene }: { readonly range: number; readonly scene: number }): number =>
  range / scene;
