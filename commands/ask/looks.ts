import type { Look, LookGroup } from "../roll/looks.ts";
import type { Sign } from "./rules.ts";

/* What is seen on a negative, by what a sentence holds: the first that fits. */

const LOOKS: readonly (readonly [look: Look, ...signs: Sign[]])[] = [
  ["hole-streaks", "STREAKS", "HOLES"],
  ["crescents", "CRESCENT"],
  ["drying-marks", "DRYMARKS"],
  ["round-spots", "SPOTS", "ROUND"],
  ["milky", "MILKY"],
  ["coloured", "COLOURED"],
  ["stained", "STAIN"],
  ["blank", "NOTHING"],
  ["blank", "CLEAR"],
  ["fogged", "FOGGED"],
  ["lines", "SCRATCH"],
  ["thin", "THIN"],
];

/** Null where the words leave it open: a streak or a spot has several kinds, and a dark print comes of a thin negative. */
export function lookOf(signs: ReadonlySet<Sign>): Look | null {
  return LOOKS.find(([, ...needs]) => needs.every((sign) => signs.has(sign)))?.[0] ?? null;
}

/** Where the look is left open: of which kind it is at least; null where that is open, too. */
export function lookGroupOf(signs: ReadonlySet<Sign>): LookGroup | null {
  return (["STREAKS", "SPOTS", "UNEVEN"] as const).some((sign) => signs.has(sign)) ? "marks" : null;
}
