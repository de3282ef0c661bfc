/** How fast one page may speak. */
export interface TypingPace {
  /** `fast`: not this one. `flood`: so far beyond that no person is at the other end. */
  take(nowMs: number): "ok" | "fast" | "flood";
}

/** So many refused in a row and the page is put out. */
const FLOOD_REFUSALS = 200;

/** Lets `atOnce` through at once and then `perSecond` a second. */
export function createTypingPace(perSecond: number, atOnce: number, startMs: number): TypingPace {
  let left = atOnce;
  let lastMs = startMs;
  let refused = 0;
  return {
    take(nowMs) {
      left = Math.min(atOnce, left + (Math.max(0, nowMs - lastMs) / 1000) * perSecond);
      lastMs = nowMs;
      if (left >= 1) {
        left -= 1;
        refused = 0;
        return "ok";
      }
      refused += 1;
      return refused > FLOOD_REFUSALS ? "flood" : "fast";
    },
  };
}
