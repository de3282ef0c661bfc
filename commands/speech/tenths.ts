/*
 * What a class can measure out of a concentrate: with a small syringe to 0.1 ml, with a larger one to 0.5 ml, with a cylinder
 * to 1 ml. Common practice, no source: read your own. Whole ml would make 3 ml of 3.5, seven eighths of the strength.
 */

const BY_SMALL_SYRINGE_ML = 10;
const BY_LARGE_SYRINGE_ML = 25;

/** ml of the finest step that a class's measures show; null: not stated, and the usual ones are taken. */
export type MeasureStep = number | null;

/** The nearest amount that can be measured; never finer than 0.1 ml. */
export function measurableMl(ml: number, stepMl: MeasureStep = null): number {
  const tenths = ml * 10;
  if (stepMl !== null) {
    const stepTenths = Math.round(stepMl * 10);
    return (Math.round(tenths / stepTenths) * stepTenths) / 10;
  }
  if (ml < BY_SMALL_SYRINGE_ML) return Math.round(tenths) / 10;
  return ml < BY_LARGE_SYRINGE_ML ? (Math.round(tenths / 5) * 5) / 10 : Math.round(ml);
}

/** Less than this can't be measured well enough to be the strength that was asked for. */
const LEAST_CONCENTRATE_ML = 0.5;

/** The least that is measured at all: one step of the measures at hand, and never under half a ml. */
export function leastMeasuredMl(stepMl: MeasureStep = null): number {
  return Math.max(LEAST_CONCENTRATE_ML, stepMl ?? 0);
}

/** `a - b` to 0.1 ml, free of what binary fractions leave. */
export function minusMl(a: number, b: number): number {
  return (Math.round(a * 10) - Math.round(b * 10)) / 10;
}

export function plusMl(a: number, b: number): number {
  return (Math.round(a * 10) + Math.round(b * 10)) / 10;
}
