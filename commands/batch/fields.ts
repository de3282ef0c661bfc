import type { FieldValue } from "../define.ts";
import { makeDilution } from "../../store/shapes/sheet.ts";
import type { Batch } from "../../store/shapes/batch.ts";
import { labelOf } from "./batch-words.ts";
import type { BatchState } from "./state.ts";

/** A batch's facts as data, each with its unit. */
export function fieldsOf(batch: Batch, state: BatchState): { [key: string]: FieldValue } {
  return {
    batch: labelOf(batch),
    kind: batch.kind,
    product: batch.product,
    dilution: makeDilution(batch.dilution),
    usage: batch.usage,
    standing: state.standing,
    exhaustedBy: state.exhaustedBy,
    mixedAtMs: batch.mixedAtMs,
    expiresAtMs: state.expiresAtMs,
    volumeMl: state.volumeMl,
    usedMl: state.usedMl,
    usedSqIn: state.usedSqIn,
    films: state.films,
    strengthPercent: Math.round(state.strength * 100),
    carriedInMl: state.carriedInMl,
    carriedOutMl: state.carriedOutMl,
    replenishMl: state.replenishMl,
    capacitySqIn: state.capacitySqIn === null ? null : Math.round(state.capacitySqIn),
    leftSqIn: state.leftSqIn,
    leftRolls: state.leftRolls,
    usedPercent: state.usedPercent === null ? null : Math.round(state.usedPercent),
    freshClearingSeconds: state.clearing === null ? null : Math.round(state.clearing.freshSeconds),
    testedClearingSeconds: state.testedSeconds,
    predictedClearingSeconds: state.predictedSeconds === null ? null : Math.round(state.predictedSeconds),
    phTenths: state.phTenths,
    silverMgPerLitre: state.silverMgPerLitre,
    topUps: state.topUps,
  };
}
