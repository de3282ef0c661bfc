import { expect, test } from "vitest";
import { createEarlyRoom } from "../../bot/chat/room/say.ts";
import { openStores } from "../../store/index.ts";
import { makeMessageKey } from "../../store/shapes/message-key.ts";
import { START } from "../support/make.ts";

test("what a page shows is known as on the page, also where it was kept by a key without its moment", () => {
  const stores = openStores(":memory:");
  const classId = stores.classes.add("room:1", "Invented class", "UTC", false, START).id;
  const say = stores.says.add(classId, "everyone", "The bell in ten minutes", START);
  const key = makeMessageKey({ kind: "say", say: say.id, part: 0 });
  const body = { text: "The bell in ten minutes", actions: [], mentions: [], say: { id: say.id } };
  const whose = { key, classId, personId: null, runId: null, priority: 1, dueAt: START, decidedAt: START };
  const isOnPage = (): boolean[] => stores.says.reached(say).map((each) => each.isOnPage);

  stores.outbox.owe({ ...whose, usefulUntil: null, body });
  expect(isOnPage()).toEqual([false]);
  const { text, actions, mentions } = body;
  const where = { classKey: "room:1", channelRef: null, runs: [], pictures: [], attachments: [] };
  createEarlyRoom(stores, () => START).post?.({ ...where, ...whose, text, actions, mentions });
  expect(isOnPage()).toEqual([true]);
  stores.db.prepare("update messages set key = 'd:' || ?").run(key);
  expect(isOnPage()).toEqual([true]);
});
