import { Agent } from "node:https";
import { setImmediate as turn } from "node:timers/promises";
import { afterEach, beforeEach, expect, test } from "vitest";
import { createPusher, type Pusher } from "../../../../../bot/chat/room/push/pusher.ts";
import { openStores, type OpenedStores } from "../../../../../store/index.ts";
import { START } from "../../../../support/make.ts";

let stores: OpenedStores;
let pusher: Pusher;
/** How often the store was asked to clear what is too late. */
let cleared: number;

beforeEach(() => {
  stores = openStores(":memory:");
  cleared = 0;
  const { pushes } = stores;
  const dropStale = (now: number): number => {
    cleared += 1;
    return pushes.dropStale(now);
  };
  pusher = createPusher({
    stores: { pushes: { ...pushes, dropStale } },
    log: { warn: () => undefined },
    subject: () => "mailto:nobody@example.org",
    agentOf: () => new Agent(),
    now: () => START,
  });
});
afterEach(async () => {
  await pusher.stop();
  stores.close();
});

async function round(): Promise<void> {
  pusher.wake();
  await turn();
  await turn();
}

test("a round in which nothing is owed to any phone writes nothing", async () => {
  await round();
  expect(cleared).toBe(0);
});

test("what has become too late is cleared without being sent", async () => {
  const { id: classId } = stores.classes.add("room:one", "One", "UTC", false, START);
  stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", START);
  stores.rooms.addSession({ classId, personId: "room:mina", tokenHash: "hash", device: "phone" }, START);
  const keys = { endpoint: "https://push.example/1", p256dh: "p", auth: "a" };
  stores.pushes.subscribe({ classId, personId: "room:mina", tokenHash: "hash", ...keys }, START);
  const body = {
    key: "1.1.0f0",
    tag: "c1r1",
    title: "R1",
    text: "Agitate.",
    dueAt: START - 2000,
    language: "en",
  } as const;
  stores.pushes.owe(classId, "room:mina", body, START - 1000, START - 2000);
  expect(stores.pushes.nextAt()).toBe(START - 2000);
  await round();
  expect(cleared).toBe(1);
  expect(stores.pushes.nextAt()).toBeUndefined();
});
