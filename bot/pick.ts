import type { Pace } from "./chat/pace.ts";
import type { Waiting } from "./gather.ts";
import { latestStarts, type Demand } from "./hold.ts";
import { isCue } from "./units.ts";

/* Which messages leave a paced chat now. Pure but for the pace, which counts what is taken. */

export interface Picked {
  readonly leaving: readonly Waiting[];
  /** When more may leave. */
  readonly lookAt: number;
}

/** What is no cue leaves this share of the limit free for cues. */
const SPARE = 0.4;

/**
 * Takes what may leave now, in order of its moment, at most `most`. A cue is held until its moment, and let go ahead of it
 * only as far as the burst it is part of demands. A channel takes one message at a time: `busy` names those that have one.
 */
export function pickPaced(
  waiting: readonly Waiting[],
  ahead: readonly Demand[],
  pace: Pace,
  busy: Set<string>,
  most: number,
  now: number,
): Picked {
  const dues = waiting.filter(({ unit }) => isCue(unit)).map(({ unit }) => unit.dueAt);
  const starts = latestStarts(dues, ahead, pace.perSecond).waiting;
  const leaving: Waiting[] = [];
  let lookAt = Infinity;
  for (const [position, each] of waiting.entries()) {
    if (leaving.length >= most) break;
    const { channel } = each.unit.target;
    // Whatever is under way looks again when it is settled.
    if (busy.has(channel)) continue;
    const heldUntil = starts[position] ?? now;
    const channelFreeAt = pace.channelFreeAt(channel, now);
    if (heldUntil > now || channelFreeAt > now) {
      lookAt = Math.min(lookAt, Math.max(heldUntil, channelFreeAt));
      continue;
    }
    const freeAt = pace.freeAt(now, isCue(each.unit) ? 0 : SPARE);
    if (freeAt > now) return { leaving, lookAt: Math.min(lookAt, freeAt) };
    pace.take(channel, now);
    busy.add(channel);
    leaving.push(each);
  }
  return { leaving, lookAt };
}
