import type { PaperRule } from "../../store/shapes/paper.ts";
import { BARE_STEP, type Step, type StepKind } from "../../store/shapes/plan.ts";
import type { Agitation } from "../../store/shapes/sheet.ts";
import { coldWashFactor } from "../plan/wash.ts";
import { NO_REST } from "../sheet/agitation.ts";
import type { PrintDevelopment } from "./develop.ts";
import type { TrayRequest } from "./request.ts";

/* The steps of prints along a line of trays, in order. */

/** Between 5 s and 1 min as published (the rule tells which); a class page has 30 s. */
const STOP_SECONDS = 30;
/** Resin-coated paper: 30 s in strong fixer (from memory), at most 2 min (a practitioner's page). */
const FIX_RC_SECONDS = 60;
const FIX_RC_STRONG_SECONDS = 30;
const FIX_RC_MOST_SECONDS = 120;
/** Fibre: 5 to 10 min in one bath, 3 to 5 in each of two (a practitioner's page). */
const FIX_FIBRE_SECONDS = 300;
const FIX_EACH_OF_TWO_SECONDS = 180;
/** Strong rapid fixer, fibre: Anchell, The Darkroom Cookbook, 3rd ed., p. 107. */
const FIX_STRONG_SECONDS = 60;
/** The class's own strip: twice the first clear patch, never under a minute (Lambrecht). */
const STRIP_TIMES = 2;
const STRIP_LEAST_SECONDS = 60;
/** A class page: 5 min, begun again with each print that comes in; others say 2 to 20. */
const WASH_RC_SECONDS = 300;
/** Fibre without a wash aid: what stays flattens out at about an hour (measured, a printer's page). */
const WASH_FIBRE_SECONDS = 3600;
/** With it, after a short fix: 5, 10 and 5 min (a maker, as quoted). */
const WASH_BEFORE_AID_SECONDS = 300;
const AID_SECONDS = 600;
const WASH_AFTER_AID_SECONDS = 300;

/** Two baths, moved 30 s in each minute: Anchell, p. 107. */
const EACH_MINUTE: Agitation = {
  initialSeconds: 30,
  cycleSeconds: 60,
  burstSeconds: 30,
  manner: "inversion",
  taps: 0,
};

export function layOutTrays(request: TrayRequest, development: PrintDevelopment): Step[] {
  return [
    aStep("develop", development.seconds, development.rules, { agitation: NO_REST }, request),
    request.line.stop === "acid"
      ? aStep("stop", STOP_SECONDS, ["acid-stop"], { agitation: NO_REST }, request)
      : aStep("rinse", STOP_SECONDS, ["water-stop"], { agitation: NO_REST }, request),
    ...fixSteps(request),
    ...washSteps(request),
    aStep("dry", null, ["lay-to-dry"], {}, request),
  ];
}

function aStep(
  kind: StepKind,
  seconds: number | null,
  rules: readonly PaperRule[],
  more: Partial<Step>,
  { line: { drainSeconds } }: TrayRequest,
): Step {
  const isLifted = seconds !== null && more.agitation !== undefined && drainSeconds * 2 < seconds;
  // Told once, where it matters most.
  const all: readonly PaperRule[] = isLifted && kind === "develop" ? [...rules, "drain"] : rules;
  return {
    ...BARE_STEP,
    kind,
    medium: "paper",
    seconds,
    pourOutSeconds: isLifted ? drainSeconds : 0,
    basis: all.map((rule) => ({ kind: "paper", rule })),
    ...more,
  };
}

function fixSteps(request: TrayRequest): Step[] {
  const { seconds, rule } = fixTimeOf(request);
  if (request.baths === 1) return [aStep("fix", seconds, [rule], { agitation: NO_REST }, request)];
  return [1, 2].map((ordinal) => aStep("fix", seconds, [rule], { ordinal, agitation: EACH_MINUTE }, request));
}

/** In each bath. */
function fixTimeOf({ paper, fixer, baths, clearSeconds }: TrayRequest): { seconds: number; rule: PaperRule } {
  if (clearSeconds !== null) {
    const tried = Math.max(STRIP_LEAST_SECONDS, STRIP_TIMES * clearSeconds);
    const most = paper === "fibre" ? Infinity : FIX_RC_MOST_SECONDS;
    return { seconds: Math.min(most, tried), rule: "fix-strip" };
  }
  if (paper !== "fibre")
    return { seconds: fixer === "strong" ? FIX_RC_STRONG_SECONDS : FIX_RC_SECONDS, rule: "fix-rc" };
  if (fixer === "strong") return { seconds: FIX_STRONG_SECONDS, rule: "fix-strong" };
  return baths === 2
    ? { seconds: FIX_EACH_OF_TWO_SECONDS, rule: "fix-two" }
    : { seconds: FIX_FIBRE_SECONDS, rule: "fix-fibre" };
}

function washSteps(request: TrayRequest): Step[] {
  const { paper, washAid, waterTenthsC } = request;
  const cold = waterTenthsC === null ? 1 : coldWashFactor(waterTenthsC);
  const wash = (seconds: number, rule: PaperRule, ordinal = 0): Step =>
    aStep("wash", Math.ceil(seconds * cold), cold > 1 ? [rule, "wash-cold"] : [rule], { ordinal }, request);
  if (paper !== "fibre") return [wash(WASH_RC_SECONDS, "wash-rc")];
  if (!washAid) return [wash(WASH_FIBRE_SECONDS, "wash-fibre")];
  return [
    wash(WASH_BEFORE_AID_SECONDS, "wash-aid", 1),
    aStep("wash-aid", AID_SECONDS, ["wash-aid"], { agitation: NO_REST }, request),
    wash(WASH_AFTER_AID_SECONDS, "wash-aid", 2),
  ];
}
