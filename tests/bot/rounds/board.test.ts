import { describe, expect, it } from "vitest";
import { createBoards } from "../../../bot/rounds/board.ts";
import type { ChatPort, Outcome } from "../../../bot/chat/port.ts";
import { openStores } from "../../../store/index.ts";
import { createFakeClock } from "../../support/clock.ts";
import { aPlan } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

interface Edit {
  readonly channelRef: string;
  readonly ref: string | null;
  readonly text: string;
}

function setUp() {
  const stores = openStores(":memory:");
  const clock = createFakeClock();
  const school = stores.classes.add("discord:1", "Harbour", "UTC", false, clock.now());
  stores.members.see(school.id, { id: "discord:2", name: "Mina" }, "student", clock.now());
  const edits: Edit[] = [];
  const outcomes: Outcome[] = [];
  const port = {
    chat: "discord",
    start: async () => {},
    send: async () => ({ kind: "sent", ref: "x" }) as const,
    editBoard: async (_key, channelRef, ref, { text }) => {
      edits.push({ channelRef, ref, text });
      return outcomes.shift() ?? { kind: "sent", ref: ref ?? `${channelRef}/${edits.length}` };
    },
    stop: async () => {},
  } satisfies ChatPort;
  const boards = createBoards({ stores, clock, log: createMemoryLog(), ports: new Map([["discord", port]]) });
  const startRun = (tank: number) =>
    stores.runs.add({
      classId: school.id,
      personId: "discord:2",
      plan: aPlan({ tank }),
      warnSeconds: 15,
      startedAtMs: clock.now(),
      schedule: 0,
      phase: { kind: "waiting", step: 0, sinceMs: clock.now() },
      marks: [],
      deviations: [],
    });
  async function pass(seconds: number): Promise<void> {
    for (let second = 0; second < seconds; second += 1) {
      clock.advance(1);
      boards.beat();
      await boards.drain();
    }
  }
  return { stores, school, edits, outcomes, pass, startRun };
}

describe("the board of a chat with channels", () => {
  it("is not shown before it is placed", async () => {
    const { edits, pass, startRun } = setUp();
    startRun(1);
    await pass(10);
    expect(edits).toEqual([]);
  });

  it("is one message: said once, then edited on change only", async () => {
    const { stores, school, edits, pass, startRun } = setUp();
    stores.boards.place(school.id, "77");
    await pass(60);
    expect(edits).toEqual([{ channelRef: "77", ref: null, text: "**No tank is in use.**" }]);
    startRun(4);
    await pass(60);
    expect(edits).toHaveLength(2);
    expect(edits[1]).toMatchObject({ ref: "77/1" });
    expect(edits[1]?.text).toContain("**T4** Mina, Developer: not poured in yet");
  });

  it("is edited no oftener than every five seconds, and then with the newest", async () => {
    const { stores, school, edits, pass, startRun } = setUp();
    stores.boards.place(school.id, "77");
    await pass(1);
    for (const tank of [1, 2, 3, 4, 5, 6, 7, 8]) {
      startRun(tank);
      await pass(1);
    }
    await pass(5);
    expect(edits).toHaveLength(3);
    expect(edits.at(-1)?.text).toContain("**8 tanks in use**");
  });

  it("waits as long as the chat asks it to", async () => {
    const { stores, school, edits, outcomes, pass } = setUp();
    stores.boards.place(school.id, "77");
    outcomes.push({ kind: "later", afterMs: 30_000 });
    await pass(29);
    expect(edits).toHaveLength(1);
    await pass(5);
    expect(edits).toHaveLength(2);
  });

  it("is said anew where its message was deleted, and in its new channel when it is moved", async () => {
    const { stores, school, edits, outcomes, pass, startRun } = setUp();
    stores.boards.place(school.id, "77");
    await pass(1);
    outcomes.push({ kind: "refused", detail: "Unknown Message" });
    startRun(1);
    await pass(12);
    expect(edits.map(({ ref }) => ref)).toEqual([null, "77/1", null]);
    stores.boards.place(school.id, "88");
    await pass(6);
    expect(edits.at(-1)).toMatchObject({ channelRef: "88", ref: null });
  });

  it("leaves a channel alone for a while that refuses it, and others go on", async () => {
    const { stores, school, edits, outcomes, pass } = setUp();
    stores.boards.place(school.id, "77");
    outcomes.push({ kind: "refused", detail: "Missing Access" });
    await pass(300);
    expect(edits).toHaveLength(1);
    stores.boards.remove(school.id);
    await pass(600);
    expect(edits).toHaveLength(1);
  });
});
