import { describe, expect, test } from "vitest";
import { createRoom, type Room } from "../support/room.ts";

/*
 * A fixer tested while films are on their way. Fixing takes twice the clearing time, three times for tabular-grain film, and the
 * class's least of 5:00: US Navy NAVEDTRA 14209.
 */

const STOCK = "/batch mix kind:developer product:House MQ dilution:stock volume:5 l";
const FIXER =
  "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:2 l capacity:20 films/l clearing:2:00";
const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";
const FIX_STEP = 3;
const SLOW = "/batch test batch:B2 clearing:3:00";

function open(): Room {
  const room = createRoom();
  for (const line of [STOCK, FIXER]) must(room, line);
  return room;
}

function must(room: Room, line: string): string {
  const { kind, reply } = room.asks("Aida", line, "aide");
  if (kind !== "done") throw new Error(reply.text);
  return reply.text;
}

/** The bath of this step has just gone in. */
function startAt(room: Room, person: string, tank: number, step: number): void {
  room.asks(person, `${PLAN} tank:${tank}`);
  room.press(person, "Start");
  for (let at = 0; at <= step; at += 1) room.asks(person, `/run next sure:yes step:${at}`);
}

/** What a run's owner was told of its fixing, the newest last. */
const told = (room: Room, person: string): string[] =>
  room.news(person).filter((text) => /in the fixer until|fixed too short/.test(text));

const leftIn = (room: Room, person: string): unknown => room.says(person, "/run status");

describe("a fixer tested slower than it was thought to be", () => {
  test("keeps the film that is in it until it is fixed, with a call at that time and a word at once", async () => {
    const room = open();
    startAt(room, "Mina", 1, FIX_STEP);
    await room.pass(60);
    expect(must(room, SLOW)).toContain("**1 film under way is fixed longer now**");
    await room.tick();
    expect(told(room, "Mina")).toEqual([
      expect.stringMatching(/Leave your film in the fixer until [^]*: 6 min in all/),
    ]);
    expect(leftIn(room, "Mina")).toContain("5:00");
    await room.pass(235);
    expect(room.news("Mina").join()).not.toContain("Pour");
    await room.pass(70);
    expect(room.news("Mina").join()).toContain("Pour");
  });

  test("also one whose time was over, as long as the next bath is not in", async () => {
    const room = open();
    startAt(room, "Mina", 1, FIX_STEP);
    await room.pass(310);
    must(room, SLOW);
    await room.tick();
    expect(told(room, "Mina")).toHaveLength(1);
    expect(leftIn(room, "Mina")).toContain("0:50");
  });

  test("fixes films that are still to come as long, without a word to their owners", async () => {
    const room = open();
    startAt(room, "Mina", 1, 0);
    expect(must(room, SLOW)).toContain("**1 film under way is fixed longer now**");
    await room.tick();
    expect(told(room, "Mina")).toEqual([]);
    for (let at = 1; at <= FIX_STEP; at += 1) room.asks("Mina", `/run next sure:yes step:${at}`);
    expect(leftIn(room, "Mina")).toContain("6:00");
  });

  test("sends film that has left it back, once for each test that says so", async () => {
    const room = open();
    startAt(room, "Mina", 1, FIX_STEP);
    await room.pass(300);
    room.asks("Mina", `/run next sure:yes step:${FIX_STEP + 1}`);
    expect(must(room, SLOW)).toContain("**1 film has left it too soon:**");
    await room.tick();
    expect(told(room, "Mina")).toEqual([
      expect.stringMatching(/Your film was fixed too short[^]*needs 6 min/),
    ]);
  });

  test("one that clears as fast as was thought changes nothing", async () => {
    const room = open();
    startAt(room, "Mina", 1, FIX_STEP);
    expect(must(room, "/batch test batch:B2 clearing:2:00")).not.toContain("under way");
    await room.tick();
    expect(told(room, "Mina")).toEqual([]);
    expect(leftIn(room, "Mina")).toContain("5:00");
  });
});

test("stock that is diluted in the tank is used once, also where the bottle's stock is poured back", async () => {
  const room = createRoom();
  must(room, `${STOCK} capacity:10 films/l`);
  room.asks("Mina", `${PLAN} tank:1`);
  room.press("Mina", "Start");
  room.press("Mina", "Tank is full");
  await room.pass(530);
  expect(room.news("Mina").join()).toContain("Pour out the developer");
  expect(room.news("Mina").join()).not.toContain("back into");
  const fields = room.asks("Aida", "/batch status batch:B1", "aide").reply.fields;
  // Half of what a tank takes; 4.85 l are good for 48 whole films.
  expect(fields).toMatchObject({ usedMl: 150, leftRolls: 48 });
});

describe("a bottle and the films that are in it", () => {
  test("who throws it away is told of the films in it, whose bath goes into no bottle", () => {
    const room = open();
    startAt(room, "Mina", 1, FIX_STEP);
    expect(must(room, "/batch discard batch:B2 to:silver")).toContain("**1 film is in it still.**");
  });

  test("whose film is one more than it is good for is told, and the last that it is good for is not", async () => {
    const room = createRoom();
    must(room, STOCK);
    must(room, "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l capacity:3 films/l");
    startAt(room, "Mina", 1, FIX_STEP);
    room.says("Ben", `${PLAN} rolls:2`);
    room.press("Ben", "Start");
    must(room, "/batch correct batch:B2 rolls:0.5 reason:a test strip");
    for (let at = 0; at <= FIX_STEP; at += 1) room.says("Ben", `/run next sure:yes step:${at}`);
    await room.tick();
    const over = room.news().filter((text) => text.includes("past its end"));
    expect(over).toEqual([expect.stringContaining("_R2_")]);
  });
});
