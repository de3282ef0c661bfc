export type CalibrationFault = "ERR_TOO_NEAR_ROOM" | "ERR_WRONG_WAY" | "ERR_NO_CHANGE";

/** A reading nearer to the room than this says nothing about the tank. */
const LEAST_GAP_TENTHS = 15;

/** The tank's time constant from two readings of one undisturbed bath, `seconds` apart. */
export function calibrateTimeConstant(
  firstTenthsC: number,
  secondTenthsC: number,
  roomTenthsC: number,
  seconds: number,
): number | CalibrationFault {
  const gap = firstTenthsC - roomTenthsC;
  const left = secondTenthsC - roomTenthsC;
  if (Math.abs(gap) < LEAST_GAP_TENTHS || left === 0 || Math.sign(left) !== Math.sign(gap))
    return "ERR_TOO_NEAR_ROOM";
  if (firstTenthsC === secondTenthsC) return "ERR_NO_CHANGE";
  if (Math.abs(left) > Math.abs(gap)) return "ERR_WRONG_WAY";
  return Math.round(seconds / Math.log(gap / left));
}
