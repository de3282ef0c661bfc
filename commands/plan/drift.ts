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

/**
 * Nodes and weights of four-point Gauss-Lobatto quadrature on [-1, 1]. Both ends are nodes: a tank warms or cools one way
 * and the sheet's time with it, so nothing can hide between two ends that agree.
 */
const NODES = [-1, -Math.sqrt(1 / 5), Math.sqrt(1 / 5), 1] as const;
const WEIGHTS = [1 / 6, 5 / 6, 5 / 6, 1 / 6] as const;
/**
 * A panel and its two halves may differ by this share of its dose. The halves are good to a sixtieth of that, far below the
 * second a plan is rounded to: an error as large as a second could make a hotter tank's time the longer one.
 */
const TOLERANCE = 1e-9;
/** Across a kink or a jump of the sheet's line panels shrink; at this length (s) what is left of the error is nothing. */
const LEAST_PANEL = 1e-6;
/** The first try, as a share of the way. */
const FIRST_PANEL = 1 / 50;

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

interface Panel {
  readonly length: number;
  readonly dose: number;
  /** How long the next one may try to be. */
  readonly next: number;
}

/** The panel that begins at `from`, as long as it can be within the tolerance, and at most `longest`. */
function takePanel(secondsAt: SecondsAt, path: Path, from: number, longest: number): Panel {
  let length = longest;
  let whole = doseOfPanel(secondsAt, path, from, from + length);
  for (;;) {
    const middle = from + length / 2;
    const first = doseOfPanel(secondsAt, path, from, middle);
    const dose = first + doseOfPanel(secondsAt, path, middle, from + length);
    const off = Math.abs(dose - whole);
    // A panel twice as long would be off some hundred times as far.
    if (off <= TOLERANCE * dose || length < LEAST_PANEL)
      return { length, dose, next: off <= (TOLERANCE / 100) * dose ? 2 * length : length };
    length /= 2;
    whole = first;
  }
}

/** Share of the sheet's dose given between two moments. */
export function doseBetween(secondsAt: SecondsAt, path: Path, from: number, to: number): number {
  let dose = 0;
  let wanted = (to - from) * FIRST_PANEL;
  for (let at = from; at < to;) {
    const panel = takePanel(secondsAt, path, at, Math.min(wanted, to - at));
    dose += panel.dose;
    at = to - at - panel.length < LEAST_PANEL / 2 ? to : at + panel.length;
    wanted = panel.next;
  }
  return dose;
}

/** Less than this is nothing: it is what adding up leaves. */
const LEAST_DOSE = 1e-12;

/**
 * To a tenth of a millisecond, far above what the integral is off by: a time that lies half-way between two seconds is then
 * rounded alike whichever way the tank took to it.
 */
const toTenthOfMs = (seconds: number): number => Math.round(seconds * 1e4) / 1e4;

/** The moment at which `dose` has been given, counted from 0. */
export function secondsForDose(secondsAt: SecondsAt, path: Path, dose: number): number {
  return dose < LEAST_DOSE ? 0 : toTenthOfMs(walkToDose(secondsAt, path, dose));
}

/** Goes panel by panel, then closes in on the last one. */
function walkToDose(secondsAt: SecondsAt, path: Path, dose: number): number {
  let wanted = dose * secondsAt(path(0)) * FIRST_PANEL;
  let from = 0;
  let missing = dose;
  for (;;) {
    const panel = takePanel(secondsAt, path, from, wanted);
    if (panel.dose >= missing) return from + partOfPanel(secondsAt, path, from, panel.length, missing);
    from += panel.length;
    missing -= panel.dose;
    wanted = panel.next;
  }
}

/** Newton's method within a panel; the rate hardly changes there, so a few rounds do. */
function partOfPanel(secondsAt: SecondsAt, path: Path, from: number, panel: number, dose: number): number {
  let part = Math.min(panel, dose * secondsAt(path(from)));
  for (let round = 0; round < 6; round += 1) {
    const off = dose - doseOfPanel(secondsAt, path, from, from + part);
    part = Math.min(panel, Math.max(0, part + off * secondsAt(path(from + part))));
  }
  return part;
}
