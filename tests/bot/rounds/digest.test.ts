import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { createDigest, type Digest } from "../../../bot/rounds/digest.ts";
import { DEMO_KEY } from "../../../bot/demo/demo.ts";
import { createFakeClock, type FakeClock } from "../../support/clock.ts";
import { createRoom, type Room } from "../../support/room.ts";

const FIXER =
  "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l capacity:20 films/l clearing:0:45";
const HOUR = 3600;
const DAY = 24 * HOUR;

interface Class extends Room {
  readonly digest: Digest;
  /** The bot awake for so long, looked at each minute. */
  live(seconds: number): Promise<void>;
  said(): string[];
}

/** A class with a period on Thursdays 20:00-22:00 UTC; it is Thursday 15 January 2026, 18:00. */
function open(path = ":memory:", clock: FakeClock = createFakeClock()): Class {
  const room = createRoom(path, clock);
  const digest = createDigest({ stores: room.stores, clock, log: room.log });
  const found = room.stores.classes.find(DEMO_KEY);
  if (!found) throw new Error("no demo class");
  const periods = [{ weekday: 4, startMinute: 20 * 60, endMinute: 22 * 60, name: "Evening class" }];
  room.stores.classes.setHabits(found.id, { ...found.habits, periods });
  room.asks("Tess", "/help", "teacher");
  let read = 0;
  return {
    ...room,
    digest,
    async live(seconds) {
      for (let past = 0; past < seconds; past += 60) {
        clock.advance(60);
        digest.beat(clock.now());
      }
      await room.tick();
    },
    said() {
      const fresh = room.heard.slice(read).filter(({ personId }) => personId === null);
      read = room.heard.length;
      return fresh.map(({ text }) => text);
    },
  };
}

describe("before a period", () => {
  test("a safelight whose test is due by then is named, also where the class keeps no bottle", async () => {
    const room = open();
    room.asks("Aida", "/tray lamp lamp:bench after:3 next:7", "aide");
    room.digest.beat(room.clock.now());
    await room.live(2 * HOUR);
    expect(room.said().join("\n")).not.toContain("Safelight");
    room.clock.advance(7 * DAY - 3 * HOUR);
    room.digest.beat(room.clock.now());
    await room.live(2 * HOUR);
    expect(room.said().join("\n")).toContain("**Safelight bench: its test is due.**");
  });

  test("the class is told an hour before, once, what is ready, what is tired and what to mix", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    room.asks("Aida", "/batch mix kind:developer product:House MQ dilution:stock volume:5 l", "aide");
    room.asks("Aida", "/batch correct batch:B1 rolls:18 reason:morning class", "aide");
    room.digest.beat(room.clock.now());
    await room.live(HOUR - 60);
    room.said();
    await room.live(60);
    const [told, ...more] = room.said();
    expect(more).toEqual([]);
    expect(told).toContain("**Evening class** at");
    expect(told).toContain("Watch: B1 (2 rolls left, getting tired, last rolls, needs a clearing test).");
    expect(told).toContain("- B2, House MQ stock: 5 l left");
    const pictures = room.heard.at(-1)?.pictures ?? [];
    expect(pictures).toMatchObject([{ name: "batches" }]);
    expect(pictures[0]?.svg).toContain(">B1<");
    await room.live(2 * HOUR);
    expect(room.said()).toEqual([]);
  });

  test("a bath of which none is ready is to be mixed", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    room.asks("Aida", "/batch correct batch:B1 rolls:20 reason:morning class", "aide");
    room.digest.beat(room.clock.now());
    await room.live(HOUR);
    const told = room.said().at(-1);
    expect(told).toContain("**Mix before it: fixer, none ready.** An aide or the teacher.");
    expect(told).toContain("**Don't use** B1 (exhausted).");
  });

  test("a class that keeps no batches is not bothered", async () => {
    const room = open();
    room.digest.beat(room.clock.now());
    await room.live(3 * HOUR);
    expect(room.said()).toEqual([]);
  });
});

describe("missed while the bot was away", () => {
  test("it is said once at the start, marked late, with how many were missed before it", async () => {
    const path = join(mkdtempSync(join(tmpdir(), "sinkside-digest-")), "sinkside.db");
    const clock = createFakeClock();
    const before = open(path, clock);
    before.asks("Aida", FIXER, "aide");
    before.digest.beat(clock.now());
    before.stores.close();
    clock.advance(14 * DAY + 3 * HOUR + 60 * 20);
    const after = open(path, clock);
    after.digest.start();
    after.digest.stop();
    await after.tick();
    const told = after.said();
    const evening = told.filter((text) => text.includes("Evening class"));
    expect(evening).toHaveLength(1);
    expect(evening[0]).toMatch(/^\*\*2 h late\*\*: this was for .*\. 2 before it were missed\./);
    after.digest.beat(clock.now());
    await after.live(HOUR);
    expect(after.said().filter((text) => text.includes("Evening class"))).toEqual([]);
    after.stores.close();
  });

  test("a new class is not told of the time before it was there", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    room.away(30 * DAY);
    room.digest.beat(room.clock.now());
    await room.tick();
    expect(room.said().filter((text) => text.includes("Evening class"))).toEqual([]);
  });

  test("a clock set back doubles nothing", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    room.digest.beat(room.clock.now());
    await room.live(HOUR + 120);
    expect(room.said()).toHaveLength(1);
    room.clock.back(HOUR);
    await room.live(2 * HOUR);
    expect(room.said()).toEqual([]);
  });
});

test("once a week: rolls, litres mixed, waste and the silver collected", async () => {
  const room = open();
  room.asks("Aida", FIXER, "aide");
  room.asks("Aida", "/batch correct batch:B1 rolls:10 reason:morning class", "aide");
  room.asks("Aida", "/batch discard batch:B1 to:silver", "aide");
  room.digest.beat(room.clock.now());
  // To Monday morning, two minutes before eight.
  room.away(3 * DAY + 14 * HOUR - 120);
  await room.live(240);
  const week = room.said().find((text) => text.includes("last seven days"));
  expect(week).toContain("**0 rolls** developed in the last seven days.");
  expect(week).toContain("Mixed: 1 l. Developer used: 0 ml. Waste: 1 l of fixer to the silver collection.");
  expect(week).toContain("**1 l** of used fixer with about 1.0 to 3.0 g of silver");
});

describe("what time alone brings", () => {
  test("a bottle says two days before and on the day that it goes out of date, once each", async () => {
    const room = open();
    // 3 months in a full bottle: a wash aid's own, 90 days.
    room.asks(
      "Aida",
      "/batch mix kind:wash-aid product:Clear Tide dilution:1+9 volume:1 l full:20 days part:20 days",
      "aide",
    );
    room.digest.beat(room.clock.now());
    room.away(17 * DAY);
    await room.live(3 * HOUR);
    const about = (): string[] =>
      room.said().filter((text) => text.includes("out of date") && text.includes("B1"));
    expect(about().filter((text) => !text.includes("Ready:"))).toEqual([]);
    room.away(DAY - 3 * HOUR);
    await room.live(60);
    expect(about()).toMatchObject([expect.stringMatching(/^\*\*B1 goes out of date in 2 days\*\*/)]);
    room.away(2 * DAY);
    await room.live(60);
    expect(about().filter((text) => text.startsWith("**B1"))).toMatchObject([
      expect.stringMatching(/^\*\*B1 is out of date: don't use it\.\*\*/),
    ]);
    await room.live(HOUR);
    expect(about()).toEqual([]);
  });

  test("one class that can't be read does not silence the others", async () => {
    const room = open();
    room.asks("Aida", FIXER, "aide");
    const other = room.stores.classes.add("room:other", "Other (invented)", "UTC", false, room.clock.now());
    room.stores.db.exec(
      `insert into batches (class_id, number, kind, product, mixed_at, body) values (${other.id}, 1, 'fixer', 'x', 0, '{"broken":1}')`,
    );
    room.asks("Aida", "/batch correct batch:B1 rolls:4 reason:morning class", "aide");
    room.away(15 * DAY);
    expect(() => room.digest.beat(room.clock.now())).not.toThrow();
    await room.tick();
    expect(room.said().join()).toContain("B1 needs a clearing test");
    const unread = room.stores.unreadable.list(other.id, ["batch"]);
    expect(unread.map(({ number }) => number)).toEqual([1]);
  });
});

test("rolls through one batch that show one fault above chance are told to the teacher alone, once, with the numbers", async () => {
  const room = open();
  const now = room.clock.now();
  room.asks("Aida", FIXER, "aide");
  room.asks("Aida", "/batch mix kind:fixer product:Pier Fix volume:1 l", "aide");
  const insert = room.stores.db.prepare(
    `insert into rolls (class_id, number, person_name, film, developer, dilution, batches, outcome, ended_at, fault, body)
     values (1, ?, 'Mina', 'Lantern 400', 'House MQ', '1+1', ?, 'finished', ?, ?, '{}')`,
  );
  for (let roll = 1; roll <= 40; roll += 1) {
    const isFirst = roll <= 9;
    const isFaulty = isFirst ? roll <= 6 : roll <= 11;
    insert.run(roll, isFirst ? "B1" : "B2", now, isFaulty ? "milky" : "");
  }
  room.digest.beat(now);
  await room.live(HOUR / 2);
  const told = room.heard.filter(({ text }) => text.includes("show “milky”"));
  expect(told.map(({ personId }) => personId)).toEqual(["room:tess"]);
  expect(told[0]?.text).toContain(
    "**6 of 9 rolls through B1 show “milky”**; of 31 other rolls of these weeks 2 do.",
  );
  // 142,880 of 273,438,880 ways to draw 9 of 40: 1 in 1,914.
  expect(told[0]?.text).toContain("once in about 1,914");
});
