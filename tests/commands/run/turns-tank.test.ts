import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { boardOf } from "../../../commands/class/board.ts";
import { viewOf } from "../../../commands/run/view.ts";
import { shiftRun } from "../../../store/shapes/run-shift.ts";
import { createFakeClock } from "../../support/clock.ts";
import { englishIn } from "../../support/english.ts";
import { aRun, START } from "../../support/make.ts";
import { createRoom, type Room } from "../../support/room.ts";

/* Whoever finds their tank taken is offered another like it, or is called when it is free. */

const FILM = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:";

let room: Room;
beforeEach(() => {
  room = createRoom();
});

/** Makes a plan for the tank and starts it; what the start answers. */
function start(person: string, tank: number, more = "") {
  room.says(person, `${FILM}${tank}`);
  return room.asks(person, `/run start ${more}`.trim());
}
const put = (person: string, run: number, step: number) =>
  room.asks(person, `/run next run:${run} step:${step} sure:yes`);
const turns = (person: string): string[] =>
  room
    .news(person)
    .flatMap((text) => text.split("\n")[0] ?? "")
    .filter((text) => /Your turn|Du bist dran/.test(text));
/** Through all baths; the last call hangs the film up. */
function finishBaths(person: string, run: number): void {
  const { plan } = room.stores.runs.find(1, run) ?? { plan: { steps: [] } };
  const dry = plan.steps.findIndex(({ kind }) => kind === "dry");
  for (let step = 0; step <= dry; step += 1) put(person, run, step);
}
/** Nothing is left but tank 2, and that is Mina's. */
function onlyTankTwo(): void {
  for (const { number } of room.stores.tanks.list(1)) if (number !== 2) room.stores.tanks.remove(1, number);
  expect(start("Mina", 2).code).toBeNull();
}

describe("where another tank like it is free", () => {
  test("it is offered, the plan goes into it as it is, and nobody waits", async () => {
    start("Mina", 2);
    const refused = start("Ben", 2);
    expect(refused.code).toBe("ERR_TANK_BUSY");
    expect(refused.reply.text).toMatch(/^Tank 2 is in use by Mina \(R1\)\. \*\*Take (one of tanks|tank) /);
    const key = refused.reply.actions?.find(({ label }) => label === "Take tank 1");
    expect(key?.line).toBe("run start plan:2 tank:1");
    expect(room.says("Ben", `/${key?.line}`)).toContain("**R2, tank 1**");
    expect(room.stores.runs.find(1, 2)?.queued).toBeUndefined();
    await room.pass(1);
    finishBaths("Mina", 1);
    await room.pass(1);
    expect(turns("Ben")).toEqual([]);
  });

  test("whoever insists waits for their own", () => {
    start("Mina", 2);
    const refused = start("Ben", 2);
    const key = refused.reply.actions?.find(({ label }) => label === "Wait for tank 2");
    const { reply } = room.asks("Ben", `/${key?.line}`);
    expect(reply.text).toContain("Tank 2 is in use by Mina (R1).");
    expect(reply.text).toContain("**Wait: tank 2 is not free yet.** I call you when it is.");
    expect(reply.actions?.find(({ label }) => label === "Tank is full")?.weight).toBe("plain");
  });

  test("one with a fault, of another size or that is not there is none", () => {
    const [first, ...others] = room.stores.tanks.list(1).filter(({ number }) => number !== 2);
    if (!first) throw new Error("the class has no second tank");
    for (const tank of others) room.stores.tanks.save(1, { ...tank, condition: "leaks" });
    room.stores.tanks.save(1, { ...first, volumeMl: first.volumeMl + 100 });
    start("Mina", 2);
    expect(start("Ben", 2).code).toBeNull();
    expect(room.says("Ola", `${FILM}2`)).toContain("P3");
    expect(room.asks("Ola", `/run start tank:${first.number}`).code).toBe("ERR_TANK_UNLIKE");
    expect(room.asks("Ola", "/run start tank:77").code).toBe("ERR_UNKNOWN_TANK");
    expect(room.asks("Ola", "/run start tank:two").code).toBe("ERR_UNKNOWN_TANK");
  });
});

describe("where none is free", () => {
  test("the next is called once the film hangs, then the one after; nobody twice", async () => {
    onlyTankTwo();
    expect(start("Ben", 2).reply.text).toContain("**Wait: tank 2 is not free yet.**");
    expect(start("Ola", 2).reply.text).toContain("**Wait: tank 2 is not free yet.**");
    expect(room.says("Ben", "/run status")).toContain("**Wait: tank 2 is not free yet.**");
    finishBaths("Mina", 1);
    await room.pass(1);
    expect(turns("Ben")).toEqual([
      "**Your turn: tank 2 is free.** Rinse it and dry its reel, and load your film in the dark. Pour in the developer: 150 ml of concentrate and 150 ml of water, mixed. Press the button when the tank is full.",
    ]);
    expect(turns("Ola")).toEqual([]);
    // Loading takes as long as it takes: the tank stays with whoever was called.
    await room.pass(600);
    expect(turns("Ola")).toEqual([]);
    expect(room.asks("Ben", "/run next run:2 step:0").code).toBeNull();
    finishBaths("Ben", 2);
    await room.pass(1);
    const heard = room.heard.filter(({ text }) => text.includes("Your turn"));
    expect(heard.map(({ personId }) => personId)).toEqual(["room:ben", "room:ola"]);
  });

  test("the tank is the first one's: pouring in is refused while another film is in it, unless it is empty after all", () => {
    onlyTankTwo();
    start("Ben", 2);
    const refused = room.asks("Ben", "/run next run:2 step:0");
    expect(refused.code).toBe("ERR_TANK_BUSY");
    expect(refused.reply.text).toContain("Is it really empty and yours?");
    expect(room.says("Ben", `/${refused.reply.actions?.[0]?.line}`)).toContain("left in the developer");
  });

  test("with no place at the sink either, the film is loaded first and waits with its tank then", async () => {
    onlyTankTwo();
    start("Ben", 2);
    room.says("Tess", "/class setup sinks:1", "teacher");
    room.says("Tess", "/tank add numbers:5 volume:900 ml", "teacher");
    expect(start("Ola", 5).code).toBeNull();
    finishBaths("Mina", 1);
    await room.pass(1);
    expect(turns("Ben")).toEqual([expect.stringContaining("tank 2 is free")]);
    put("Ola", 3, 0);
    await room.pass(1);
    expect(room.says("Ben", "/run status")).toContain("there is no place at the sink");
    finishBaths("Ola", 3);
    await room.pass(1);
    expect(turns("Ben").at(-1)).toContain("**Your turn: pour in now.**");
  });

  test("whoever waits and starts again, in the same tank or another, waits once", async () => {
    onlyTankTwo();
    start("Ben", 2);
    const again = start("Ben", 2);
    expect(again.code).toBe("ERR_TANK_BUSY");
    expect(again.reply.text).toContain("**R2, tank 2** waits for it already");
    room.says("Tess", "/tank add numbers:5 volume:900 ml", "teacher");
    const elsewhere = start("Ben", 5);
    expect(elsewhere.reply.text).toContain("R2 waits for a tank no longer, since you start here.");
    expect(room.stores.runs.find(1, 2)?.phase.kind).toBe("stopped");
    finishBaths("Mina", 1);
    await room.pass(60);
    expect(turns("Ben")).toEqual([]);
    expect(room.stores.rolls.ofRun(2), "of a film that was in no tank nothing is logged").toEqual([]);
    expect(room.says("Ben", "/run status run:R2")).toBe("**R2, tank 2** is stopped.");
  });

  test("a call that is owed and not said yet is taken back, too, and goes to the next", async () => {
    onlyTankTwo();
    start("Ben", 2);
    start("Ola", 2);
    room.says("Tess", "/tank add numbers:5 volume:900 ml", "teacher");
    finishBaths("Mina", 1);
    start("Ben", 5);
    await room.pass(1);
    const heard = room.heard.filter(({ text }) => text.includes("Your turn"));
    expect(heard.map(({ personId }) => personId)).toEqual(["room:ola"]);
  });

  test("waiting is ended without a question, since nothing is lost", () => {
    onlyTankTwo();
    start("Ben", 2);
    expect(room.says("Ben", "/run stop")).toBe("**R2, tank 2** is stopped.");
    expect(room.stores.rolls.ofRun(2)).toEqual([]);
  });

  test("a second film of one's own does not wait for one's own tank", () => {
    onlyTankTwo();
    expect(start("Mina", 2).reply.text).toBe(
      "Tank 2 is in use by your own R1. Take another tank, or stop that run first.",
    );
  });

  test("the board and the list of tanks show whose film is in it, and who waits", () => {
    start("Mina", 2);
    start("Ben", 2, "wait:yes");
    const rows = boardOf(room.stores.runs.open(1), room.stores.members.list(1), room.clock.now());
    expect(rows.map(({ tank, run, waitsForTank }) => [tank, run, waitsForTank])).toEqual([
      [null, "R2", 2],
      [2, "R1", null],
    ]);
    const board = room.says("Tess", "/class board", "teacher");
    expect(board).toContain("**1 tank in use**");
    expect(board).toContain("**R2** Ben, Developer: waits for tank 2");
    expect(room.says("Tess", "/tank list", "teacher")).toMatch(/2.*R1, Mina/);
    expect(room.says("Ola", "/ask text:who has tank 2")).toContain("Mina");
  });

  test("in German", async () => {
    for (const person of ["Mina", "Ben"]) room.says(person, "/mine language language:de");
    start("Mina", 2);
    const refused = start("Ben", 2);
    const said = [refused.reply.text, ...(refused.reply.actions ?? []).map(({ label }) => label)];
    said.push(
      start("Ben", 2, "wait:yes").reply.text,
      room.says("Ben", "/run next"),
      start("Ben", 2).reply.text,
    );
    finishBaths("Mina", 1);
    await room.pass(1);
    said.push(...room.news("Ben"));
    expect(said.at(-1)).toMatch(/^\*\*Du bist dran: Dose 2 ist frei\.\*\* Spül sie/);
    expect(englishIn(...said)).toEqual([]);
  });
});

test("its wait for a tank moves with a clock that is set, and a page tells whoever waits to wait", () => {
  const queued = { turn: 1, dueAtMs: null, forTank: true } as const;
  expect(shiftRun(aRun({ queued }), 5000).queued).toEqual(queued);
  const called = { turn: 1, dueAtMs: START, forTank: true } as const;
  expect(shiftRun(aRun({ queued: called }), 5000).queued).toEqual({ ...called, dueAtMs: START + 5000 });
  const waiting = viewOf(aRun({ queued }), "Mina");
  expect(waiting.resting).toBe("Wait: I call you when it is your turn.");
  expect(waiting.actions.map(({ weight }) => weight)).toEqual(["plain", "danger"]);
  const run = aRun({ queued: called });
  const view = viewOf({ ...run, plan: { ...run.plan, tank: 3 } } as typeof run, "Mina");
  expect(view.sayings["next-bath"]?.does).toBe("Your turn: tank 3 is free.");
});

test("a call owed by one process is said by the next, once, and says how late it is", async () => {
  const folder = mkdtempSync(join(tmpdir(), "sinkside-tanks-"));
  const path = join(folder, "sinkside.db");
  const clock = createFakeClock();
  room = createRoom(path, clock);
  onlyTankTwo();
  start("Ben", 2);
  finishBaths("Mina", 1);
  // Killed before it was said: the next says it. Killed after: the one after that says it no more.
  for (const wanted of [[expect.stringMatching(/\*\*13 s late\*\*/)], []]) {
    room.stores.close();
    clock.advance(12);
    room = createRoom(path, clock);
    room.stores.outbox.recover(clock.now());
    await room.pass(1);
    expect(room.news("Ben").filter((text) => text.includes("Your turn"))).toEqual(wanted);
  }
  room.stores.close();
  rmSync(folder, { recursive: true });
});
