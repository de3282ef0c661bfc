import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { nextQueued } from "../../../commands/run/turns.ts";
import { shiftRun } from "../../../store/shapes/run-shift.ts";
import { doingNow } from "../../../commands/run/doing.ts";
import { viewOf } from "../../../commands/run/view.ts";
import { after, aTrayRun, next } from "../../support/trays.ts";
import { createFakeClock } from "../../support/clock.ts";
import { englishIn } from "../../support/english.ts";
import { aRun, START } from "../../support/make.ts";
import { createRoom, type Room } from "../../support/room.ts";

/* Who waits for a place is called when there is one. */

describe("the place in a queue", () => {
  const now = START;
  test.each([
    ["who finds a place never waits", undefined, now, undefined],
    [
      "who finds none waits, for a moment that is known or not",
      undefined,
      now + 9000,
      { turn: 1, dueAtMs: now + 9000 },
    ],
    ["", undefined, null, { turn: 1, dueAtMs: null }],
    ["a place that is there now is called now", { turn: 1, dueAtMs: null }, now, { turn: 1, dueAtMs: now }],
    ["one that is there sooner too", { turn: 1, dueAtMs: now + 9000 }, now, { turn: 2, dueAtMs: now }],
    [
      "what was owed for another moment is owed anew",
      { turn: 1, dueAtMs: now + 9000 },
      now + 5000,
      { turn: 2, dueAtMs: now + 5000 },
    ],
    ["or taken back", { turn: 1, dueAtMs: now + 9000 }, null, { turn: 2, dueAtMs: null }],
    [
      "the same moment changes nothing",
      { turn: 1, dueAtMs: now + 9000 },
      now + 9000,
      { turn: 1, dueAtMs: now + 9000 },
    ],
    [
      "who was called is not called again",
      { turn: 1, dueAtMs: now - 9000 },
      now,
      { turn: 1, dueAtMs: now - 9000 },
    ],
    ["unless the place is gone again", { turn: 1, dueAtMs: now - 9000 }, null, { turn: 2, dueAtMs: null }],
  ])("%s", (_, queued, atMs, wanted) => {
    expect(nextQueued(queued, atMs, now)).toEqual(wanted);
  });

  test("its moment moves with a clock that is set", () => {
    const run = aRun({ queued: { turn: 2, dueAtMs: START } });
    expect(shiftRun(run, 5000).queued).toEqual({ turn: 2, dueAtMs: START + 5000 });
    expect(shiftRun(aRun(), 5000).queued).toBeUndefined();
  });
});

describe("on the page", () => {
  const waiting = aTrayRun({ queued: { turn: 1, dueAtMs: START + 9000 } });

  test("a phone knows the moment ahead, and tells whoever waits to wait", () => {
    const view = viewOf(waiting, "Mina");
    expect(view.calls).toEqual([{ kind: "next-bath", at: START + 9000 }]);
    expect(doingNow(view, START)).toBe("Wait: I call you when it is your turn.");
    expect(doingNow(view, START + 9000)).toMatch(/^There is room in the trays\. Slide the print/);
    expect(view.sayings["next-bath"]?.actions).toHaveLength(1);
  });

  test("while nobody knows the moment there is no call, nor once it has begun", () => {
    expect(viewOf({ ...waiting, queued: { turn: 1, dueAtMs: null } }, "Mina").calls).toEqual([]);
    const begun = after(waiting, next(START));
    expect(viewOf(begun, "Mina").sayings["next-bath"]?.does).toBe("Now: stop bath.");
  });
});

const RC = "/tray plan paper:resin-coated temp:20C";
const YOUR_TURN = "**Your turn: put it in now.** There is room in the trays.";

let room: Room;
beforeEach(() => {
  room = createRoom();
});
function start(person: string, plan: string): number {
  room.says(person, plan);
  return Number(room.asks(person, "/run start").reply.fields?.["run"]);
}
const put = (person: string, run: number, step: number) =>
  room.asks(person, `/run next run:${run} step:${step}`);
const turns = (person: string): string[] =>
  room
    .news(person)
    .flatMap((text) => text.split("\n")[0] ?? "")
    .filter((text) => text.includes("Your turn"));

describe("at a line of trays", () => {
  test("the next is called once the place is really free, then the one after; nobody twice", async () => {
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    const ben = start("Ben", `${RC} prints:2`);
    expect(room.says("Ben", "/run status")).toContain("R2");
    const ola = start("Ola", `${RC} prints:2`);
    // Mina's minute is over, but her prints lie on in the developer.
    await room.pass(90);
    expect(room.heard.filter(({ text }) => text.includes("Your turn"))).toEqual([]);
    put("Mina", 1, 1);
    await room.pass(1);
    expect(turns("Ben")).toEqual([
      `${YOUR_TURN} Slide the print into the developer, face down, push it under and turn it. Press the button when it is under.`,
    ]);
    await room.pass(29);
    put("Mina", 1, 2);
    expect(put("Ben", ben, 0).kind).toBe("done");
    await room.pass(60);
    put("Mina", 1, 3);
    put("Ben", ben, 1);
    await room.pass(1);
    const heard = room.heard.filter(({ text }) => text.includes("Your turn"));
    expect(heard.map(({ personId }) => personId)).toEqual(["room:ben", "room:ola"]);
    expect(put("Ola", ola, 0).kind).toBe("done");
  });

  test("who begins where there is room is called for nothing", async () => {
    put("Mina", start("Mina", RC), 0);
    const text = room.says("Ben", RC);
    expect(text).not.toContain("Wait");
    room.says("Ben", "/run start");
    await room.pass(400);
    expect(turns("Ben")).toEqual([]);
  });

  test("who must wait is told so at once, and until when", () => {
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    room.says("Ben", RC);
    const { reply } = room.asks("Ben", "/run start");
    expect(room.says("Ola", RC)).toContain("P3");
    expect(reply.text).toContain("**Wait: the trays are full** until ");
    expect(reply.actions?.find(({ label }) => label === "Print is under")?.weight).toBe("plain");
  });

  test("a run that is stopped makes room as well, and whoever stops waiting is not called", async () => {
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    start("Ben", `${RC} prints:2`);
    start("Ola", `${RC} prints:2`);
    room.says("Ben", "/run stop sure:yes");
    await room.pass(10);
    room.says("Mina", "/run stop sure:yes");
    await room.pass(120);
    const heard = room.heard.filter(({ text }) => text.includes("Your turn"));
    expect(heard.map(({ personId }) => personId)).toEqual(["room:ola"]);
  });

  test("whoever is called and does not come gives way after three minutes, and is called again when there is room", async () => {
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    const ben = start("Ben", `${RC} prints:2`);
    const ola = start("Ola", `${RC} prints:2`);
    room.says("Mina", "/run stop sure:yes");
    await room.pass(1);
    expect(turns("Ben")).toHaveLength(1);
    expect(put("Ola", ola, 0).code).toBe("ERR_TRAYS_FULL");
    await room.pass(178);
    expect(turns("Ola")).toEqual([]);
    await room.pass(2);
    expect(turns("Ola")).toHaveLength(1);
    expect(put("Ola", ola, 0).kind).toBe("done");
    expect(put("Ben", ben, 0).code).toBe("ERR_TRAYS_FULL");
    await room.pass(60);
    put("Ola", ola, 1);
    await room.pass(1);
    expect(turns("Ben")).toHaveLength(1);
  });

  test("of whoever waited and is erased no call is left", async () => {
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    start("Ben", `${RC} prints:2`);
    room.says("Ben", "/mine erase name:Ben");
    expect(room.stores.members.find(1, "room:ben"), "while they wait nothing is erased").toBeDefined();
    room.says("Ben", "/run stop sure:yes");
    room.says("Ben", "/mine erase name:Ben");
    expect(room.stores.members.find(1, "room:ben")).toBeUndefined();
    const owed = room.stores.db
      .prepare("select count(*) as n from outbox where person_id = 'room:ben'")
      .get();
    expect(owed).toEqual({ n: 0 });
    room.says("Mina", "/run stop sure:yes");
    await room.pass(120);
    expect(room.heard.filter(({ text }) => text.includes("Your turn"))).toEqual([]);
  });

  test("places that the teacher adds are given out at once, as many as there are", async () => {
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    start("Ben", `${RC} prints:2`);
    start("Ola", `${RC} prints:2`);
    room.says("Tess", "/tray set places:4 stopplaces:4 fixplaces:4 washplaces:12", "teacher");
    await room.pass(1);
    const heard = room.heard.filter(({ text }) => text.includes("Your turn"));
    expect(heard.map(({ personId }) => personId)).toEqual(["room:ben"]);
    room.says("Tess", "/tray set places:6 stopplaces:6 fixplaces:6", "teacher");
    await room.pass(1);
    const both = room.heard.filter(({ text }) => text.includes("Your turn"));
    expect(both.map(({ personId }) => personId)).toEqual(["room:ben", "room:ola"]);
  });

  test("in German", async () => {
    room.says("Ben", "/mine language language:de");
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    room.says("Ben", RC);
    const said = [room.says("Ben", "/run start"), room.says("Ben", "/run next")];
    room.says("Mina", "/run stop sure:yes");
    await room.pass(1);
    said.push(...room.news("Ben"));
    expect(said.at(-1)).toContain("**Du bist dran: Leg ihn jetzt ein.**");
    expect(englishIn(...said)).toEqual([]);
  });
});

describe("at the sink", () => {
  const FILM = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:";

  test("the next film is called when a tank goes from the fixer into the wash", async () => {
    room.says("Tess", "/class setup sinks:1", "teacher");
    const first = start("Mina", `${FILM}1`);
    const second = start("Ben", `${FILM}2`);
    start("Ola", RC);
    expect(room.says("Ben", "/run status")).toContain("R2");
    const steps = room.stores.runs.find(1, first)?.plan.steps ?? [];
    const wash = steps.findIndex(({ kind }) => kind === "wash");
    for (let step = 0; step < wash; step += 1) {
      put("Mina", first, step);
      await room.pass(steps[step]?.seconds ?? 0);
      expect(turns("Ben")).toEqual([]);
    }
    put("Mina", first, wash);
    await room.pass(1);
    expect(turns("Ben")).toEqual([
      expect.stringMatching(
        /^\*\*Your turn: pour in now\.\*\* There is a place at the sink\. Pour in the developer/,
      ),
    ]);
    expect(turns("Ola")).toEqual([]);
    expect(put("Ben", second, 0).kind).toBe("done");
  });
});

test("places at the sinks that the teacher adds are given out at once, too", async () => {
  const FILM = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:";
  room.says("Tess", "/class setup sinks:1", "teacher");
  put("Mina", start("Mina", `${FILM}1`), 0);
  start("Ben", `${FILM}2`);
  start("Ola", `${FILM}3`);
  room.says("Tess", "/class setup name:Evening class", "teacher");
  await room.pass(1);
  expect(turns("Ben")).toEqual([]);
  room.says("Tess", "/class setup sinks:2", "teacher");
  await room.pass(1);
  const heard = room.heard.filter(({ text }) => text.includes("Your turn"));
  expect(heard.map(({ personId }) => personId)).toEqual(["room:ben"]);
});

test("at the sink, too, whoever does not come gives way", async () => {
  const FILM = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:";
  room.says("Tess", "/class setup sinks:1", "teacher");
  start("Mina", `${FILM}1`);
  start("Ben", `${FILM}2`);
  await room.pass(179);
  expect(turns("Ben")).toEqual([]);
  await room.pass(2);
  expect(turns("Ben")).toHaveLength(1);
});

describe("with the process away", () => {
  test("a call owed by one process is said by the next, once, and says how late it is", async () => {
    const folder = mkdtempSync(join(tmpdir(), "sinkside-turns-"));
    const path = join(folder, "sinkside.db");
    const clock = createFakeClock();
    room = createRoom(path, clock);
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    start("Ben", `${RC} prints:2`);
    await room.pass(60);
    put("Mina", 1, 1);
    // Killed before it was said.
    room.stores.close();
    clock.advance(12);
    room = createRoom(path, clock);
    room.stores.outbox.recover(clock.now());
    await room.pass(1);
    const [call] = room.news("Ben").filter((text) => text.includes("Your turn"));
    expect(call).toMatch(/\*\*13 s late\*\*: this was for 18:01:00/);
    // Killed after it was said: the next one says it no more.
    room.stores.close();
    room = createRoom(path, clock);
    room.stores.outbox.recover(clock.now());
    await room.pass(5);
    put("Mina", 1, 2);
    await room.pass(60);
    expect(turns("Ben")).toEqual([]);
    room.stores.close();
    rmSync(folder, { recursive: true });
  });

  test("a place that was to be free and is not, since nobody moved the prints, is not called", async () => {
    put("Mina", start("Mina", `${RC} prints:2`), 0);
    start("Ben", `${RC} prints:2`);
    room.away(300);
    await room.pass(2);
    expect(turns("Ben")).toEqual([]);
    put("Mina", 1, 1);
    await room.pass(1);
    expect(turns("Ben")).toHaveLength(1);
  });
});
