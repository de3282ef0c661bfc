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
/**
 * A tank changes fastest at first, so the panels begin at a two-hundredth of the way and grow to a twentieth. Against a
 * general solver of differential equations this is good to far better than 0.1 %.
 */
const FIRST_PANEL = 1 / 200;
const LARGEST_PANEL = 1 / 20;
const PANEL_GROWTH = 1.4;

type SecondsAt = (celsius: number) => number;

/** The dose of one panel. */
function doseOfPanel(secondsAt: SecondsAt, path: Path, from: number, to: number): number {
  const half = (to - from) / 2;
  let dose = 0;
  for (let at = 0; at < NODES.length; at += 1) {
    dose += ((WEIGHTS[at] ?? 0) * half) / secondsAt(path(from + half * (1 + (NODES[at] ?? 0))));
  }
  return dose;
}

/** Share of the sheet's dose given between two moments. */
export function doseBetween(secondsAt: SecondsAt, path: Path, from: number, to: number): number {
  let dose = 0;
  let panel = (to - from) * FIRST_PANEL;
  for (let at = from; at < to;) {
    const end = at + panel >= to - panel / 4 ? to : at + panel;
    dose += doseOfPanel(secondsAt, path, at, end);
    at = end;
    panel = Math.min((to - from) * LARGEST_PANEL, panel * PANEL_GROWTH);
  }
  return dose;
}

/** Less than this is nothing: it is what adding up leaves. */
const LEAST_DOSE = 1e-12;

/** The moment at which `dose` has been given, counted from 0. Goes panel by panel, then closes in on the last one. */
export function secondsForDose(secondsAt: SecondsAt, path: Path, dose: number): number {
  if (dose < LEAST_DOSE) return 0;
  const expected = dose * secondsAt(path(0));
  let panel = expected * FIRST_PANEL;
  let from = 0;
  let missing = dose;
  for (;;) {
    const given = doseOfPanel(secondsAt, path, from, from + panel);
    if (given >= missing) return from + partOfPanel(secondsAt, path, from, panel, missing);
    from += panel;
    missing -= given;
    // Where the tank cools far down, the rest takes longer than was expected: the panels may go on growing with it.
    const largest = Math.max(expected, from) * LARGEST_PANEL;
    panel = Math.min(largest, panel * PANEL_GROWTH);
  }
}

/** Newton's method within a panel; the rate hardly changes there, so a few rounds do. */
function partOfPanel(secondsAt: SecondsAt, path: Path, from: number, panel: number, dose: number): number {
  let part = Math.min(panel, dose * secondsAt(path(from)));
  for (let round = 0; round < 4; round += 1) {
    const off = dose - doseOfPanel(secondsAt, path, from, from + part);
    part = Math.min(panel, Math.max(0, part + off * secondsAt(path(from + part))));
  }
  return part;
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
