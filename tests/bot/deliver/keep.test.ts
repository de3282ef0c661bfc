import { beforeEach, expect, test } from "vitest";
import { settleSome } from "../../../bot/cues/tick.ts";
import type { FeedBody } from "../../../bot/chat/room/feed.ts";
import { createEarlyRoom } from "../../../bot/chat/room/say.ts";
import { createDeliverer, type Deliverer } from "../../../bot/deliver/deliver.ts";
import type { ChatPort, Outcome } from "../../../bot/chat/port.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createFakeClock, type FakeClock } from "../../support/clock.ts";
import { aQuickPlan, pourIn } from "../../support/developing.ts";
import { aPlan, START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

/* Chats that are kept in the store: what is decided is said with the same commit, or not at all. */

const FULL = Object.assign(new Error("full"), { code: "SQLITE_FULL" });

let stores: OpenedStores;
let clock: FakeClock;
let deliverer: Deliverer;
let steps: string[];
let broken: Error | undefined;

beforeEach(() => {
  stores = openStores(":memory:");
  clock = createFakeClock();
  steps = [];
  broken = undefined;
  const room = createEarlyRoom(stores, () => clock.now());
  const port: ChatPort = {
    ...room,
    post(delivery, reach) {
      if (broken) throw broken;
      const kept = room.post?.(delivery, reach);
      if (!kept) throw new Error("the room keeps");
      steps.push(`kept, in a transaction: ${stores.db.inTransaction}`);
      return {
        outcome: kept.outcome,
        announce: () => void steps.push(`shown, in a transaction: ${stores.db.inTransaction}`),
      };
    },
  };
  const ports = new Map([["room", port]]);
  deliverer = createDeliverer({ stores, clock, log: createMemoryLog(), ports, onOutcome: () => {} });
  const classId = stores.classes.add("room:1", "Invented class", "UTC", false, START).id;
  for (const name of ["mina", "ben"]) {
    const personId = `room:${name}`;
    stores.members.see(classId, { id: personId, name }, "student", START);
    pourIn(stores, { classId, personId, plan: aPlan() }, START);
  }
});

function wake(): void {
  const now = clock.now();
  const log = createMemoryLog();
  deliverer.pump(now, (say) => settleSome({ stores, log }, now, now, new Set(), 100, say));
}

const said = (): number => stores.messages.newest(1, "room:mina", 10).length;

test("what is decided is kept in the same transaction, and shown after its commit", () => {
  wake();
  expect(steps).toEqual([
    ...Array(2).fill("kept, in a transaction: true"),
    ...Array(2).fill("shown, in a transaction: false"),
  ]);
  expect(said()).toBe(1);
  expect(stores.outbox.depth()).toBe(0);
});

const recorded = (): unknown[] =>
  stores.db.prepare("select state, ref, sent_at - due_at as late, tries from outbox order by id").all();

test("what is said on time as it is decided is written down once: where it is read", () => {
  wake();
  expect([said(), recorded()]).toEqual([1, []]);
});

test("what is said late is counted", () => {
  clock.advance(3);
  wake();
  expect([said(), recorded()]).toEqual([1, []]);
  expect([1, 2].map((run) => stores.outbox.lateOf(run, 2000))).toEqual([1, 1]);
  expect(stores.outbox.lateOf(1, 3000)).toBe(0);
});

test("it tells of the calls of its run that nobody heard, once, and it is known that somebody hears it again", () => {
  wake();
  const run = { classId: 1, personId: "room:mina", runId: 1, priority: 1, dueAt: START, decidedAt: START };
  const body = { text: "Agitate", actions: [], mentions: [] };
  stores.outbox.owe({ ...run, key: "in vain", usefulUntil: null, missed: 1, body });
  stores.outbox.markEnded([stores.outbox.findByKey("in vain")?.id ?? 0], "failed", "closed", START);
  expect([...stores.figures.unreached(1)]).toEqual([1]);
  clock.advance(60);
  wake();
  expect([...stores.figures.unreached(1)]).toEqual([]);
  clock.advance(60);
  wake();
  const texts = stores.messages.newest(1, "room:mina", 10).map((each) => (each.body as FeedBody).text);
  expect(texts.map((text) => /missed/.test(text))).toEqual([false, true, false]);
});

test("one that is of no use any more is told of by the next, decided with it", () => {
  const plan = aQuickPlan(60, 1);
  pourIn(stores, { classId: 1, personId: "room:ada", plan }, START);
  stores.members.see(1, { id: "room:ada", name: "ada" }, "student", START);
  wake();
  clock.advance(2.5);
  wake();
  const texts = stores.messages.newest(1, "room:ada", 10).map(({ body }) => (body as FeedBody).text);
  expect(texts).toHaveLength(2);
  expect(texts[1]).toContain("1 call before this was missed");
});

test("where the disk does not take it, nothing is decided, kept or shown; the next time all of it is", () => {
  broken = FULL;
  expect(wake).toThrow(FULL);
  expect(steps).toEqual([]);
  expect([said(), stores.outbox.depth()]).toEqual([0, 0]);
  expect(stores.cues.nextDecideAt()).toBe(START);
  broken = undefined;
  wake();
  expect(said()).toBe(1);
});

test("where the deciding meets a fault of the disk, nothing is said either", () => {
  wake();
  clock.advance(60);
  const fail = (): never => {
    settleSome({ stores, log: createMemoryLog() }, clock.now(), clock.now(), new Set());
    throw FULL;
  };
  expect(() => deliverer.pump(clock.now(), fail)).toThrow(FULL);
  expect(said()).toBe(1);
  expect(stores.outbox.depth()).toBe(0);
  wake();
  expect(said()).toBe(2);
});

test("one that can't be kept does not hold up the others", () => {
  broken = new Error("none of ours");
  wake();
  expect(stores.outbox.depth()).toBe(2);
  broken = undefined;
  clock.advance(30);
  wake();
  expect(stores.outbox.depth()).toBe(0);
});

test("whoever can't be reached alone is called in the class's channel at the very next look", async () => {
  const outcomes: Outcome[] = [{ kind: "refused", detail: "closed" }];
  const heard: (string | null)[] = [];
  const port: ChatPort = {
    chat: "room",
    start: async () => {},
    async send({ personId }) {
      heard.push(personId);
      return outcomes.shift() ?? { kind: "sent", ref: "1" };
    },
    stop: async () => {},
  };
  const wakes: number[] = [];
  const ports = new Map([["room", port]]);
  const onOutcome = (): void => void wakes.push(1);
  deliverer = createDeliverer({ stores, clock, log: createMemoryLog(), ports, onOutcome });
  wake();
  await new Promise((resolve) => void setImmediate(resolve));
  await new Promise((resolve) => void setImmediate(resolve));
  expect(wakes).toEqual([1]);
  deliverer.pump();
  expect(heard).toEqual(["room:mina", "room:ben", null]);
});
