import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Outcome } from "../../bot/chat/port.ts";
import { openStores } from "../../store/index.ts";
import { START } from "../support/make.ts";
import { createRoom } from "../support/room.ts";
import { startBot, type SimulatedBot } from "./bot.ts";
import { createChat, FAIR, type SimulatedChat } from "./chat.ts";
import { installKillPoints, type KillPoints } from "./kill-points.ts";
import { createRandom } from "./random.ts";
import { createVirtualTime, type VirtualTime } from "./virtual-time.ts";

/* What simulated evenings have brought to light, each as short as it could be made. */

describe("a bot in virtual time", () => {
  let folder: string;
  let time: VirtualTime;
  let points: KillPoints;
  let bot: SimulatedBot;
  let chat: SimulatedChat;

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "sinkside-found-"));
    const random = createRandom(1);
    time = createVirtualTime(START, random);
    points = installKillPoints();
    chat = createChat("room", time, random);
    const path = join(folder, "sinkside.db");
    bot = startBot({ path, time, chat, points, onSpoken: () => {}, onDeath: () => {} });
  });
  afterEach(() => {
    bot.kill();
    points.uninstall();
    time.uninstall();
    rmSync(folder, { recursive: true, force: true });
  });

  test.each([
    ["back by an hour", -3_600_000],
    ["ahead by an hour", 3_600_000],
    ["ahead by ten years", 315_360_000_000],
  ])("the wall clock is set %s: what another process writes is seen within two seconds", async (_, byMs) => {
    await time.pass(500);
    time.stepWall(byMs);
    await time.pass(1500);
    const other = openStores(join(folder, "sinkside.db"));
    const found = other.classes.ensure("room:class", "Class", time.wallMs());
    const now = time.wallMs();
    other.outbox.owe({
      key: "a",
      classId: found.id,
      personId: null,
      runId: null,
      priority: 0,
      dueAt: now,
      decidedAt: now,
      usefulUntil: null,
      body: { text: "Pour out now.", actions: [], mentions: [] },
    });
    await time.pass(2000);
    expect(other.outbox.findByKey("a")?.state).toBe("sent");
    other.close();
  });

  test("what was being said when the process died is said at once after a restart, under its key", async () => {
    const path = join(folder, "sinkside.db");
    const found = bot.stores.classes.ensure("room:class", "Class", time.wallMs());
    const now = time.wallMs();
    bot.stores.outbox.owe({
      key: "a",
      classId: found.id,
      personId: null,
      runId: null,
      priority: 0,
      dueAt: now,
      decidedAt: now,
      usefulUntil: null,
      body: { text: "Pour out now.", actions: [], mentions: [] },
    });
    chat.weather = { ...FAIR, lostAnswer: 1 };
    await time.pass(1200);
    expect(bot.stores.outbox.findByKey("a")?.state).toBe("sending");
    bot.kill();
    chat.weather = FAIR;
    bot = startBot({ path, time, chat, points, onSpoken: () => {}, onDeath: () => {} });
    await time.pass(1000);
    expect(bot.stores.outbox.findByKey("a")).toMatchObject({ state: "sent", tries: 2 });
    expect(chat.shown.map(({ key }) => key)).toEqual(["a"]);
  });
});

test("a pour-out whose answer was lost is not said again once the next bath was called", async () => {
  const room = createRoom();
  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
  room.press("Mina", "Start");
  room.press("Mina", "Tank is full");
  await room.pass(529);
  room.news();
  // The call to pour out goes unanswered for as long as it is tried.
  const lost: Outcome = { kind: "unknown", detail: "no answer" };
  room.outcomes.push(lost);
  await room.pass(1);
  expect(room.news()).toEqual([]);
  room.outcomes.push(...Array.from({ length: 4 }, () => lost));
  await room.pass(9);
  expect(room.news()).toEqual([]);
  await room.pass(1);
  expect(room.news("Mina")[0]).toMatch(/^\*\*Now: rinse 1/);
  await room.pass(60);
  expect(room.news("Mina").filter((text) => /pour out/i.test(text))).toEqual([]);
});

test("calls that were missed are spoken of also by one that comes on time", async () => {
  const room = createRoom();
  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
  room.press("Mina", "Start");
  room.press("Mina", "Tank is full");
  await room.tick();
  room.news();
  room.away(180);
  await room.tick();
  expect(room.news("Mina")).toEqual([
    expect.stringMatching(
      /^\*\*Agitate 5 s\.\*\* .* 3:00 of 9:00\.\n\*\*2 calls before this were missed\.\*\*/,
    ),
  ]);
});

test("a button of a bath that is over changes nothing while the next one is waited for", async () => {
  const room = createRoom();
  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
  room.press("Mina", "Start");
  room.press("Mina", "Tank is full");
  room.away(541);
  await room.tick();
  expect(room.asks("Mina", "run next run:1 step:0").code).toBe("ERR_OLD_BUTTON");
  expect(room.stores.runs.find(1, 1)?.phase).toMatchObject({ kind: "waiting", step: 1 });
});
