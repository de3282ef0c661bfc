import type { Habits } from "../../store/shapes/school.ts";
import { judgeAgitation } from "../sheet/agitation.ts";
import { EXHAUSTED_TIMES, LONG_FIX_SECONDS, USUAL_CLEARING_SECONDS } from "./fix.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import type { PlanRequest } from "./request.ts";
import type { Parts } from "./steps.ts";
import { betterTemperature, COOL_TENTHS_C, SHORT_SECONDS, WARM_TENTHS_C } from "../sheet/suggest.ts";
import { splitVolume, strengthOff, usualMl, volumeForConcentrate } from "./volume.ts";
import { largestStepTenths, RETICULATION_LOOSE_TENTHS, RETICULATION_TENTHS } from "./wash.ts";

/* What a plan warns of. The sentences are in reply.ts. */

type Caution = Plan["cautions"][number];

/** A drift worth a word: what a thermometer read to half a degree already leaves open. */
const DRIFT_PERCENT = 3;
/** Wash water: 60 to 75 °F (a photographer's page; US Army SS0509-8 has 68 to 75 °F for solutions). */
const WATER_MIN_TENTHS = 156;
const WATER_MAX_TENTHS = 239;

/** A strength off by more than this is worth a word: it changes the time by about as much. */
export const STRENGTH_TOLERANCE = 0.02;

export function cautionsFor(request: PlanRequest, habits: Habits, parts: Parts): Caution[] {
  return [
    ...tankCautions(request),
    ...bathCautions(request, parts),
    ...developCautions(request, habits, parts),
    { code: "NOTE_CHEMICALS", detail: {} },
  ];
}

function tankCautions({ tank }: PlanRequest): Caution[] {
  if (!tank?.condition) return [];
  return [{ code: "WARN_TANK_LEAKS", detail: { tank: tank.number, condition: tank.condition } }];
}

function developCautions(request: PlanRequest, habits: Habits, { development, volumeMl }: Parts): Caution[] {
  const { sheet, tenthsC } = request;
  const found: Caution[] = [];
  const { seconds } = development;
  if (seconds < SHORT_SECONDS) {
    const room = request.roomTenthsC ?? habits.roomTenthsC;
    const better = betterTemperature(sheet, tenthsC, development.secondsAt, room);
    found.push({
      code: "WARN_SHORT_TIME",
      detail: better
        ? {
            seconds,
            betterTenthsC: better.tenthsC,
            betterSeconds: better.seconds,
            ...(better.waterTenthsC === null ? {} : { waterTenthsC: better.waterTenthsC, roomTenthsC: room }),
          }
        : { seconds },
    });
  }
  if (tenthsC < COOL_TENTHS_C) found.push({ code: "WARN_COOL", detail: { tenthsC } });
  if (tenthsC > WARM_TENTHS_C) found.push({ code: "WARN_WARM", detail: { tenthsC } });
  for (const basis of development.basis) {
    if (basis.kind === "one-point" || basis.kind === "beyond")
      found.push({ code: "WARN_ONE_POINT", detail: { factorPer10C: basis.factorPer10C, kind: basis.kind } });
  }
  if (development.isPushed) found.push({ code: "WARN_RULE_OF_THUMB", detail: { ...development.spread } });
  if (development.agitationSeconds !== 0)
    found.push({ code: "WARN_OTHER_AGITATION", detail: { seconds: development.agitationSeconds } });
  const fault = judgeAgitation(development.agitation);
  if (fault) found.push({ code: "WARN_AGITATION", detail: { fault } });
  if (development.drift && Math.abs(development.driftSeconds) * 100 >= DRIFT_PERCENT * seconds)
    found.push({
      code: "WARN_DRIFT",
      detail: { seconds: development.driftSeconds, roomTenthsC: development.drift.roomTenthsC },
    });
  if (request.others.length > 0)
    found.push({ code: "WARN_SHARED_TANK", detail: { percent: development.sharedOffPercent } });
  const off = strengthOff(volumeMl, sheet.dilution, habits.measureStepMl);
  if (Math.abs(off) > STRENGTH_TOLERANCE)
    found.push({ code: "WARN_STRENGTH", detail: { percent: Math.round(off * 100) } });
  if (!request.tank && volumeMl < usualMl(request.format, request.rolls))
    found.push({ code: "WARN_COVERED", detail: { volumeMl } });
  for (const { label, ml } of request.shortBottles)
    found.push({ code: "WARN_BOTTLE_SHORT", detail: { label, ml, volumeMl } });
  const enoughMl = volumeForConcentrate(sheet, request.format, request.rolls);
  if (enoughMl !== null && enoughMl > volumeMl) {
    const { concentrateMl } = splitVolume(volumeMl, sheet.dilution, habits.measureStepMl);
    const neededMl = splitVolume(enoughMl, sheet.dilution, habits.measureStepMl).concentrateMl;
    found.push({ code: "WARN_LITTLE_CONCENTRATE", detail: { concentrateMl, neededMl, enoughMl } });
  }
  return found;
}

/** Twice the fresh clearing time is the end of a fixer; where that is not known, the usual range of a fresh one tells. */
function wornFixer({ clearingSeconds, freshClearingSeconds }: PlanRequest, seconds: number): Caution[] {
  if (clearingSeconds === null) return [];
  if (freshClearingSeconds === null)
    return clearingSeconds > USUAL_CLEARING_SECONDS
      ? [{ code: "WARN_SLOW_FIXER", detail: { clearingSeconds, seconds } }]
      : [];
  if (clearingSeconds < EXHAUSTED_TIMES * freshClearingSeconds) return [];
  return [
    { code: "WARN_WORN_FIXER", detail: { clearingSeconds, freshSeconds: freshClearingSeconds, seconds } },
  ];
}

function bathCautions(request: PlanRequest, { fix }: Parts): Caution[] {
  const found: Caution[] = wornFixer(request, fix.seconds);
  if (fix.isLong)
    found.push({ code: "WARN_LONG_FIX", detail: { seconds: fix.seconds, mostSeconds: LONG_FIX_SECONDS } });
  const water = request.waterTenthsC ?? request.tenthsC;
  if (request.waterTenthsC !== null && (water < WATER_MIN_TENTHS || water > WATER_MAX_TENTHS))
    found.push({ code: "WARN_WATER_TEMPERATURE", detail: { tenthsC: water } });
  const baths = [request.tenthsC, water, request.fixTenthsC ?? request.tenthsC, water];
  const stepTenths = largestStepTenths(baths);
  if (stepTenths > RETICULATION_TENTHS)
    found.push({
      code: "WARN_RETICULATION",
      detail: { stepTenths, limitTenths: RETICULATION_TENTHS, looseLimitTenths: RETICULATION_LOOSE_TENTHS },
    });
  return found;
}
