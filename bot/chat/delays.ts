/*
 * How long a chat takes for a message, from its leaving to its acknowledgement, and by how much messages therefore leave ahead
 * of their moment. One odd message moves nothing, and what is long past is forgotten. Pure.
 */

export interface Delays {
  /** One message took so long, or was given up after so long. */
  record(tookMs: number, now: number): void;
  /** So long before its moment a message leaves, at most `MOST_AHEAD_MS`; 0 where the chat is quick. */
  aheadMs(now: number): number;
  /** How long messages take, where that is more than leaving early can make up for; null otherwise. */
  tooSlowMs(now: number): number | null;
}

/** Further ahead a countdown is no call. */
export const MOST_AHEAD_MS = 8000;
/** Up to here nobody notices. */
const QUICK_MS = 400;
/** Three of four messages are there by then: the answer takes a way, too, so that of all nearly each is. */
const SHARE = 0.75;
const KEPT = 40;
const KEPT_MS = 10 * 60_000;
/** Fewer than these say nothing yet that is worth telling anybody. */
const TELLING = 3;

export function createDelays(): Delays {
  let taken: { readonly tookMs: number; readonly at: number }[] = [];

  /** Instants later than now date from before the clock was set back. */
  function keep(now: number): void {
    taken = taken.filter(({ at }) => at <= now && at > now - KEPT_MS).slice(-KEPT);
  }

  function usualMs(now: number): number {
    keep(now);
    const sorted = taken.map(({ tookMs }) => tookMs).sort((a, b) => a - b);
    return sorted[Math.ceil(sorted.length * SHARE) - 1] ?? 0;
  }

  return {
    record(tookMs, now) {
      taken.push({ tookMs: Math.max(0, tookMs), at: now });
      keep(now);
    },
    aheadMs(now) {
      const ms = usualMs(now);
      return ms <= QUICK_MS ? 0 : Math.min(ms, MOST_AHEAD_MS);
    },
    tooSlowMs(now) {
      const ms = usualMs(now);
      return ms > MOST_AHEAD_MS && taken.length >= TELLING ? ms : null;
    },
  };
}
