/*
 * Push and pull without published points: a rule of thumb, as a range. The step grows with each stop and depends on
 * film and developer, so a fixed factor per stop would be wrong.
 */

export const PUSH_SOURCE =
  "rule of thumb: published one-stop steps run from no change (Kodak F-4043) to +50 % (Horenstein, as quoted in a class handout)";

interface StopStep {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/**
 * Factor of time for the first, second and third stop above the film's own speed. First: none (Kodak F-4043) to +50 %
 * (Horenstein, as quoted); middle, the median single step of a published chart (DD-X, transcribed). Second and third: a little
 * below the lowest and above the highest published step at that place (1.25 to 1.38; 1.19 to 1.54); how often the spread
 * holds: tests/commands/sheet/rules-spread.test.ts.
 */
const UP: readonly StopStep[] = [
  { low: 1, middle: 1.29, high: 1.5 },
  { low: 1.2, middle: 1.33, high: 1.42 },
  { low: 1.15, middle: 1.45, high: 1.57 },
];
/** Each stop below it, from memory: makers' pull times are a tenth to a third shorter. */
const DOWN: StopStep = { low: 1.1, middle: 1.25, high: 1.5 };

export const MOST_STOPS_UP = UP.length;
export const MOST_STOPS_DOWN = 2;

export interface PushRange {
  readonly lowFactor: number;
  readonly factor: number;
  readonly highFactor: number;
}

/** Factors of time in going from one place to another, both in stops above the film's own speed. */
export function pushRange(fromStops: number, toStops: number): PushRange {
  const [a, b] = fromStops <= toStops ? [fromStops, toStops] : [toStops, fromStops];
  const up = {
    lowFactor: Math.exp(logBetween(a, b, "low")),
    factor: Math.exp(logBetween(a, b, "middle")),
    highFactor: Math.exp(logBetween(a, b, "high")),
  };
  if (fromStops <= toStops) return up;
  return { lowFactor: 1 / up.highFactor, factor: 1 / up.factor, highFactor: 1 / up.lowFactor };
}

function logBetween(from: number, to: number, part: keyof StopStep): number {
  let sum = 0;
  for (let stop = Math.floor(from); stop < to; stop += 1) {
    const step = stop < 0 ? DOWN : (UP[Math.min(stop, UP.length - 1)] ?? DOWN);
    sum += (Math.min(to, stop + 1) - Math.max(from, stop)) * Math.log(step[part]);
  }
  return sum;
}
