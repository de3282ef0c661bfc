import type { Enlarger } from "../../store/shapes/enlarger.ts";
import type { Paper } from "../../store/shapes/paper.ts";
import type { NewPrint } from "../../store/shapes/print.ts";

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

/** A print of Mina's, of which the least is kept. */
export const aPrint = (over: Partial<NewPrint> = {}): NewPrint => ({
  classId: 1,
  personId: "room:mina",
  personName: "Mina",
  roll: null,
  frame: "",
  title: "",
  madeAt: 0,
  note: "",
  body: {
    exposureTenths: 125,
    gradeTenths: 20,
    locals: [],
    apertureTenths: null,
    headMm: null,
    size: null,
    enlarger: null,
    paper: null,
    developer: null,
    developSeconds: null,
    tenthsC: null,
    cause: null,
  },
  ...over,
});
