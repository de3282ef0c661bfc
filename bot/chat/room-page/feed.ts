import type { FeedEvent } from "../room-wire.ts";

/** More than this no page holds; older rolls are found in the log. */
const MOST_EVENTS = 400;

/** What is shown, oldest first, once `fresh` has come from the room: what the page called by itself goes, for the room speaks again. */
export function joinFeed(shown: readonly FeedEvent[], fresh: readonly FeedEvent[]): FeedEvent[] {
  const before = shown.filter(({ id }) => id > 0 && !fresh.some((each) => each.id === id));
  return [...before, ...fresh].sort((a, b) => a.id - b.id).slice(-MOST_EVENTS);
}
