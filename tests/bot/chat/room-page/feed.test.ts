import { expect, test, vi } from "vitest";
import type { FeedEvent, FromPage } from "../../../../bot/chat/room/wire.ts";
import { createEarlier } from "../../../../bot/chat/room-page/earlier.ts";
import { joinFeed, joinWall } from "../../../../bot/chat/room-page/feed.ts";
import { viewOf } from "../../../../commands/run/view.ts";
import { aRun } from "../../../support/make.ts";

const event = (id: number): FeedEvent => ({ id }) as FeedEvent;
const idsOf = (events: readonly FeedEvent[]): number[] => events.map(({ id }) => id);

test("a feed is in order and holds each entry once, whichever part of it comes first", () => {
  expect(idsOf(joinFeed([event(5), event(7)], [event(2), event(5), event(6)]))).toEqual([2, 5, 6, 7]);
});

test("the wall after a change has the runs that are left, in order, each as it was told last", () => {
  const row = (run: number, owner: string) => viewOf(aRun({ number: run }), owner);
  const shown = [row(1, "Mina"), row(2, "Jo"), row(3, "Kim")];
  const next = joinWall(shown, { type: "wall", order: [4, 3, 1], rows: [row(4, "Ada"), row(1, "Mina M")] });
  expect(next.map(({ run, owner }) => [run, owner])).toEqual([
    [4, "Ada"],
    [3, "Kim"],
    [1, "Mina M"],
  ]);
  expect(next[1]).toBe(shown[2]);
});

test("earlier parts are asked for one by one, again after a lost link, and no further than a page shows", () => {
  vi.useFakeTimers();
  const asked: FromPage[] = [];
  let isLinked = true;
  let feed = { events: [event(1000)] as readonly FeedEvent[], isFeedCut: false };
  const earlier = createEarlier(
    { set: (change) => void (feed = { ...feed, ...(typeof change === "function" ? change(feed) : change) }) },
    { send: (message) => isLinked && asked.push(message) > 0 },
  );
  earlier.begin(1000);
  vi.runAllTimers();
  expect(asked).toEqual([{ type: "earlier", before: 1000 }]);

  isLinked = false;
  earlier.take([event(990)], 990);
  vi.runAllTimers();
  expect(asked).toHaveLength(1);
  isLinked = true;
  earlier.resume();
  expect(asked[1]).toEqual({ type: "earlier", before: 990 });

  for (let id = 980; asked.length < 30 && id > 0; id -= 10) {
    earlier.take([event(id)], id);
    vi.runAllTimers();
  }
  expect(asked).toHaveLength(19);
  expect(feed.isFeedCut).toBe(true);
  expect(idsOf(feed.events)).toEqual(Array.from({ length: 20 }, (_, at) => 810 + 10 * at));
  vi.useRealTimers();
});
