import { beforeEach, describe, expect, test } from "vitest";
import { createDeliverer, type Deliverer } from "../../../bot/deliver/deliver.ts";
import type { ChatPort, Delivery, Outcome } from "../../../bot/chat/port.ts";
import { instant } from "../../../commands/speech/wording.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createFakeClock, type FakeClock } from "../../support/clock.ts";
import { START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

let stores: OpenedStores;
let clock: FakeClock;
let deliverer: Deliverer;
let tried: Delivery[];
let outcomes: (Outcome | Error)[];
let classId: number;

beforeEach(() => {
  stores = openStores(":memory:");
  clock = createFakeClock();
  tried = [];
  outcomes = [];
  classId = stores.classes.add("room:1", "Invented class", "UTC", false, START).id;
  const port: ChatPort = {
    chat: "room",
    start: async () => {},
    async send(delivery) {
      tried.push(delivery);
      const outcome = outcomes.shift() ?? { kind: "sent", ref: "m1" };
      if (outcome instanceof Error) throw outcome;
      return outcome;
    },
    stop: async () => {},
  };
  const log = createMemoryLog();
  deliverer = createDeliverer({ stores, clock, log, ports: new Map([["room", port]]), onOutcome: () => {} });
});

const owe = (key: string, over = {}): void =>
  stores.outbox.owe({
    key,
    classId,
    personId: "room:mina",
    runId: null,
    priority: 1,
    dueAt: clock.now(),
    decidedAt: clock.now(),
    usefulUntil: null,
    body: { text: "Agitate.", actions: [], mentions: [] },
    ...over,
  });

async function pump(): Promise<void> {
  deliverer.pump();
  await deliverer.drain(1000);
}
const stateOf = (key: string): string | undefined => stores.outbox.findByKey(key)?.state;

describe("saying what is owed", () => {
  test("the urgent first, each once", async () => {
    owe("digest", { priority: 3 });
    owe("pour", { priority: 0 });
    await pump();
    await pump();
    expect(tried.map(({ key }) => key)).toEqual(["pour", "digest"]);
    expect(stateOf("pour")).toBe("sent");
  });

  test("one key is owed once, however often it is decided", async () => {
    owe("a");
    owe("a");
    await pump();
    expect(tried).toHaveLength(1);
  });

  test("an unknown outcome is tried again with the same key, later and later", async () => {
    outcomes.push({ kind: "unknown", detail: "timeout" }, new Error("socket"), { kind: "sent", ref: "m" });
    owe("a");
    await pump();
    await pump();
    expect(tried).toHaveLength(1);
    clock.advance(0.5);
    await pump();
    clock.advance(1);
    await pump();
    expect(tried.map(({ key }) => key)).toEqual(["a", "a", "a"]);
    expect(stateOf("a")).toBe("sent");
  });

  test.each([
    ["what was said by a try whose answer was lost was said then, and not late", 40_000, 5000],
    ["nothing was said before it was first tried, whatever the chat's clock says", 3_600_000, 0],
  ])("%s", async (_, agoMs, afterFirstMs) => {
    const firstAt = clock.now();
    outcomes.push({ kind: "unknown", detail: "timeout" }, { kind: "sent", ref: "m", agoMs });
    owe("a");
    await pump();
    clock.advance(45);
    await pump();
    expect(stores.outbox.findByKey("a")?.sentAt).toBe(firstAt + afterFirstMs);
  });

  test("a chat that asks to wait is waited for", async () => {
    outcomes.push({ kind: "later", afterMs: 3000 });
    owe("a");
    await pump();
    clock.advance(2.9);
    await pump();
    expect(tried).toHaveLength(1);
    clock.advance(0.2);
    await pump();
    expect(stateOf("a")).toBe("sent");
  });

  test("a person who can't be reached alone is called by name in the class", async () => {
    outcomes.push({ kind: "refused", detail: "messages closed" });
    owe("a");
    await pump();
    await pump();
    expect(tried[1]).toMatchObject({ key: "a", personId: null, mentions: ["room:mina"] });
    expect(stores.members.directRefusedUntil("room:mina")).toBeGreaterThan(clock.now());
  });

  test("a class that can't be reached is given up, on record", async () => {
    outcomes.push({ kind: "refused", detail: "no channel" });
    owe("a", { personId: null });
    await pump();
    expect(stateOf("a")).toBe("failed");
  });

  test("what comes late says so, with the moment it was for", async () => {
    outcomes.push({ kind: "unknown", detail: "timeout" });
    owe("a");
    await pump();
    clock.advance(12);
    await pump();
    expect(tried[0]?.text).toBe("Agitate.");
    expect(tried[1]?.text).toMatch(/^Agitate\.\n\*\*12 s late\*\*: this was for .*\.$/);
  });

  test("a late call of a run's says what is to be done with it; to get ready, how long is left", async () => {
    const due = { dueAt: clock.now() - 40_000 };
    owe("1.0.0a3", due);
    owe("1.0.0p0", due);
    owe("1.0.0g0", { ...due, usefulUntil: clock.now() + 6200 });
    owe("1.0.1w1", due);
    await pump();
    const ends = new Map(tried.map(({ key, text }) => [key, text.replace(/^.*\n/, "")]));
    expect(ends.get("1.0.0a3")).toMatch(
      /^\*\*40 s late\*\*: this was for .*\. Do it now if you have not yet\.$/,
    );
    expect(ends.get("1.0.0p0")).toMatch(/\. Do it now if you have not yet\.$/);
    expect(ends.get("1.0.0g0")).toMatch(/^\*\*40 s late\*\*: this was for .*\. Only 7 s left\.$/);
    expect(ends.get("1.0.1w1")).toMatch(/^\*\*40 s late\*\*: this was for \S*\.$/);
  });

  test("a word to many that comes long after it was said says first how old it is", async () => {
    const body = {
      text: "**Ada:** Lights on in a minute.",
      actions: [],
      mentions: [],
      say: { id: 1, by: "room:ada" },
    };
    const saidAt = clock.now() - 600_000;
    owe("say.1.0", { dueAt: saidAt, body });
    owe("say.2.0", { dueAt: clock.now() - 4000, body });
    await pump();
    const text = new Map(tried.map((each) => [each.key, each.text]));
    expect(text.get("say.1.0")).toBe(
      `**${instant(saidAt, "relative")}** (${instant(saidAt, "time")}):\n${body.text}`,
    );
    expect(text.get("say.2.0")).toBe(body.text);
  });

  test("what was decided late and comes later still says how late it comes, not how late it was decided", async () => {
    outcomes.push({ kind: "later", afterMs: 60_000 });
    owe("a", { dueAt: clock.now() - 3000, missed: 2 });
    await pump();
    clock.advance(60);
    await pump();
    expect(tried[0]?.text).toMatch(/^Agitate\.\n\*\*3 s late\*\*.* 2 calls before it were missed\.$/);
    expect(tried[1]?.text).toMatch(
      /^Agitate\.\n\*\*1 min 3 s late\*\*: this was for .*\. 2 calls before it were missed\.$/,
    );
  });

  test("of what is given up after a try, the record says that it may have been said; of what was not tried, not", async () => {
    outcomes.push({ kind: "unknown", detail: "timeout" });
    owe("a", { usefulUntil: clock.now() + 200 });
    await pump();
    owe("b", { usefulUntil: clock.now() + 200 });
    clock.advance(1);
    await pump();
    const details = stores.db.prepare("select key, state, detail from outbox order by key").all();
    expect(details).toEqual([
      { key: "a", state: "stale", detail: "too late to be of use; it may have been said before" },
      { key: "b", state: "stale", detail: "too late to be of use" },
    ]);
  });

  test("what helps nobody any more is recorded, not said", async () => {
    owe("a", { usefulUntil: clock.now() + 5000 });
    clock.advance(5);
    await pump();
    expect(tried).toEqual([]);
    expect(stateOf("a")).toBe("stale");
  });

  test("what a killed process was saying is said again with the same key", async () => {
    owe("a");
    stores.outbox.markSending([stores.outbox.findByKey("a")?.id ?? 0], null, clock.now());
    await pump();
    expect(tried).toEqual([]);
    stores.outbox.recover(clock.now());
    await pump();
    expect(tried.map(({ key }) => key)).toEqual(["a"]);
  });

  test("what was not begun is withdrawn when the run moves on", async () => {
    const run = stores.runs;
    expect(run.open(classId)).toEqual([]);
    owe("a");
    stores.db
      .prepare(
        "insert into runs (class_id, number, person_id, body, phase, started_at) values (?, 1, 'room:mina', '{}', '{}', 0)",
      )
      .run(classId);
    stores.db.prepare("update outbox set run_id = 1").run();
    stores.outbox.withdraw(1, clock.now(), 2000);
    await pump();
    expect(tried).toEqual([]);
  });
});
