import type { FeedEvent, ToPage, WallRow } from "../room/wire.ts";

/** More than this no page holds; older rolls are found in the log. */
const MOST_EVENTS = 400;

/** What is shown, oldest first, once `fresh` has come from the room. */
export function joinFeed(shown: readonly FeedEvent[], fresh: readonly FeedEvent[]): FeedEvent[] {
  const before = shown.filter(({ id }) => !fresh.some((each) => each.id === id));
  return [...before, ...fresh].sort((a, b) => a.id - b.id).slice(-MOST_EVENTS);
}

/** A line older than this is not sent by itself when the link is back: what it says may be wrong by then. */
const FRESH_LINE_MS = 5000;

export function markStale<Line extends { readonly at: number }>(
  pending: readonly Line[],
  now: number,
): (Line | (Line & { state: "stale" }))[] {
  return pending.map((each) => (now - each.at > FRESH_LINE_MS ? { ...each, state: "stale" } : each));
}

/** The wall after what has changed on it has come. */
export function joinWall(
  shown: readonly WallRow[],
  { order, rows }: Extract<ToPage, { type: "wall" }>,
): WallRow[] {
  const known = new Map([...shown, ...rows].map((row) => [row.run, row]));
  return order.flatMap((run) => known.get(run) ?? []);
}
