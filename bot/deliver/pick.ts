import { LATE_FROM_MS } from "../../commands/run/settle.ts";
import type { Pace } from "../chat/pace.ts";
import type { Outgoing } from "./gather.ts";
import { latestStarts, type Demand } from "./hold.ts";
import { isCall, PRIORITIES } from "../../store/shapes/priority.ts";

/* Which messages leave a paced chat now. Pure but for the pace, which counts what is taken. */

export interface Picked {
  readonly leaving: readonly Outgoing[];
  /** Messages that are of no use any more, since a later one of the same run leaves to the same person before them. */
  readonly overtaken: readonly number[];
  /** When more may leave. */
  readonly lookAt: number;
}

/** What is no cue leaves this share of the limit free for cues, what is late already a little. */
const SPARE = 0.4;
/** What is due meanwhile goes with it, and the platform takes a message a second of one channel. */
const FOLLOWS_MS = 1000;
const GAP = 0.1;

/**
 * Takes what may leave now, in order of its moment, at most `most`. A cue is held until its moment, and let go ahead of it
 * only as far as the burst it is part of demands. A channel takes one message at a time: `busy` names those that have one under
 * way, and since when. In a slow chat the calls of a shared channel would be late for it: there one follows after a while.
 * Where there are too many (the bot was away) those on time go first, and what is late already fills the gaps, so that
 * not everybody is late for ever after; calls to pour out never wait for others.
 */
export function pickPaced(
  waiting: readonly Outgoing[],
  ahead: readonly Demand[],
  pace: Pace,
  busy: Map<string, number>,
  most: number,
  now: number,
): Picked {
  const late = waiting.filter((each) => isTooLate(each, now));
  const onTime = waiting.filter((each) => isCall(each.unit) && !isTooLate(each, now));
  const others = waiting.filter((each) => !isCall(each.unit));
  const starts = latestStarts(
    onTime.map(({ unit }) => unit.dueAt),
    ahead,
    pace.perSecond,
  ).waiting;
  const aheadMs = pace.aheadMs(now);
  const leaving: Outgoing[] = [];
  let lookAt = Infinity;

  const maySharedFollow = ({ unit }: Outgoing): boolean =>
    aheadMs > 0 && unit.target.isShared && isCall(unit);

  /** False where nothing more can leave. */
  function tryEach(
    list: readonly Outgoing[],
    spare: number,
    heldUntil: (position: number) => number,
  ): boolean {
    for (const [position, each] of list.entries()) {
      if (leaving.length >= most) return false;
      const { channel } = each.unit.target;
      const underWaySince = busy.get(channel);
      // Whatever is under way looks again when it is settled.
      if (underWaySince !== undefined && !maySharedFollow(each)) continue;
      const followsAt = underWaySince === undefined ? now : underWaySince + FOLLOWS_MS;
      const channelFreeAt = Math.max(heldUntil(position), followsAt, pace.channelFreeAt(channel, now));
      if (channelFreeAt > now) {
        lookAt = Math.min(lookAt, channelFreeAt);
        continue;
      }
      const freeAt = pace.freeAt(now, spare);
      if (freeAt > now) {
        lookAt = Math.min(lookAt, freeAt);
        return spare > 0;
      }
      pace.take(channel, now);
      busy.set(channel, now);
      leaving.push(each);
    }
    return true;
  }

  const mayGoOn =
    tryEach(onTime, 0, (position) => (starts[position] ?? now) - aheadMs) &&
    // The least late first: they are of most use.
    tryEach(late.toReversed(), GAP, () => now);
  if (mayGoOn) tryEach(others, SPARE, () => now);
  return { leaving, overtaken: listOvertaken(late, leaving), lookAt };
}

function isTooLate({ unit }: Outgoing, now: number): boolean {
  return (
    isCall(unit) &&
    unit.priority > PRIORITIES.bath &&
    !unit.target.isShared &&
    now - unit.dueAt >= LATE_FROM_MS
  );
}

function listOvertaken(late: readonly Outgoing[], leaving: readonly Outgoing[]): number[] {
  const left = new Map(leaving.map(({ unit }) => [unit.target.channel, unit]));
  return late.flatMap(({ unit }) => {
    const next = left.get(unit.target.channel);
    // Who has several tanks is to hear of each.
    const isOfSameRun = unit.runId !== null && unit.runId === next?.runId;
    return isOfSameRun && unit.dueAt < next.dueAt ? unit.ids : [];
  });
}
