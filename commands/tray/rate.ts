/* How a paper developer's time hangs on its temperature. */

/**
 * Where nobody has stated the developer's own: an MQ developer for contact paper, 20 to 40 s at 65 °F and 30 to 60 s at 55 °F
 * (Glover 1924), is 1.5 times in 5.6 °C, 2.07 in 10 °C.
 */
export const HOUSE_FACTOR_PER_10C = 2.07;

/** The time at `toTenthsC` of what takes `seconds` at `fromTenthsC`; not rounded. */
export function timeAt(
  seconds: number,
  fromTenthsC: number,
  toTenthsC: number,
  factorPer10C: number,
): number {
  return seconds * factorPer10C ** ((fromTenthsC - toTenthsC) / 100);
}
