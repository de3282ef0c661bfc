import type { Enlarger } from "../../store/shapes/enlarger.ts";
import type { Paper } from "../../store/shapes/paper.ts";

/* Enlargers and papers for tests; all of them invented. */

export const anEnlarger = (over: Partial<Enlarger> = {}): Enlarger => ({
  number: 1,
  name: "Left bench",
  light: "diffuse",
  lensMm: 50,
  timerTenths: 1,
  ...over,
});

export const aPaper = (over: Partial<Paper> = {}): Paper => ({
  number: 1,
  name: "Pier Gloss",
  kind: "resin-coated",
  gradeTenths: null,
  size: { shortMm: 180, longMm: 240 },
  lot: null,
  speed: null,
  dryDownPercent: null,
  filters: [],
  ...over,
});
