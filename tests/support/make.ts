import { DEFAULT_HABITS } from "../../store/shapes/usual-habits.ts";
import { type Agitation, type Sheet, sheetSchema } from "../../store/shapes/sheet.ts";
import { type Plan, planSchema, type Step } from "../../store/shapes/plan.ts";
import type { Run } from "../../store/shapes/run.ts";

/* Makers of valid values; a test names only what it is about. All of it is invented. */

export const EACH_MINUTE: Agitation = {
  initialSeconds: 30,
  cycleSeconds: 60,
  burstSeconds: 5,
  manner: "inversion",
  taps: 2,
};

export function aSheet(over: Partial<Sheet> = {}): Sheet {
  return sheetSchema.parse({
    film: "Lantern 400",
    developer: "House MQ",
    dilution: { concentrateParts: 1, waterParts: 1 },
    boxSpeed: 400,
    points: [{ tenthsC: 200, exposureIndex: 400, seconds: 540, source: "invented" }],
    agitation: EACH_MINUTE,
    factorPer10C: null,
    minTenthsC: null,
    maxTenthsC: null,
    minConcentrateMl: null,
    tabularGrain: false,
    source: "invented",
    ...over,
  });
}

export function aStep(over: Partial<Step> = {}): Step {
  return {
    kind: "rinse",
    ordinal: 0,
    seconds: 30,
    agitation: null,
    pourOutSeconds: 0,
    ml: 300,
    concentrateMl: null,
    batch: null,
    basis: [{ kind: "house", rule: "invented" }],
    ...over,
  };
}

/** Develop 9:00, two rinses, fix 5:00, wash 3:00, wetting agent 1:00, dry 20:00, cut. */
export function someSteps(): Step[] {
  return [
    aStep({ kind: "develop", seconds: 540, agitation: EACH_MINUTE, pourOutSeconds: 10 }),
    aStep({ kind: "rinse", ordinal: 1 }),
    aStep({ kind: "rinse", ordinal: 2 }),
    aStep({ kind: "fix", seconds: 300, agitation: EACH_MINUTE, pourOutSeconds: 10 }),
    aStep({ kind: "wash", seconds: 180, ml: null }),
    aStep({ kind: "wetting-agent", seconds: 60 }),
    aStep({ kind: "dry", seconds: 1200, ml: null }),
    aStep({ kind: "cut", seconds: null, ml: null }),
  ];
}

export function aPlan(over: Partial<Plan> = {}): Plan {
  return planSchema.parse({
    sheet: aSheet(),
    exposureIndex: 400,
    tenthsC: 200,
    rolls: 1,
    format: "135",
    frames: 36,
    tank: null,
    volumeMl: 300,
    steps: someSteps(),
    cautions: [],
    strips: [5, 5, 5, 5, 5, 5, 4, 2],
    sheetSeconds: 540,
    ...over,
  });
}

export const START = Date.UTC(2026, 0, 15, 18, 0, 0);

export function aRun(over: Partial<Run> = {}): Run {
  return {
    id: 7,
    number: 7,
    classId: 1,
    personId: "room:mina",
    plan: aPlan(),
    warnSeconds: DEFAULT_HABITS.warnSeconds,
    startedAtMs: START,
    schedule: 0,
    phase: { kind: "waiting", step: 0, sinceMs: START },
    marks: [],
    deviations: [],
    ...over,
  };
}
