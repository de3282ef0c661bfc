import { EXHAUSTED_TIMES } from "../plan/fix.ts";

/*
 * How long a fixer takes to clear film, between tests. A bath is exhausted when its clearing time has doubled (US Navy
 * NAVEDTRA 14209), and by its capacity; so it is taken to grow in a straight line from the fresh time to twice that at
 * capacity, and from then on through each test, never flatter than the tests so far show.
 */

export { EXHAUSTED_TIMES };

export interface Clearing {
  readonly freshSeconds: number;
  /** The latest point known: a test, or the fresh bath. */
  readonly fromSeconds: number;
  readonly fromDensity: number;
  /** Seconds more for each sq in of film in a litre. */
  readonly slope: number;
}

/** `capacity`: sq in in a litre; null: nobody knows, and only tests tell. */
export function freshClearing(seconds: number, capacity: number | null): Clearing {
  const slope = capacity === null ? 0 : seconds / capacity;
  return { freshSeconds: seconds, fromSeconds: seconds, fromDensity: 0, slope };
}

/** Seconds at `density` sq in of film in a litre. */
export function clearingAt(clearing: Clearing, density: number): number {
  return Math.max(
    clearing.freshSeconds,
    clearing.fromSeconds + clearing.slope * (density - clearing.fromDensity),
  );
}

/** A test made at `density`. Where it is the first, the fresh time is worked back from it. */
export function testedClearing(
  before: Clearing | null,
  seconds: number,
  density: number,
  capacity: number | null,
): Clearing {
  if (!before) {
    const share = capacity === null ? 0 : Math.min(1, density / capacity);
    const fresh = freshClearing(seconds / (1 + share), capacity);
    return { ...fresh, fromSeconds: seconds, fromDensity: density };
  }
  const seen = density > 0 ? (seconds - before.freshSeconds) / density : 0;
  const prior = capacity === null ? 0 : before.freshSeconds / capacity;
  return { ...before, fromSeconds: seconds, fromDensity: density, slope: Math.max(prior, seen) };
}

/** After a part of the bath was changed for fresh: `kept` is the old bath's share of the new one. */
export function toppedClearing(clearing: Clearing, density: number, kept: number): Clearing {
  const seconds = clearing.freshSeconds + (clearingAt(clearing, density) - clearing.freshSeconds) * kept;
  return { ...clearing, fromSeconds: seconds, fromDensity: density * kept };
}

export function isCleared(seconds: number, freshSeconds: number): boolean {
  return seconds < EXHAUSTED_TIMES * freshSeconds;
}
