/*
 * When messages leave a chat that takes only so many a second: as late as can be, so that each comes at its moment, and as
 * early as must be, so that none of a burst is late. Pure.
 */

/** So many messages that are not decided yet fall due at an instant. */
export interface Demand {
  readonly dueAt: number;
  readonly count: number;
}

export interface Starts {
  /** For each message that waits: the latest instant at which it may leave without making a later one late. */
  readonly waiting: readonly number[];
  /** The same for the first message of each demand. */
  readonly ahead: readonly number[];
}

/**
 * The latest starts of messages due at `dues` and of the demand `ahead`, both ascending, at `perSecond`: read from the last
 * one back, each may start when it is due, or one message's time before the next starts, whichever is sooner.
 * Invariant: whoever starts each by its instant, one at a time, is late with none; no instant could be later.
 */
export function latestStarts(dues: readonly number[], ahead: readonly Demand[], perSecond: number): Starts {
  const eachMs = 1000 / perSecond;
  const starts = { waiting: Array<number>(dues.length), ahead: Array<number>(ahead.length) };
  let start = Infinity;
  let at = dues.length - 1;
  for (let next = ahead.length - 1; at >= 0 || next >= 0;) {
    const demand = ahead[next];
    const dueAt = dues[at] ?? -Infinity;
    if (demand && demand.dueAt > dueAt) {
      start = Math.min(demand.dueAt, start - eachMs) - (demand.count - 1) * eachMs;
      starts.ahead[next] = start;
      next -= 1;
    } else {
      start = Math.min(dueAt, start - eachMs);
      starts.waiting[at] = start;
      at -= 1;
    }
  }
  return starts;
}
