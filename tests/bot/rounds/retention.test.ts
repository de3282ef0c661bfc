import { describe, expect, it, vi } from "vitest";
import { createRetention, type Ages } from "../../../bot/rounds/retention.ts";
import { makeMessageKey, type MessageKey } from "../../../store/shapes/message-key.ts";
import { createRoom, type Room } from "../../support/room.ts";
import { openSchool } from "../../support/school-year.ts";
import { sizeOf } from "../../support/store-size.ts";

const DAY = 24 * 3600;
const FOUR_WEEKS: Ages = { messagesDays: 28, runsDays: 28 };
const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";

function retentionOf({ stores, clock, log }: Room, ages = FOUR_WEEKS) {
  return createRetention({ stores, clock, log, ages, tidy: () => {} });
}

/** A whole round; throws where it is not quiet. */
function clearAll(room: Room, ages = FOUR_WEEKS): void {
  const retention = retentionOf(room, ages);
  for (;;) {
    const done = retention.beat();
    if (done === "through") return;
    if (done === "not quiet") throw new Error("not quiet");
  }
}

const count = ({ stores }: Room, what: string): number =>
  (stores.db.prepare(`select count(*) as count from ${what}`).get() as { count: number }).count;

function owe({ stores, clock }: Room, of: MessageKey, runId: number | null = null): string {
  const key = makeMessageKey(of);
  const now = clock.now();
  stores.outbox.owe({
    key,
    classId: 1,
    personId: null,
    runId,
    priority: 3,
    dueAt: now,
    decidedAt: now,
    usefulUntil: null,
    body: { text: "", actions: [], mentions: [] },
  });
  return key;
}

/** Mina's film, developed and stopped, with all that was said of it. */
async function aFilm(room: Room): Promise<void> {
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  room.says("Mina", "/run next");
  await room.pass(130);
  room.says("Mina", "/run stop sure:yes");
}

describe("what is finished and old", () => {
  it("goes: a run that is over with its plan, its cues and what was said of it; its roll stays and is found", async () => {
    const room = createRoom();
    await aFilm(room);
    room.away(13 * DAY);
    clearAll(room);
    expect(count(room, "cues")).toBeGreaterThan(0);
    expect(count(room, "outbox")).toBeGreaterThan(0);
    room.away(2 * DAY);
    clearAll(room);
    expect([count(room, "cues"), count(room, "outbox")]).toEqual([0, 0]);
    expect([count(room, "runs"), count(room, "plans")]).toEqual([1, 1]);
    room.away(14 * DAY);
    clearAll(room);
    expect([count(room, "runs"), count(room, "plans")]).toEqual([0, 0]);
    expect(room.says("Mina", "/roll find lantern")).toContain("L1");
    expect(room.says("Mina", "/roll rate roll:1 rating:4")).not.toBe("");
    expect(room.says("Mina", "/roll find lantern")).toContain("L1");
    room.stores.db.exec("insert into rolls_text (rolls_text, rank) values ('integrity-check', 1)");
    expect(room.stores.db.pragma("foreign_key_check")).toEqual([]);
  });

  it("is kept longer where a school wants it so", async () => {
    const room = createRoom();
    await aFilm(room);
    room.away(29 * DAY);
    clearAll(room, { messagesDays: 28, runsDays: 90 });
    expect([count(room, "runs"), count(room, "plans")]).toEqual([1, 1]);
  });

  it("leaves its number unused: the next plan, run and word to many are counted on", async () => {
    const room = createRoom();
    await aFilm(room);
    room.says("Tess", "/class say text:First", "teacher");
    room.says("Tess", "/class say text:Second", "teacher");
    await room.tick();
    room.away(60 * DAY);
    clearAll(room);
    expect(count(room, "says")).toBe(1);
    room.says("Mina", PLAN);
    room.says("Mina", "/run start");
    expect(room.stores.plans.latest(1, "room:mina")?.number).toBe(2);
    expect(room.stores.runs.latest(1, "room:mina")?.number).toBe(2);
    room.says("Tess", "/class say text:Third", "teacher");
    expect(room.stores.says.newest(1)?.number).toBe(3);
  });
});

describe("what is not cleared, however old", () => {
  it("is anything of a run that is open", async () => {
    const room = createRoom();
    room.says("Mina", PLAN);
    room.says("Mina", "/run start");
    room.says("Mina", "/run next");
    for (let step = 1; step < 3; step += 1) {
      await room.pass(600);
      room.asks("Mina", `/run next step:${step}`);
    }
    await room.pass(2000);
    const before = ["runs", "cues", "outbox where run_id is not null"].map((what) => count(room, what));
    expect(Math.min(...before)).toBeGreaterThan(0);
    expect(room.stores.runs.open(1)).toHaveLength(1);
    room.away(400 * DAY);
    clearAll(room);
    expect(["runs", "cues", "outbox where run_id is not null"].map((what) => count(room, what))).toEqual(
      before,
    );
  });

  it("is the word that an open run takes another bottle, which would else be said again", async () => {
    const room = createRoom();
    room.says("Mina", PLAN);
    room.says("Mina", "/run start");
    const run = room.stores.runs.latest(1, "room:mina")?.id ?? 0;
    const ofOpen = owe(room, { kind: "redirect", run, step: 3, batch: 2, to: null });
    const ofOther = owe(room, { kind: "redirect", run: run + 7, step: 3, batch: 2, to: null });
    await room.tick();
    room.away(60 * DAY);
    clearAll(room);
    expect(room.stores.outbox.findByKey(ofOpen)).toBeDefined();
    expect(room.stores.outbox.findByKey(ofOther)).toBeUndefined();
  });

  it("is whom a word to many has reached, as long as the word is kept; the newest always is", async () => {
    const room = createRoom();
    room.says("Tess", "/class say text:First", "teacher");
    await room.tick();
    room.away(20 * DAY);
    room.says("Tess", "/class say text:Second", "teacher");
    await room.tick();
    clearAll(room);
    expect(room.says("Tess", "/class said say:1", "teacher")).toContain("**1 of 1** reached");
    room.away(100 * DAY);
    clearAll(room);
    expect(room.asks("Tess", "/class said say:1", "teacher").kind).toBe("refused");
    expect(room.says("Tess", "/class said", "teacher")).toContain("**1 of 1** reached");
  });

  it("is what is still owed", () => {
    const room = createRoom();
    room.away(-100 * DAY);
    const key = owe(room, { kind: "digest", class: 1, name: "260101.1080" });
    const [{ id = 0 } = {}] = room.stores.outbox.ready(room.clock.now(), 1);
    room.away(100 * DAY);
    room.stores.outbox.markLater([id], room.clock.now() + 60_000, "no chat for this class is running");
    clearAll(room);
    expect(room.stores.outbox.findByKey(key)).toBeDefined();
  });

  it("is the claim of a call that may be delivered again", () => {
    const room = createRoom();
    const claim = (): boolean => room.stores.calls.claim("room:mina:1", room.clock.now());
    expect(claim()).toBe(true);
    room.away(13 * DAY);
    clearAll(room);
    expect(claim()).toBe(false);
    room.away(2 * DAY);
    clearAll(room);
    expect(claim()).toBe(true);
  });

  it("is a class that is to be erased, and what is not swept yet", () => {
    const room = createRoom();
    room.stores.erasures.planClass(1, room.clock.now(), room.clock.now() + 30 * DAY * 1000);
    room.stores.erasures.addPerson({ classKey: "room:demo", personId: "room:nobody" }, room.clock.now());
    room.away(500 * DAY);
    clearAll(room);
    expect(count(room, "erasures")).toBe(2);
    room.stores.erasures.markSwept(room.clock.now());
    room.away(500 * DAY);
    clearAll(room);
    expect(room.stores.erasures.plannedOf(1)).toBeDefined();
    expect(count(room, "erasures")).toBe(1);
  });
});

it("forgets what was pressed at a sink, with the messages", () => {
  const room = createRoom();
  room.says("Mina", "/help");
  const press = room.stores.db.prepare(
    `insert into sink_presses (call_id, sink_id, device, class_id, person_id, line, at)
     values (?, 1, 'tablet', 1, 'room:mina', 'run next', ?)`,
  );
  press.run("one", room.clock.now());
  room.away(29 * DAY);
  press.run("two", room.clock.now());
  clearAll(room);
  expect(room.stores.db.prepare("select call_id from sink_presses").all()).toEqual([{ call_id: "two" }]);
});

it("forgets a device that was not seen for sixty days, and no other", () => {
  const room = createRoom();
  const add = (tokenHash: string): void =>
    room.stores.rooms.addSession(
      { tokenHash, classId: 1, personId: "room:mina", device: "phone" },
      room.clock.now(),
    );
  room.says("Mina", "/help");
  add("old");
  room.away(61 * DAY);
  add("new");
  clearAll(room);
  expect(room.stores.rooms.sessionsOf(1).map(({ tokenHash }) => tokenHash)).toEqual(["new"]);
});

describe("clearing", () => {
  it("waits while somebody is about to be called, but no longer than an hour", async () => {
    const room = createRoom();
    await aFilm(room);
    room.away(15 * DAY);
    const retention = retentionOf(room);
    room.says("Ben", PLAN);
    room.says("Ben", "/run start");
    room.says("Ben", "/run next");
    await room.pass(59);
    room.clock.advance(0.8);
    expect(retention.beat()).toBe("not quiet");
    room.clock.advance(2 * 3600);
    expect(retention.beat()).toBe("portion");
  });

  it("is not held up by what was written while the clock was wrong", async () => {
    const room = createRoom();
    room.away(3000 * DAY);
    for (let each = 0; each < 250; each += 1)
      room.stores.messages.add({
        classId: 1,
        personId: null,
        authorId: null,
        key: null,
        at: room.clock.now(),
        body: {},
      });
    room.away(-3000 * DAY);
    room.stores.messages.add({
      classId: 1,
      personId: null,
      authorId: null,
      key: null,
      at: room.clock.now(),
      body: {},
    });
    room.away(29 * DAY);
    clearAll(room);
    expect(count(room, "messages")).toBe(250);
  });

  it("lets a round pass after the clock was set, so that there is time to set it right", async () => {
    vi.useFakeTimers();
    try {
      const room = createRoom();
      await aFilm(room);
      const retention = retentionOf(room);
      retention.start();
      const minutes = (count_: number): void => {
        room.clock.advance(count_ * 60);
        vi.advanceTimersByTime(count_ * 60_000);
      };
      room.clock.advance(365 * DAY);
      minutes(11);
      expect(count(room, "runs")).toBe(1);
      for (let minute = 0; minute < 12; minute += 1) minutes(1);
      expect(count(room, "runs")).toBe(0);
      retention.stop();
    } finally {
      vi.useRealTimers();
    }
  });

  it("tells of a fault, and goes on at the next round", async () => {
    vi.useFakeTimers();
    try {
      const room = createRoom();
      const clear = (): never => {
        throw new Error("disk");
      };
      const stores = { ...room.stores, retention: { clear } };
      const retention = createRetention({ ...room, stores, ages: FOUR_WEEKS, tidy: () => {} });
      retention.start();
      for (let minute = 0; minute < 25; minute += 1) {
        room.clock.advance(60);
        vi.advanceTimersByTime(60_000);
      }
      retention.stop();
      expect(room.log.lines.filter(({ level }) => level === "error")).toHaveLength(2);
    } finally {
      vi.useRealTimers();
    }
  });
});

describe("a school's weeks", () => {
  it(
    "leave a store that grows by its log alone, and no fuller than the first weeks made it",
    { timeout: 600_000 },
    async () => {
      const school = openSchool(":memory:", {
        groups: 2,
        filmsAPeriod: 4,
        ages: { messagesDays: 14, runsDays: 14 },
      });
      const sizes = [];
      for (let week = 0; week < 12; week += 1) {
        await school.week();
        sizes.push(sizeOf(school.stores));
      }
      expect(school.faults()).toEqual([]);
      expect(school.films).toBe(96);
      const [first, ...later] = sizes.slice(3).map(({ passing, free }) => passing + free);
      // A page here and there is split otherwise from week to week.
      for (const each of later) expect(each).toBeLessThan((first ?? 0) * 1.1);
      expect(count({ stores: school.stores } as Room, "rolls")).toBeGreaterThanOrEqual(96);
      const [start, end] = [sizes[3], sizes[11]];
      expect((end?.file ?? 0) - (start?.file ?? 0)).toBeLessThanOrEqual(
        (end?.kept ?? 0) - (start?.kept ?? 0) + (first ?? 0) * 0.1,
      );
    },
  );
});
