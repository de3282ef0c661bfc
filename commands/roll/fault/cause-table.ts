import type { CauseCode } from "./cause.en.ts";
import type { Edge, Look, Margin, Extent } from "../looks.ts";

/*
 * Causes of faults. `looks` says how well a cause explains a look, from 1 (may come from it) to 4 (the usual reason).
 * Each link has its source named among the words; the weights are our own judgement, no source.
 */

export interface Cause {
  readonly code: CauseCode;
  readonly looks: Partial<Record<Look, 1 | 2 | 3 | 4>>;
  /** How an answer changes its standing: above 1 speaks for it, below 1 against. */
  readonly edge?: Partial<Record<Edge, number>>;
  readonly margin?: Partial<Record<Margin, number>>;
  readonly place?: Partial<Record<Extent, number>>;
}

export const CAUSES: readonly Cause[] = [
  {
    code: "short-development",
    looks: { thin: 4, flat: 4 },
    edge: { faint: 3, dark: 0.2, none: 0.5 },
  },
  {
    code: "weak-developer",
    looks: { thin: 3, flat: 3, blank: 2, patchy: 1 },
    edge: { faint: 2.5, dark: 0.2, none: 2 },
  },
  {
    code: "under-exposure",
    looks: { thin: 3, flat: 1 },
    edge: { dark: 4, faint: 0.3, none: 0.1 },
  },
  {
    code: "over-development",
    looks: { dense: 3, contrasty: 4 },
    edge: { dark: 1.5, faint: 0.2 },
  },
  {
    code: "over-exposure",
    looks: { dense: 4 },
    edge: { dark: 1, faint: 1.5 },
  },
  {
    code: "not-exposed",
    looks: { blank: 4 },
    edge: { dark: 6, faint: 1, none: 0.05 },
  },
  {
    code: "not-developed",
    looks: { blank: 3 },
    edge: { dark: 0.05, faint: 1, none: 8 },
  },
  {
    code: "short-fixing",
    looks: { milky: 4, coloured: 4, stained: 3 },
    place: { everywhere: 1.5, patches: 0.6 },
  },
  {
    code: "worn-fixer",
    looks: { milky: 4, coloured: 2, stained: 4 },
    place: { everywhere: 1.5, patches: 0.5 },
  },
  {
    code: "short-wash",
    looks: { stained: 2, coloured: 2 },
  },
  {
    code: "film-touched",
    looks: { "blank-patches": 4, milky: 2, coloured: 1, stained: 1 },
    place: { patches: 4, everywhere: 0.1 },
  },
  {
    code: "surge",
    looks: { "hole-streaks": 4 },
  },
  {
    code: "little-agitation",
    looks: { "run-streaks": 4, patchy: 3, "hole-streaks": 1, flat: 1 },
  },
  {
    code: "splash",
    looks: { patchy: 3, "run-streaks": 1, "blank-patches": 2 },
  },
  {
    code: "camera-leak",
    looks: { "edge-streaks": 3, fogged: 2 },
    margin: { clear: 4, grey: 0.3 },
  },
  {
    code: "tank-leak",
    looks: { "edge-streaks": 3, fogged: 4 },
    margin: { clear: 0.2, grey: 4 },
  },
  {
    code: "old-film",
    looks: { fogged: 2, flat: 1, specks: 1 },
    margin: { grey: 2, clear: 0.2 },
  },
  {
    code: "light-in-developer",
    looks: { reversed: 4, fogged: 2 },
    margin: { grey: 2, clear: 0.4 },
  },
  {
    code: "air-bells",
    looks: { "round-spots": 4 },
  },
  {
    code: "dust",
    looks: { specks: 4 },
  },
  {
    code: "kinks",
    looks: { crescents: 4 },
  },
  {
    code: "drying",
    looks: { "drying-marks": 4, patchy: 1 },
  },
  {
    code: "scratches",
    looks: { lines: 4 },
  },
  {
    code: "reticulation",
    looks: { wrinkled: 4 },
  },
  {
    code: "soft-gelatin",
    looks: { frilled: 4, wrinkled: 1 },
  },
];
