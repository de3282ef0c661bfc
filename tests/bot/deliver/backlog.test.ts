import { beforeEach, expect, test } from "vitest";
import { createPace } from "../../../bot/chat/pace.ts";
import type { ChatPort, Delivery } from "../../../bot/chat/port.ts";
import { createDeliverer, type Deliverer } from "../../../bot/deliver/deliver.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createFakeClock, type FakeClock } from "../../support/clock.ts";
import { aRun, START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

/* A chat that can't take at once what has piled up while the bot was away. */

let stores: OpenedStores;
let clock: FakeClock;
let deliverer: Deliverer;
let said: Delivery[];
let classId: number;

beforeEach(() => {
  stores = openStores(":memory:");
  clock = createFakeClock();
  said = [];
  classId = stores.classes.add("discord:1", "Invented class", "UTC", false, START).id;
  const port: ChatPort = {
    chat: "discord",
    start: async () => {},
    async send(delivery) {
      said.push(delivery);
      return { kind: "sent", ref: "m" };
    },
    pace: createPace({ perSecond: 10, channelCount: 5, channelWindowMs: 5000 }),
    targetOf: (personId) => ({ channel: personId ?? "class", isShared: personId === null }),
    stop: async () => {},
  };
  const ports = new Map([["discord", port]]);
  deliverer = createDeliverer({ stores, clock, log: createMemoryLog(), ports, onOutcome: () => {} });
});

function owe(key: string, dueAt: number, over = {}): void {
  stores.outbox.owe({
    key,
    classId,
    personId: `discord:${key}`,
    runId: null,
    priority: 1,
    dueAt,
    decidedAt: clock.now(),
    usefulUntil: null,
    body: { text: "Agitate.", actions: [], mentions: [] },
    ...over,
  });
}

function addRun(): number {
  const { id: _id, number: _number, ...draft } = aRun({ classId, personId: "discord:mina" });
  return stores.runs.add(draft).id;
}

async function pump(): Promise<void> {
  deliverer.pump();
  await deliverer.drain(1000);
}

test("those on time go first, what is late already fills the gaps, the least late of it first", async () => {
  for (let number = 1; number <= 20; number += 1) owe(`late${number}`, START - 60_000 + number * 1000);
  for (let number = 1; number <= 6; number += 1) owe(`now${number}`, START);
  await pump();
  expect(said.map(({ key }) => key)).toEqual([
    "now1",
    "now2",
    "now3",
    "now4",
    "now5",
    "now6",
    "late20",
    "late19",
    "late18",
  ]);
});

test("a call to pour out never waits for others, however late it is", async () => {
  for (let number = 1; number <= 12; number += 1) owe(`now${number}`, START);
  owe("pour", START - 30_000, { priority: 0 });
  await pump();
  expect(said[0]?.key).toBe("pour");
});

test("what the next call of its run has overtaken is not said after it", async () => {
  const runId = addRun();
  owe("old", START - 20_000, { personId: "discord:mina", runId, usefulUntil: START + 1000 });
  owe("new", START, { personId: "discord:mina", runId });
  await pump();
  await pump();
  expect(said.map(({ key }) => key)).toEqual(["new"]);
  expect(stores.outbox.findByKey("old")?.state).toBe("stale");
});

test("who has two tanks hears of both, however late one of them is", async () => {
  const [first, second] = [addRun(), addRun()];
  owe("old", START - 20_000, { personId: "discord:mina", runId: first, usefulUntil: START + 1000 });
  owe("new", START, { personId: "discord:mina", runId: second });
  owe("word", START - 10_000, { personId: "discord:mina" });
  for (let round = 0; round < 4; round += 1) await pump();
  expect(said.map(({ key }) => key).sort()).toEqual(["new", "old", "word"]);
});

test("what can't be recorded does not leave, and may the next time", async () => {
  owe("a", START);
  stores.db.exec("create trigger refuse before update on outbox begin select raise(abort, 'no'); end");
  expect(() => deliverer.pump()).toThrow(/no/);
  expect(said).toEqual([]);
  stores.db.exec("drop trigger refuse");
  await pump();
  expect(said.map(({ key }) => key)).toEqual(["a"]);
});
