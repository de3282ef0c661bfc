/*
 * Several films in one tank. Makers' smallest correction of contrast is 10 % of the time (Kodak F-4016), so films whose
 * times lie within 10 % of each other can share one: the middle time is then at most 5 % off for each.
 */

export const SHARE_TOLERANCE = 0.1;

/** The time to share, seconds; null where the times lie too far apart. */
export function sharedSeconds(seconds: readonly number[]): number | null {
  return Math.max(...seconds) > Math.min(...seconds) * (1 + SHARE_TOLERANCE) ? null : middleSeconds(seconds);
}

/** Between the shortest and the longest, by the same share from both. */
export function middleSeconds(seconds: readonly number[]): number {
  return Math.sqrt(Math.min(...seconds) * Math.max(...seconds));
}
