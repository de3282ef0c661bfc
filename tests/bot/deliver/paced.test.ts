import { beforeEach, describe, expect, test } from "vitest";
import { createPace, type PaceSettings } from "../../../bot/chat/pace.ts";
import type { ChatPort, Delivery, Outcome } from "../../../bot/chat/port.ts";
import { createDeliverer, type Deliverer } from "../../../bot/deliver/deliver.ts";
import type { CueKind } from "../../../store/shapes/cue.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createFakeClock, type FakeClock } from "../../support/clock.ts";
import { aRun, START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

/* The deliverer on a chat that takes only so many messages a second. */

let stores: OpenedStores;
let clock: FakeClock;
let deliverer: Deliverer;
let said: (Delivery & { readonly at: number })[];
let outcomes: Outcome[];
let isShared: boolean;
let classId: number;

function open(pace: PaceSettings = { perSecond: 50, channelCount: 5, channelWindowMs: 5000 }): void {
  stores = openStores(":memory:");
  clock = createFakeClock();
  said = [];
  outcomes = [];
  isShared = false;
  classId = stores.classes.add("discord:1", "Invented class", "UTC", false, START).id;
  const port: ChatPort = {
    chat: "discord",
    start: async () => {},
    async send(delivery) {
      said.push({ ...delivery, at: clock.now() });
      return outcomes.shift() ?? { kind: "sent", ref: "m" };
    },
    fits: ({ actions }) => actions.length <= 25,
    pace: createPace(pace),
    targetOf: (personId) => ({ channel: isShared ? "class" : (personId ?? "class"), isShared }),
    stop: async () => {},
  };
  const ports = new Map([["discord", port]]);
  deliverer = createDeliverer({ stores, clock, log: createMemoryLog(), ports, onOutcome: () => {} });
}

beforeEach(() => open());

const owe = (number: number, dueAt: number, over = {}): void =>
  stores.outbox.owe({
    key: `k${number}`,
    classId,
    personId: `discord:${number}`,
    runId: null,
    priority: 1,
    dueAt,
    decidedAt: clock.now(),
    usefulUntil: null,
    body: { text: "Agitate.", run: { number, tank: null }, actions: [], mentions: [] },
    ...over,
  });

async function pump(): Promise<number> {
  const lookAt = deliverer.pump();
  await deliverer.drain(1000);
  return lookAt;
}

/** Pumps whenever it is asked to, in virtual time. */
async function pumpUntil(until: number): Promise<void> {
  for (;;) {
    await pump();
    // Once more: what has just been answered may have made room.
    const lookAt = Math.max(deliverer.pump(), clock.now() + 1);
    await deliverer.drain(1000);
    if (lookAt > until) return;
    clock.advance((Math.ceil(lookAt) - clock.now()) / 1000);
  }
}

describe("when messages leave", () => {
  test("a message alone is held until its moment", async () => {
    owe(1, clock.now() + 2000);
    expect(await pump()).toBe(START + 2000);
    expect(said).toEqual([]);
    await pumpUntil(START + 2000);
    expect(said.map(({ at, text }) => [at - START, text])).toEqual([[2000, "Agitate.\n_R1_"]]);
  });

  test("thirty due together begin ahead by what they take, none late, and each ahead by more than half a second says when", async () => {
    for (let number = 1; number <= 30; number += 1) owe(number, START + 2000);
    await pumpUntil(START + 2000);
    expect(said).toHaveLength(30);
    expect(said.at(-1)?.at).toBe(START + 2000);
    const first = said[0]?.at ?? 0;
    expect(2000 - (first - START)).toBeLessThanOrEqual(700);
    expect(2000 - (first - START)).toBeGreaterThanOrEqual(29 * 20);
    expect(said[0]?.text).toMatch(/^At .*:\nAgitate\.\n_R1_$/);
    expect(said.at(-1)?.text).toBe("Agitate.\n_R30_");
  });

  test("a burst due later does not send an earlier message ahead of its moment", async () => {
    owe(1, START + 1000);
    for (let number = 2; number <= 31; number += 1) owe(number, START + 2000);
    await pumpUntil(START + 2000);
    expect(said.find(({ key }) => key === "k1")?.at).toBe(START + 1000);
  });

  test("what is no cue leaves room for a burst of cues", async () => {
    for (let number = 1; number <= 60; number += 1)
      owe(number, START, { priority: 3, personId: `discord:w${number}` });
    await pump();
    expect(said).toHaveLength(30);
    for (let number = 61; number <= 80; number += 1) owe(number, START);
    await pump();
    expect(said).toHaveLength(50);
  });
});

describe("what is still to come", () => {
  function aRunDue(number: number, dueAt: number, kind: CueKind = "agitate"): void {
    const { id: _id, number: _number, ...draft } = aRun({ classId, personId: `discord:${number}` });
    const run = stores.runs.add(draft);
    stores.cues.reschedule(run.id, [{ key: "a", kind, step: 0, number: 1, dueAtMs: dueAt }], 2000, START);
    stores.members.saveDirectChannel(`discord:${number}`, `9${number}`);
  }

  test("cues are decided by their own lead where there is room", () => {
    for (let number = 1; number <= 30; number += 1) aRunDue(number, START + 8000);
    expect(deliverer.decideUntil(clock.now())).toBe(-Infinity);
  });

  test("more than can be said in their lead are decided the sooner, though never ten seconds ahead", () => {
    for (let number = 1; number <= 300; number += 1) aRunDue(number, START + 8000);
    // 300 at 44 a second take 6.8 s.
    expect(deliverer.decideUntil(clock.now())).toBe(-Infinity);
    clock.advance(1.1);
    expect(deliverer.decideUntil(clock.now())).toBe(-Infinity);
    clock.advance(1);
    expect(deliverer.decideUntil(clock.now())).toBe(START + 8000);
    expect(stores.cues.due(clock.now(), 1000, START + 8000).size).toBe(300);
    open();
    for (let number = 1; number <= 900; number += 1) aRunDue(number, START + 15_000);
    clock.advance(4);
    expect(deliverer.decideUntil(clock.now())).toBe(-Infinity);
    clock.advance(1);
    expect(deliverer.decideUntil(clock.now())).toBe(START + 15_000);
  });

  test("where people are called in their class's channel, a class is one message", () => {
    for (let number = 1; number <= 300; number += 1) {
      aRunDue(number, START + 8000);
      stores.members.saveDirectRefused(`discord:${number}`, START + 3_600_000);
    }
    clock.advance(3);
    expect(deliverer.decideUntil(clock.now())).toBe(-Infinity);
  });

  test("the end of a step is never decided ahead of its lead, since the run moves on with it", () => {
    for (let number = 1; number <= 300; number += 1) aRunDue(number, START + 8000, "next-bath");
    clock.advance(3);
    expect(stores.cues.due(clock.now(), 1000, deliverer.decideUntil(clock.now())).size).toBe(0);
    clock.advance(3);
    expect(stores.cues.due(clock.now(), 1000).size).toBe(300);
  });
});

describe("several in one message", () => {
  const actions = [{ label: "Water is in", line: "run next", weight: "main" as const }];

  test("nobody loses a button: what one message can't hold goes out with the next", async () => {
    isShared = true;
    for (let number = 1; number <= 30; number += 1) {
      const own = actions.map((action) => ({ ...action, line: `run next run:R${number}` }));
      owe(number, START, {
        body: { text: "Now: rinse.", run: { number, tank: null }, actions: own, mentions: [] },
      });
    }
    await pump();
    await pump();
    expect(said.map((each) => each.actions.length)).toEqual([25, 5]);
    const lines = said.flatMap((each) => each.actions.map(({ line }) => line));
    expect(new Set(lines).size).toBe(30);
    expect(said.map(({ key }) => key)).toEqual(["k1", "k26"]);
  });

  test("one that may have been said is said again alone, and what is due with it in a message of its own", async () => {
    isShared = true;
    outcomes.push({ kind: "unknown", detail: "no answer" });
    owe(1, START);
    await pump();
    owe(2, START + 500);
    clock.advance(0.6);
    await pump();
    await pump();
    expect(said.map(({ key, mentions }) => [key, mentions])).toEqual([
      ["k1", []],
      ["k1", []],
      ["k2", []],
    ]);
  });

  test("one the chat asked to wait with was not said, and goes out together with others", async () => {
    isShared = true;
    outcomes.push({ kind: "later", afterMs: 500 });
    owe(1, START);
    await pump();
    owe(2, START + 500);
    clock.advance(0.6);
    await pump();
    expect(said.at(-1)).toMatchObject({ key: "k1", mentions: ["discord:1", "discord:2"] });
    expect(said).toHaveLength(2);
  });
});
