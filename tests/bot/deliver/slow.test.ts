import { afterEach, beforeEach, expect, test } from "vitest";
import { createPace, type Pace } from "../../../bot/chat/pace.ts";
import type { ChatPort, Outcome } from "../../../bot/chat/port.ts";
import { settleSome } from "../../../bot/cues/tick.ts";
import { createDeliverer, type Deliverer } from "../../../bot/deliver/deliver.ts";
import { createSlowChats } from "../../../bot/watch/slow-chats.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createFakeClock, type FakeClock } from "../../support/clock.ts";
import { aRun, START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

/* A chat behind something slow, in virtual time: a message is there after half of what its acknowledgement takes. */

let stores: OpenedStores;
let clock: FakeClock;
let pace: Pace;
let deliverer: Deliverer;
let tripMs: number;
let shown: { readonly text: string; readonly dueAt: number; readonly at: number }[];
let underWay: { readonly at: number; answer(): void }[];
let classId: number;
/** Whose direct messages are closed: they are called by name in the class's channel. */
let closed: Set<string>;

beforeEach(() => {
  stores = openStores(":memory:");
  clock = createFakeClock();
  pace = createPace({ perSecond: 50, channelCount: 5, channelWindowMs: 5000 });
  tripMs = 3000;
  shown = [];
  underWay = [];
  closed = new Set();
  classId = stores.classes.add("discord:1", "Invented class", "UTC", false, START).id;
  const port: ChatPort = {
    chat: "discord",
    start: async () => {},
    send({ text, dueAt }) {
      const sentAt = clock.now();
      shown.push({ text, dueAt, at: sentAt + tripMs / 2 });
      return new Promise<Outcome>((resolve) =>
        underWay.push({
          at: sentAt + tripMs,
          answer() {
            pace.took(clock.now() - sentAt, clock.now());
            resolve({ kind: "sent", ref: "m" });
          },
        }),
      );
    },
    pace,
    targetOf: (personId) =>
      closed.has(personId ?? "")
        ? { channel: "class", isShared: true }
        : { channel: personId ?? "class", isShared: false },
    stop: async () => {},
  };
  const ports = new Map([["discord", port]]);
  deliverer = createDeliverer({ stores, clock, log: createMemoryLog(), ports, onOutcome: () => {} });
});
afterEach(() => stores.close());

/** Thirty people, each called to agitate each minute, all at the same moments or one after the other, for so many minutes. */
function aClass(minutes: number, apartMs = 0): void {
  for (let person = 1; person <= 30; person += 1) {
    const personId = `discord:${person}`;
    const { id: _id, number: _number, ...draft } = aRun({ classId, personId });
    const run = stores.runs.add(draft);
    const cues = Array.from({ length: minutes }, (_, at) => ({
      key: `a${at}`,
      kind: "agitate" as const,
      step: 0,
      number: at,
      dueAtMs: START + (at + 1) * 60_000 + person * apartMs,
    }));
    stores.cues.reschedule(run.id, cues, 2000, START);
    stores.members.saveDirectChannel(personId, `9${person}`);
  }
}

/** The beat: decides and says, and looks again when it is told to, at least each second. */
async function live(seconds: number): Promise<void> {
  const until = clock.now() + seconds * 1000;
  while (clock.now() < until) {
    const now = clock.now();
    const due = underWay.filter(({ at }) => at <= now);
    underWay = underWay.filter(({ at }) => at > now);
    for (const each of due) each.answer();
    await new Promise<void>((resolve) => setImmediate(resolve));
    const lookAt = deliverer.pump(now, () =>
      settleSome({ stores, log: createMemoryLog() }, now, deliverer.decideUntil(now), new Set()),
    );
    const nextAt = Math.min(lookAt, now + 1000, ...underWay.map(({ at }) => at));
    clock.advance(Math.max(1, Math.ceil(nextAt) - now) / 1000);
  }
}

const late = (minute: number): number[] =>
  shown.filter(({ dueAt }) => dueAt === START + minute * 60_000).map(({ at, dueAt }) => at - dueAt);

test("calls of a class behind a proxy of 3 s: those of the first minute come late, all others in time", async () => {
  aClass(4);
  await live(5 * 60);
  expect(Math.min(...late(1))).toBeGreaterThanOrEqual(0);
  for (const minute of [2, 3, 4]) {
    expect(late(minute)).toHaveLength(30);
    expect(Math.max(...late(minute))).toBeLessThanOrEqual(0);
    // Ahead by their own way and by what a burst takes, and no further.
    expect(Math.min(...late(minute))).toBeGreaterThanOrEqual(-6000);
  }
  // What is ahead of its moment says so.
  expect(
    shown.filter(({ dueAt }) => dueAt === START + 120_000).every(({ text }) => text.startsWith("At ")),
  ).toBe(true);
});

test("whose direct messages are closed is called in time as well: the channel's calls do not wait for each other's way", async () => {
  for (let person = 2; person <= 30; person += 2) closed.add(`discord:${person}`);
  aClass(4, 60);
  await live(5 * 60);
  const inTime = shown.filter(({ dueAt }) => dueAt > START + 120_000);
  expect(inTime.length).toBeGreaterThan(3 * 15);
  expect(Math.max(...inTime.map(({ at, dueAt }) => at - dueAt))).toBeLessThanOrEqual(0);
  // And no more than a channel takes: five in five seconds.
  const inChannel = inTime.filter(({ text }) => text.split("R").length > 2).map(({ at }) => at);
  expect(inChannel.length).toBeGreaterThan(3);
  for (const at of inChannel)
    expect(inChannel.filter((each) => each >= at && each < at + 5000).length).toBeLessThanOrEqual(5);
});

test("once the chat is quick again, calls come at their moment again", async () => {
  aClass(14);
  await live(2 * 60 + 30);
  tripMs = 100;
  await live(12 * 60);
  expect(pace.aheadMs(clock.now())).toBe(0);
  expect(stores.cues.leadMs("discord")).toBe(0);
  expect(Math.max(...late(14))).toBeLessThanOrEqual(100);
  expect(Math.min(...late(14))).toBeGreaterThanOrEqual(-1000);
});

test("the lead of what is written down grows with it, for ends of steps as well, and shrinks again", () => {
  aClass(1);
  const decideAt = (): number | undefined => stores.cues.nextDecideAt();
  expect(decideAt()).toBe(START + 58_000);
  for (let at = 0; at < 4; at += 1) pace.took(4000, clock.now());
  deliverer.decideUntil(clock.now());
  expect(decideAt()).toBe(START + 60_000 - 4500);
  clock.advance(11 * 60);
  deliverer.decideUntil(clock.now());
  expect(decideAt()).toBe(START + 58_000);
});

test("a chat too slow for that is told to the teacher, once, and in health; calls leave as early as helps", async () => {
  tripMs = 12_000;
  aClass(3);
  stores.members.see(classId, { id: "discord:99", name: "Iris" }, "teacher", START);
  const log = createMemoryLog();
  const port = { chat: "discord", pace } as unknown as ChatPort;
  const slow = createSlowChats({ stores, clock, log, ports: new Map([["discord", port]]), onOwed: () => {} });
  slow.look();
  expect(slow.all()).toEqual({});
  await live(2 * 60 + 50);
  slow.look();
  slow.look();
  expect(slow.all()).toEqual({ discord: 12 });
  const told = stores.db.prepare("select body ->> 'text' as text from outbox where key like 'slow.%'").all();
  expect(told).toMatchObject([
    { text: expect.stringMatching(/^\*\*Discord is slow: a message takes 12 s\.\*\*/) },
  ]);
  expect(log.lines.map(({ message }) => message)).toEqual([
    "a chat takes so long for a message that calls come late there",
  ]);
});
