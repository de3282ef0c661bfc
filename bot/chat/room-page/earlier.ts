import type { FeedEvent, FromPage } from "../room/wire.ts";
import { joinFeed } from "./feed.ts";

/* The feed before its newest part: fetched a part after the other, so that typing, calls and answers go between them. */

/** What was said before these is found in the log of rolls. */
const MOST_PARTS = 20;
const BETWEEN_MS = 250;

export interface Earlier {
  /** The newest part is here; before the entry `from` there is more, null: there is not. */
  begin(from: number | null): void;
  take(events: readonly FeedEvent[], from: number | null): void;
  /** What was asked for over a link that is lost comes no more. */
  resume(): void;
}

interface Feed {
  readonly events: readonly FeedEvent[];
  readonly isFeedCut: boolean;
}

/** Of the page's store and its link what is needed here. */
interface FeedStore {
  set(change: Partial<Feed> | ((feed: Feed) => Partial<Feed>)): void;
}
interface FeedLink {
  send(message: FromPage): boolean;
}

export function createEarlier(store: FeedStore, link: FeedLink): Earlier {
  let before: number | null = null;
  let parts = 1;
  let asking: ReturnType<typeof setTimeout> | undefined;

  function ask(): void {
    if (before !== null) link.send({ type: "earlier", before });
  }

  function goOn(from: number | null): void {
    clearTimeout(asking);
    const isFull = parts >= MOST_PARTS;
    store.set({ isFeedCut: from !== null && isFull });
    before = isFull ? null : from;
    if (before !== null) asking = setTimeout(ask, BETWEEN_MS);
  }

  return {
    begin(from) {
      parts = 1;
      goOn(from);
    },
    take(events, from) {
      // An answer to what is no longer wanted.
      if (before === null) return;
      parts += 1;
      store.set((state) => ({ events: joinFeed(state.events, events) }));
      goOn(from);
    },
    resume() {
      clearTimeout(asking);
      ask();
    },
  };
}
