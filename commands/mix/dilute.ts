import { fail, ok, type Result } from "../result.ts";
import { leastMeasuredMl, measurableMl, minusMl, plusMl, type MeasureStep } from "../speech/tenths.ts";
import type { Dilution } from "../../store/shapes/sheet.ts";

/* Dilution either way: V at c+w parts holds V c/(c+w) of concentrate. */

export interface DiluteRequest {
  readonly dilution: Dilution;
  /** Exactly one of these is given, or concentrate and water both, to be checked. ml, to 0.1. */
  readonly totalMl: number | null;
  readonly concentrateMl: number | null;
  readonly waterMl: number | null;
  /** The finest step of the measures at hand; left out: the usual ones. */
  readonly stepMl?: MeasureStep;
}

export interface Diluted {
  /** As they can be measured, to 0.1 ml where it is little; they sum to the total. */
  readonly concentrateMl: number;
  readonly waterMl: number;
  readonly totalMl: number;
  /** Concentrate and water were both given, and agree with the parts. */
  readonly isChecked: boolean;
  /** How much stronger than asked for the amounts are, as a share; below 0: weaker. */
  readonly off: number;
}

export type DiluteFault =
  | { readonly code: "ERR_NOTHING_GIVEN" }
  | {
      readonly code: "ERR_SUM";
      readonly concentrateMl: number;
      readonly waterMl: number;
      readonly totalMl: number;
    }
  | {
      readonly code: "ERR_OTHER_DILUTION";
      readonly asked: Dilution;
      /** Water to one part concentrate in what was given, in tenths. */
      readonly givenTenths: number;
      readonly rightWaterMl: number;
    }
  | { readonly code: "ERR_TOO_LITTLE"; readonly leastTotalMl: number }
  | { readonly code: "ERR_STOCK_HAS_NO_WATER" };

/** Given amounts may differ from the parts by what a measure leaves open. */
const AGREES_WITHIN = 0.03;
const LEAST_SLACK_ML = 0.1;

export function dilute(request: DiluteRequest): Result<Diluted, DiluteFault> {
  const { dilution, totalMl, concentrateMl, waterMl, stepMl = null } = request;
  const { concentrateParts, waterParts } = dilution;
  const parts = concentrateParts + waterParts;
  if (concentrateMl !== null && waterMl !== null) return check(dilution, concentrateMl, waterMl, totalMl);
  if (concentrateMl !== null && totalMl !== null)
    return totalMl < concentrateMl
      ? fail({ code: "ERR_SUM", concentrateMl, waterMl: 0, totalMl })
      : check(dilution, concentrateMl, minusMl(totalMl, concentrateMl), totalMl);
  if (waterMl !== null && totalMl !== null)
    return totalMl <= waterMl
      ? fail({ code: "ERR_SUM", concentrateMl: 0, waterMl, totalMl })
      : check(dilution, minusMl(totalMl, waterMl), waterMl, totalMl);
  if (totalMl !== null) return whole((totalMl * concentrateParts) / parts, totalMl, dilution, stepMl);
  if (concentrateMl !== null)
    return whole(
      concentrateMl,
      Math.round((concentrateMl * parts) / concentrateParts),
      dilution,
      stepMl,
      true,
    );
  if (waterMl === null) return fail({ code: "ERR_NOTHING_GIVEN" });
  if (waterParts === 0) return fail({ code: "ERR_STOCK_HAS_NO_WATER" });
  const concentrate = measurableMl((waterMl * concentrateParts) / waterParts, stepMl);
  return whole(concentrate, plusMl(concentrate, waterMl), dilution, stepMl, true);
}

/** `isGiven`: the concentrate is what it is, and is not measured anew. */
function whole(
  exactMl: number,
  totalMl: number,
  dilution: Dilution,
  stepMl: MeasureStep,
  isGiven = false,
): Result<Diluted, DiluteFault> {
  const { concentrateParts, waterParts } = dilution;
  const parts = concentrateParts + waterParts;
  const concentrateMl = isGiven || waterParts === 0 ? exactMl : measurableMl(exactMl, stepMl);
  const leastMl = isGiven ? leastMeasuredMl() : leastMeasuredMl(stepMl);
  if (concentrateMl < leastMl)
    return fail({
      code: "ERR_TOO_LITTLE",
      leastTotalMl: Math.ceil((leastMl * parts) / concentrateParts),
    });
  const off = (concentrateMl * parts) / (totalMl * concentrateParts) - 1;
  return ok({ concentrateMl, waterMl: minusMl(totalMl, concentrateMl), totalMl, isChecked: false, off });
}

/** One published note gives 5 + 15 for 1+4, which is 1+3: amounts that contradict the parts are refused. */
function check(
  dilution: Dilution,
  concentrateMl: number,
  waterMl: number,
  totalMl: number | null,
): Result<Diluted, DiluteFault> {
  const sum = plusMl(concentrateMl, waterMl);
  if (totalMl !== null && Math.abs(sum - totalMl) > Math.max(1, totalMl * AGREES_WITHIN))
    return fail({ code: "ERR_SUM", concentrateMl, waterMl, totalMl });
  const rightConcentrate =
    (sum * dilution.concentrateParts) / (dilution.concentrateParts + dilution.waterParts);
  const slack = Math.max(LEAST_SLACK_ML, rightConcentrate * AGREES_WITHIN) + 1e-9;
  if (Math.abs(concentrateMl - rightConcentrate) > slack)
    return fail({
      code: "ERR_OTHER_DILUTION",
      asked: dilution,
      givenTenths: Math.round((waterMl / concentrateMl) * 10),
      rightWaterMl: Math.round((concentrateMl * dilution.waterParts) / dilution.concentrateParts),
    });
  return ok({
    concentrateMl,
    waterMl,
    totalMl: sum,
    isChecked: true,
    off: concentrateMl / rightConcentrate - 1,
  });
}
