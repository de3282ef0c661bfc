/*
 * The tank follows the room (Newton's law of cooling), and the dose is the integral of the rate of development along
 * the way: dose = ∫ dt / t(T), where t(T) is the time the sheet gives at the temperature of that moment. 1 is the sheet's.
 */

/**
 * Seconds to 63 % of the way to the room, for 300 ml in a tank standing in still air. Our estimate, no source: 300 ml of
 * water hold 1254 J/K; 0.035 m2 of wall at 10 W/m2K lose 0.35 W/K. Measure your own tank with two readings.
 */
export const DEFAULT_TIME_CONSTANT_SECONDS = 3600;
const DEFAULT_FOR_ML = 300;

/** Heat grows with the volume and loss with the wall, so the constant with the cube root. */
export function defaultTimeConstantSeconds(volumeMl: number): number {
  return Math.round(DEFAULT_TIME_CONSTANT_SECONDS * Math.cbrt(volumeMl / DEFAULT_FOR_ML));
}

/** Temperature (°C) against seconds. */
export type Path = (seconds: number) => number;

export function coolingPath(startC: number, roomC: number, timeConstantSeconds: number): Path {
  return (seconds) => roomC + (startC - roomC) * Math.exp(-seconds / timeConstantSeconds);
}

/** Nodes and weights of three-point Gauss-Legendre quadrature on [-1, 1]. */
const NODES = [-Math.sqrt(0.6), 0, Math.sqrt(0.6)] as const;
const WEIGHTS = [5 / 9, 8 / 9, 5 / 9] as const;
/** A panel this short follows the bend at a sheet's point to far better than 0.1 %. */
const PANEL_SECONDS = 45;
const MOST_PANELS = 200;

/** Share of the sheet's dose given between two moments. */
export function doseBetween(
  secondsAt: (celsius: number) => number,
  path: Path,
  from: number,
  to: number,
): number {
  if (to <= from) return 0;
  const panels = Math.min(MOST_PANELS, Math.max(4, Math.ceil((to - from) / PANEL_SECONDS)));
  const half = (to - from) / panels / 2;
  let dose = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    const middle = from + half * (2 * panel + 1);
    for (const [position, node] of NODES.entries()) {
      dose += ((WEIGHTS[position] ?? 0) * half) / secondsAt(path(middle + half * node));
    }
  }
  return dose;
}

/** The moment at which `dose` has been given, counted from 0. Newton's method kept inside a bracket that always holds. */
export function secondsForDose(secondsAt: (celsius: number) => number, path: Path, dose: number): number {
  if (dose <= 0) return 0;
  let low = 0;
  let high = dose * Math.max(secondsAt(path(0)), secondsAt(path(Number.MAX_SAFE_INTEGER)));
  let guess = Math.min(high, dose * secondsAt(path(0)));
  for (let round = 0; round < 60; round += 1) {
    const missing = dose - doseBetween(secondsAt, path, 0, guess);
    if (missing > 0) low = guess;
    else high = guess;
    const step = missing * secondsAt(path(guess));
    if (Math.abs(step) < 0.01) return Math.min(high, Math.max(low, guess + step));
    const next = guess + step;
    guess = next > low && next < high ? next : (low + high) / 2;
  }
  return guess;
}

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
