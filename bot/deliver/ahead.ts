import type { Coming } from "../../store/cues.ts";
import type { Stores } from "../../store/index.ts";
import type { ChatPort } from "../chat/port.ts";
import { leastLeadMs } from "../../commands/run/lead.ts";
import { latestStarts, type Demand } from "./hold.ts";

/*
 * What is going to be said. The table of cues tells a minute of it: a chat that takes only so many messages a second
 * begins the earlier, the more is to come.
 */

/** One cycle of agitation: what comes after it comes again. */
const HORIZON_MS = 60_000;
/** Further ahead of its moment nothing is decided, whatever is to come: a countdown any longer is no call. */
const MOST_AHEAD_MS = 10_000;
/** Starts, stops and corrections are seen this soon. */
const LOOK_AGAIN_MS = 1000;
/** A lead grows and shrinks by so much: what is written of each cue changes seldom. */
const LEAD_STEP_MS = 500;

export interface Ahead {
  /** Cues due up to here are decided now, though their own lead is shorter; -Infinity where none has to be. */
  decideUntil(now: number): number;
  /** What is due later than what is decided by `now`, ascending. */
  demand(chat: string, now: number): readonly Demand[];
  /** When the next cue has to be decided ahead of its own lead. */
  nextAt(now: number): number;
}

export function createAhead(stores: Stores, ports: ReadonlyMap<string, ChatPort>): Ahead {
  let lookedAt = -Infinity;
  let coming = new Map<string, readonly Coming[]>();
  let decidedUntil = -Infinity;

  function look(now: number): void {
    if (Math.abs(now - lookedAt) < LOOK_AGAIN_MS) return;
    lookedAt = now;
    decidedUntil = -Infinity;
    coming = new Map();
    for (const [chat, { pace }] of ports) if (pace) setLead(chat, pace.aheadMs(now));
    for (const [chat, { pace }] of ports) {
      if (pace) coming.set(chat, stores.cues.coming(chat, now, now + HORIZON_MS));
    }
  }

  /** What is decided by the cue's own lead, ends of steps above all, must be by then. */
  function setLead(chat: string, aheadMs: number): void {
    const leadMs = aheadMs === 0 ? 0 : Math.ceil(aheadMs / LEAD_STEP_MS) * LEAD_STEP_MS + LEAD_STEP_MS;
    if (leadMs !== stores.cues.leadMs(chat)) stores.cues.setLead(chat, leadMs, leastLeadMs(chat));
  }

  const isOpen =
    (now: number) =>
    ({ decideAt, dueAt }: Coming): boolean =>
      decideAt > now && dueAt > decidedUntil;

  /** Each undecided demand with the instant at which its first message should leave. */
  function* starts(now: number): Generator<Coming & { readonly startAt: number }> {
    for (const [chat, all] of coming) {
      const open = all.filter(isOpen(now));
      const pace = ports.get(chat)?.pace;
      const aheadMs = pace?.aheadMs(now) ?? 0;
      const { ahead } = latestStarts([], open, pace?.perSecond ?? 1);
      for (const [index, each] of open.entries())
        yield { ...each, startAt: (ahead[index] ?? each.dueAt) - aheadMs };
    }
  }

  return {
    decideUntil(now) {
      look(now);
      for (const { dueAt, lastAt, startAt } of starts(now)) {
        if (startAt <= now && dueAt <= now + MOST_AHEAD_MS) decidedUntil = Math.max(decidedUntil, lastAt);
      }
      return decidedUntil;
    },
    demand: (chat, now) => (coming.get(chat) ?? []).filter(isOpen(now)),
    nextAt(now) {
      let nextAt = Infinity;
      for (const { dueAt, startAt } of starts(now))
        nextAt = Math.min(nextAt, Math.max(startAt, dueAt - MOST_AHEAD_MS));
      return nextAt;
    },
  };
}
