/*
 * How many requests a chat takes in one second, kept so that it can never count too many, however long each was on its
 * way. A request is counted at the platform somewhere between its leaving and its answer. So it counts here from its
 * leaving until a whole window after the latest instant at which it can have arrived. Of any requests the platform counts
 * in one window, the one that left last found all others counting here; hence they are never more than `count`. Pure.
 */

export interface Allowance {
  /** The earliest instant at which one more may leave; Infinity where only an answer can make room. */
  freeAt(now: number, reserved?: number): number;
  /** One leaves now; the number names it. */
  begin(now: number): number;
  /** It was at the platform by `arrivedBy` at the latest, or was never sent (null). */
  end(ticket: number, arrivedBy: number | null): void;
}

export function createAllowance(count: number, windowMs: number): Allowance {
  const underWay = new Set<number>();
  /** Until when those that were answered still count; ascending. */
  let until: number[] = [];
  let latest = 0;

  function forget(now: number): void {
    // None can count longer than a window from now; one that does dates from before the clock was set back.
    until = until.filter((each) => each > now).map((each) => Math.min(each, now + windowMs));
  }

  return {
    freeAt(now, reserved = 0) {
      forget(now);
      const tooMany = underWay.size + until.length - Math.max(1, count - reserved) + 1;
      return tooMany <= 0 ? now : (until[tooMany - 1] ?? Infinity);
    },
    begin() {
      latest += 1;
      underWay.add(latest);
      return latest;
    },
    end(ticket, arrivedBy) {
      if (!underWay.delete(ticket) || arrivedBy === null) return;
      const end = arrivedBy + windowMs;
      const at = until.findIndex((each) => each > end);
      until.splice(at === -1 ? until.length : at, 0, end);
    },
  };
}

export interface Arrivals {
  /** The latest instant, by this computer's clock, at which the platform had a request it stamped `platformAt`. */
  latestOf(sentAt: number, answeredAt: number, platformAt: number | undefined): number;
}

/** Round trips change, clocks drift: only the newest answers say how far the two clocks are apart. */
const KEPT = 64;
const KEPT_MS = 60_000;
/** Both clocks are told in whole milliseconds. */
const ROUNDING_MS = 2;

/**
 * Learns from answers how far the platform's clock is from this one: never further ahead of its stamp than the quickest
 * answer came. Without a stamp the answer itself is the only bound.
 */
export function createArrivals(): Arrivals {
  let seen: { readonly at: number; readonly sentApart: number; readonly answeredApart: number }[] = [];
  return {
    latestOf(sentAt, answeredAt, platformAt) {
      if (platformAt === undefined) return answeredAt;
      const one = { at: answeredAt, sentApart: sentAt - platformAt, answeredApart: answeredAt - platformAt };
      const isRecent = ({ at }: typeof one): boolean => at <= answeredAt && at > answeredAt - KEPT_MS;
      seen = [...seen.slice(1 - KEPT).filter(isRecent), one];
      const quickest = (): number => Math.min(...seen.map(({ answeredApart }) => answeredApart));
      // Nothing arrives before it was sent: where it seems so, one of the clocks was set.
      if (seen.some(({ sentApart }) => sentApart > quickest() + ROUNDING_MS)) seen = [one];
      return Math.min(answeredAt, platformAt + quickest() + ROUNDING_MS);
    },
  };
}
