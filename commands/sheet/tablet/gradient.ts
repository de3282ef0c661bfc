import type { Strip } from "./readings.ts";

/*
 * What a developed step tablet says. Density against log exposure; between two steps the curve is a straight line, so that no
 * reading is smoothed away. The constructions that average its slope do not agree, so each is named:
 *
 * - triangle: from the speed point, 0.10 over base and fog, 1.30 on in log exposure (ISO 6:1993; 0.80 / 1.30 = 0.615 is its aim);
 * - mean: from the same point, 1.50 on (a British maker's, in a forum);
 * - index: two arcs of 0.2 and 2.2 round a point of the base-and-fog line, where it and both crossings lie on one line (Kodak's
 *   contrast index, as a forum describes its ruler);
 * - gamma: the steepest straight part, three steps or more.
 */

export const SPEED_DENSITY = 0.1;
export const TRIANGLE_LOG = 1.3;
export const MEAN_LOG = 1.5;
const INDEX_ARCS = { inner: 0.2, outer: 2.2 } as const;
/** ISO 6:1993: 0.80 in 1.30. Elsewhere 0.56 to 0.60 by index (US Navy), 0.48 to 0.57 by school: they are not the same number. */
export const ISO_AIM = 0.8 / 1.3;

export interface Measured {
  readonly seconds: number;
  readonly fog: number;
  /** Log exposure from the first step, of the speed point; null: the readings do not reach it. */
  readonly speedLog: number | null;
  readonly triangle: number | null;
  readonly mean: number | null;
  readonly index: number | null;
  readonly gamma: number;
  /** Standard deviation of a reading, by the scatter of neighbours. */
  readonly scatter: number;
  /** Steps (1 is the least exposed) whose reading breaks the line of its neighbours: one bad reading, or a true kink. */
  readonly kinks: readonly number[];
}

/** `stepLog`: log exposure from one step to the next. `fog` null: the least of the readings. */
export function measure({ seconds, densities }: Strip, stepLog: number, fog: number | null): Measured {
  const base = fog ?? Math.min(...densities);
  const speedLog = logAt(densities, stepLog, base + SPEED_DENSITY);
  const over = (log: number): number | null => {
    if (speedLog === null) return null;
    const density = densityAt(densities, stepLog, speedLog + log);
    return density === null ? null : (density - base - SPEED_DENSITY) / log;
  };
  return {
    seconds,
    fog: base,
    speedLog,
    triangle: over(TRIANGLE_LOG),
    mean: over(MEAN_LOG),
    index: contrastIndex(densities, stepLog, base),
    gamma: steepest(densities, stepLog),
    scatter: scatterOf(densities),
    kinks: kinksIn(densities),
  };
}

function densityAt(densities: readonly number[], stepLog: number, log: number): number | null {
  const at = log / stepLog;
  const below = Math.floor(at + 1e-9);
  const [a, b] = [densities[below], densities[below + 1]];
  if (a === undefined || at < -1e-9) return null;
  if (b === undefined) return at - below < 1e-6 ? a : null;
  return a + (at - below) * (b - a);
}

/** The last place where the curve rises through a density, for a toe that wavers. */
function logAt(densities: readonly number[], stepLog: number, density: number): number | null {
  for (let at = densities.length - 2; at >= 0; at -= 1) {
    const [a, b] = [densities[at] ?? 0, densities[at + 1] ?? 0];
    if (a <= density && b > density) return (at + (density - a) / (b - a)) * stepLog;
  }
  return null;
}

function steepest(densities: readonly number[], stepLog: number): number {
  const slopes = densities.slice(2).map((density, at) => (density - (densities[at] ?? 0)) / (2 * stepLog));
  return Math.max(...slopes);
}

/** Where a circle round (`from`, fog) meets the curve, as the angle's slope; null: beyond the readings. */
function slopeOnArc(
  densities: readonly number[],
  stepLog: number,
  fog: number,
  from: number,
  radius: number,
): number | null {
  let [low, high] = [from, from + radius];
  const far = (log: number): number | null => {
    const density = log < 0 ? fog : densityAt(densities, stepLog, log);
    return density === null ? null : Math.hypot(log - from, density - fog);
  };
  const end = Math.min(high, (densities.length - 1) * stepLog);
  const most = far(end);
  if (most === null || most < radius) return null;
  high = end;
  for (let round = 0; round < 50; round += 1) {
    const middle = (low + high) / 2;
    if ((far(middle) ?? Infinity) < radius) low = middle;
    else high = middle;
  }
  const density = low < 0 ? fog : (densityAt(densities, stepLog, low) ?? fog);
  return low - from === 0 ? null : (density - fog) / (low - from);
}

function contrastIndex(densities: readonly number[], stepLog: number, fog: number): number | null {
  const differ = (from: number): { off: number; slope: number } | null => {
    const inner = slopeOnArc(densities, stepLog, fog, from, INDEX_ARCS.inner);
    const outer = slopeOnArc(densities, stepLog, fog, from, INDEX_ARCS.outer);
    return inner === null || outer === null ? null : { off: inner - outer, slope: outer };
  };
  // From the left the inner arc is flatter than the outer; the first place where they agree is the index's.
  const span = (densities.length - 1) * stepLog;
  const step = 0.005;
  for (let from = -INDEX_ARCS.inner; from < span; from += step) {
    const [here, next] = [differ(from), differ(from + step)];
    if (!here || !next) continue;
    if (here.off <= 0 && next.off > 0) {
      const share = here.off / (here.off - next.off);
      return here.slope + share * (next.slope - here.slope);
    }
  }
  return null;
}

/** Half of a reading's distance from the line of its neighbours is its own error, half is theirs: variance 3/2. */
function offsets(densities: readonly number[]): number[] {
  return densities.slice(1, -1).map((density, at) => {
    const [before, after] = [densities[at] ?? 0, densities[at + 2] ?? 0];
    return density - (before + after) / 2;
  });
}

function scatterOf(densities: readonly number[]): number {
  const sorted = offsets(densities)
    .map(Math.abs)
    .toSorted((a, b) => a - b);
  // The median of the absolute offsets, so that a kink and the bend of toe and shoulder do not count as scatter.
  const median = sorted[Math.floor(sorted.length / 2)] ?? 0;
  return median / 0.6745 / Math.sqrt(1.5);
}

/** A reading so far off its neighbours' line is no scatter: densitometers are good to 0.02. */
const KINK = 0.03;

function kinksIn(densities: readonly number[]): number[] {
  return offsets(densities).flatMap((off, at) => (Math.abs(off) > KINK + 1e-9 ? [at + 2] : []));
}

export interface WantedTime {
  readonly seconds: number;
  readonly lowSeconds: number;
  readonly highSeconds: number;
}

/**
 * The time for a wanted gradient by the triangle, between the times that were tried: the gradient is straight in log time. The
 * spread is what the scatter of the readings leaves open. null: the times tried do not bracket it.
 */
export function timeForGradient(measured: readonly Measured[], wanted: number): WantedTime | null {
  const known = measured.flatMap(({ seconds, triangle, scatter }) =>
    triangle === null ? [] : [{ log: Math.log(seconds), triangle, scatter }],
  );
  for (const [at, above] of known.entries()) {
    const below = known[at - 1];
    if (!below || below.triangle > wanted || above.triangle < wanted || above.triangle === below.triangle)
      continue;
    const perGradient = (above.log - below.log) / (above.triangle - below.triangle);
    const log = below.log + (wanted - below.triangle) * perGradient;
    // Both ends of the triangle scatter, and nine in ten lie within 1.645 of the deviation.
    const off = 1.645 * ((Math.SQRT2 * Math.max(above.scatter, below.scatter)) / TRIANGLE_LOG) * perGradient;
    return { seconds: Math.exp(log), lowSeconds: Math.exp(log - off), highSeconds: Math.exp(log + off) };
  }
  return null;
}

/**
 * The exposure index at which the speed point would get what it needs: S = 0.8 / Hm (ISO 6; from memory). `meteredStep` (1 is the
 * least exposed) got what a meter set to `exposureIndex` asks for: 8 / EI in lux seconds, ten times the speed point.
 */
export function effectiveIndex(
  speedLog: number,
  stepLog: number,
  meteredStep: number,
  exposureIndex: number,
): number {
  const meteredLog = (meteredStep - 1) * stepLog;
  const exposure = (8 / exposureIndex) * 10 ** (speedLog - meteredLog);
  return 0.8 / exposure;
}
