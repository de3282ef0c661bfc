/*
 * How fast a chat takes messages. The platform's own limits are kept ahead of time, so that none is ever hit: one for all
 * messages together, one for each channel. What the platform tells of a channel's limit is taken over.
 */

export interface PaceSettings {
  /** Messages a second, all channels together. */
  readonly perSecond: number;
  /** Before the platform has told a channel's own limit: so many in so long. */
  readonly channelCount: number;
  readonly channelWindowMs: number;
}

export interface Pace {
  readonly perSecond: number;
  /** The earliest instant at which a message to this channel may leave; `now` where it may at once. */
  readyAt(channel: string, now: number): number;
  /** A message to this channel leaves now. */
  take(channel: string, now: number): void;
  /** Something else was sent that counts against the common limit. */
  spend(now: number): void;
  /** What the platform said of a channel's limit. */
  learn(
    channel: string,
    told: { readonly remaining: number; readonly resetAfterMs: number },
    now: number,
  ): void;
}

interface Budget {
  left: number;
  resetAt: number;
}

/** Channels not written to for this long are forgotten. */
const FORGET_MS = 10 * 60_000;
const FORGET_ABOVE = 5000;

export function createPace({ perSecond, channelCount, channelWindowMs }: PaceSettings): Pace {
  const channels = new Map<string, Budget>();
  /** The instants of the last `perSecond` messages, the oldest first, as a ring. */
  const recent: number[] = [];
  let oldest = 0;

  function spend(now: number): void {
    if (recent.length < perSecond) recent.push(now);
    else {
      recent[oldest] = now;
      oldest = (oldest + 1) % perSecond;
    }
  }

  function forget(now: number): void {
    if (channels.size <= FORGET_ABOVE) return;
    for (const [channel, { resetAt }] of channels) if (resetAt < now - FORGET_MS) channels.delete(channel);
  }

  return {
    perSecond,
    readyAt(channel, now) {
      const budget = channels.get(channel);
      const byChannel = budget && budget.left <= 0 ? Math.max(now, budget.resetAt) : now;
      // Full only when the oldest of the last `perSecond` is less than a second ago.
      const byAll = recent.length < perSecond ? now : Math.max(now, (recent[oldest] ?? 0) + 1000);
      return Math.max(byChannel, byAll);
    },
    take(channel, now) {
      spend(now);
      const known = channels.get(channel);
      const budget =
        known && known.resetAt > now ? known : { left: channelCount, resetAt: now + channelWindowMs };
      channels.set(channel, { ...budget, left: budget.left - 1 });
      forget(now);
    },
    spend,
    learn(channel, { remaining, resetAfterMs }, now) {
      channels.set(channel, { left: remaining, resetAt: now + resetAfterMs });
    },
  };
}

/**
 * The latest instant at which messages due at `dues` (ascending) may begin to leave at `perSecond`, so that none is late.
 * It is the least of due k less the time the first k take.
 */
export function latestStart(dues: readonly number[], perSecond: number): number {
  const each = 1000 / perSecond;
  return dues.reduce((start, due, position) => Math.min(start, due - position * each), Infinity);
}
