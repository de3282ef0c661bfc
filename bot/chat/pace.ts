import { createDelays } from "./delays.ts";
import { createAllowance, type Allowance } from "./allowance.ts";

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
  /** What can be counted on for long, messages a second: less than the limit, since each counts while it is on its way. */
  readonly perSecond: number;
  /** How long before its moment a message leaves to be there in time. */
  aheadMs(now: number): number;
  /** How long messages take, where leaving early can't make up for it; null otherwise. */
  tooSlowMs(now: number): number | null;
  /** What a message took from its leaving to its acknowledgement, or until it was given up. */
  took(ms: number, now: number): void;
  /** The earliest instant at which a message to any channel may leave, with `spare` of the limit left to others. */
  freeAt(now: number, spare?: number): number;
  /** The earliest instant at which this channel takes one; `now` where it may at once. */
  channelFreeAt(channel: string, now: number): number;
  /** Both together. */
  readyAt(channel: string, now: number): number;
  /** Keeps room for a message to this channel, which leaves now. */
  take(channel: string, now: number): void;
  /** The room kept for a message to this channel, as its request is about to leave; undefined where none was. */
  claim(channel: string): number | undefined;
  /** What was taken for this channel is over: the answer is there, or it was never sent. */
  settle(channel: string, now: number): void;
  /** What the platform said of a channel's limit. */
  learn(
    channel: string,
    told: { readonly remaining: number; readonly resetAfterMs: number },
    now: number,
  ): void;
}

interface Budget {
  readonly left: number;
  readonly resetAt: number;
  readonly setAt: number;
}

/** Channels not written to for this long are forgotten. */
const FORGET_MS = 10 * 60_000;
const FORGET_ABOVE = 5000;
/** The bot's clock leaves steps smaller than a twentieth of a second alone. */
const STEP_MS = 50;
/** A message counts while it is on its way, too: so long where the chat is quick. */
const USUAL_TRIP_MS = 136;

/** `allowance` is shared where other requests count against the same limit; `reserved` is what those wait for. */
export function createPace(
  { perSecond, channelCount, channelWindowMs }: PaceSettings,
  allowance: Allowance = createAllowance(perSecond, 1000),
  reserved: (now: number) => number = () => 0,
): Pace {
  const delays = createDelays();
  let aheadMs = 0;
  const channels = new Map<string, Budget>();
  const taken = new Map<string, number[]>();

  /** A budget written at a clearly later instant dates from before the clock was set back. */
  function budgetOf(channel: string, now: number): Budget | undefined {
    const budget = channels.get(channel);
    return budget && budget.resetAt > now && budget.setAt <= now + STEP_MS ? budget : undefined;
  }

  function forget(now: number): void {
    if (channels.size <= FORGET_ABOVE) return;
    for (const [channel, { resetAt }] of channels) if (resetAt < now - FORGET_MS) channels.delete(channel);
  }

  const freeAt = (now: number, spare = 0): number =>
    allowance.freeAt(now, Math.max(reserved(now), Math.round(perSecond * spare)));
  function channelFreeAt(channel: string, now: number): number {
    const budget = budgetOf(channel, now);
    return budget && budget.left <= 0 ? budget.resetAt : now;
  }
  function claim(channel: string): number | undefined {
    const tickets = taken.get(channel);
    const ticket = tickets?.shift();
    if (tickets?.length === 0) taken.delete(channel);
    return ticket;
  }

  return {
    get perSecond() {
      return Math.max(1, perSecond / (1 + Math.max(USUAL_TRIP_MS, aheadMs) / 1000));
    },
    aheadMs(now) {
      aheadMs = delays.aheadMs(now);
      return aheadMs;
    },
    tooSlowMs: delays.tooSlowMs,
    took: delays.record,
    freeAt,
    channelFreeAt,
    readyAt: (channel, now) => Math.max(channelFreeAt(channel, now), freeAt(now)),
    take(channel, now) {
      taken.set(channel, [...(taken.get(channel) ?? []), allowance.begin(now)]);
      const { left, resetAt } = budgetOf(channel, now) ?? {
        left: channelCount,
        resetAt: now + channelWindowMs,
      };
      channels.set(channel, { left: left - 1, resetAt, setAt: now });
      forget(now);
    },
    claim,
    settle(channel, now) {
      const ticket = claim(channel);
      if (ticket !== undefined) allowance.end(ticket, now);
    },
    learn(channel, { remaining, resetAfterMs }, now) {
      channels.set(channel, { left: remaining, resetAt: now + resetAfterMs, setAt: now });
    },
  };
}
