import type { Habits } from "../../store/shapes/school.ts";
import { FIXER_AGITATION, NO_REST } from "../sheet/agitation.ts";
import type { Development } from "./develop.ts";
import { inEachBath, TWO_BATH_BASIS, type FixTime } from "./fix.ts";
import type { Basis } from "../../store/shapes/sheet.ts";
import { BARE_STEP, type Step, type StepKind } from "../../store/shapes/plan.ts";
import { bathKeyOf, type PlanRequest } from "./request.ts";
import { splitVolume } from "./volume.ts";
import { AID_SECONDS, BEFORE_AID_SECONDS, type WashTime } from "./wash.ts";

/* The steps of a plan, in order. */

/** Acid halts development in about 15 s, running water in about 30 s: Anchell, The Darkroom Cookbook, 3rd ed. */
const STOP_SECONDS = 30;
const STOP_BASIS: Basis = {
  kind: "rule",
  rule: "an acid stop works for 30 to 60 s",
  source: "US Army SS0509-8",
};
const RINSE_BASIS: readonly Basis[] = [
  { kind: "house", rule: "two fills of water in place of a stop bath" },
  {
    kind: "rule",
    rule: "running water halts development in about 30 s",
    source: "Anchell, The Darkroom Cookbook, 3rd ed.",
  },
];
const AID_BASIS: Basis = { kind: "rule", rule: "rinse 30 s, wash aid 2 min", source: "US Army SS0509-8" };

export interface Parts {
  readonly volumeMl: number;
  readonly development: Development;
  readonly fix: FixTime;
  readonly wash: WashTime;
  readonly hasAid: boolean;
}

export function layOutSteps(request: PlanRequest, habits: Habits, parts: Parts): Step[] {
  return [
    developStep(request, habits, parts),
    ...haltSteps(request, habits, parts.volumeMl),
    ...fixSteps(habits, parts),
    ...washSteps(parts),
    aStep("wetting-agent", habits.wettingSeconds, [house("wetting agent, the class's time")], {
      ml: parts.volumeMl,
    }),
    aStep("dry", habits.drySeconds, [house("drying, the class's time")]),
    aStep("cut", null, [house("strips that fit the class's sleeves: common practice, no source")]),
  ].map((step) => ({ ...step, batch: request.batches[bathKeyOf(step)] ?? null }));
}

function house(rule: string): Basis {
  return { kind: "house", rule };
}

function aStep(
  kind: StepKind,
  seconds: number | null,
  basis: readonly Basis[],
  more: Partial<Step> = {},
): Step {
  return { ...BARE_STEP, kind, seconds, basis: [...basis], ...more };
}

function developStep({ sheet }: PlanRequest, habits: Habits, { development, volumeMl }: Parts): Step {
  const { concentrateMl } = splitVolume(volumeMl, sheet.dilution, habits.measureStepMl);
  return aStep("develop", development.seconds, development.basis, {
    agitation: development.agitation,
    // A time shorter than the pouring leaves nothing to pour by.
    pourOutSeconds: habits.pourOutSeconds < development.seconds ? habits.pourOutSeconds : 0,
    ml: volumeMl,
    concentrateMl,
  });
}

function haltSteps(request: PlanRequest, habits: Habits, ml: number): Step[] {
  if ((request.stop ?? habits.stop) === "acid")
    return [aStep("stop", STOP_SECONDS, [STOP_BASIS], { agitation: NO_REST, ml })];
  return [1, 2].map((ordinal) =>
    aStep("rinse", STOP_SECONDS, RINSE_BASIS, { ordinal, agitation: NO_REST, ml }),
  );
}

function fixSteps({ fixBaths }: Habits, { fix, volumeMl }: Parts): Step[] {
  const bath = { agitation: FIXER_AGITATION, ml: volumeMl };
  if (fixBaths === 1) return [aStep("fix", fix.seconds, fix.basis, bath)];
  return [1, 2].map((ordinal) =>
    aStep("fix", inEachBath(fix.seconds, fixBaths), [...fix.basis, TWO_BATH_BASIS], { ...bath, ordinal }),
  );
}

function washSteps({ wash, hasAid, volumeMl }: Parts): Step[] {
  const fills = wash.changes === null ? {} : { changes: wash.changes, ml: volumeMl };
  if (!hasAid) return [aStep("wash", wash.seconds, wash.basis, fills)];
  return [
    aStep("wash", BEFORE_AID_SECONDS, [AID_BASIS], { ordinal: 1 }),
    aStep("wash-aid", AID_SECONDS, [AID_BASIS], { agitation: NO_REST, ml: volumeMl }),
    aStep("wash", wash.seconds, wash.basis, { ordinal: 2, ...fills }),
  ];
}
