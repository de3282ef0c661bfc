import { describe, expect, test } from "vitest";
import { createRoom, type Room } from "../support/room.ts";

const FIXER =
  "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l capacity:20 films/l clearing:0:45";

function open(...lines: readonly string[]): Room {
  const room = createRoom();
  room.asks("Tess", "/help", "teacher");
  for (const line of lines) {
    const answered = room.asks("Aida", line, "aide");
    if (answered.kind !== "done") throw new Error(answered.reply.text);
  }
  return room;
}

describe("warnings", () => {
  const toClass = (room: Room) =>
    room.heard.filter(({ personId }) => personId === null).map(({ text }) => text);
  const toTess = (room: Room) =>
    room.heard.filter(({ personId }) => personId === "room:tess").map(({ text }) => text);
  const rolls = (count: number) => `/batch correct batch:B1 rolls:${count} reason:morning class`;

  test("go to the class once for each mark, with the next action and who can do it, and to the teacher alone with the figures", async () => {
    const room = open(FIXER, rolls(18));
    await room.tick();
    expect(toClass(room)).toHaveLength(2);
    expect(toClass(room)[0]).toContain("**2 rolls left in B1** (Pier Fix 1+4).");
    expect(toClass(room)[0]).toContain("an aide or the teacher mixes new fixer");
    expect(toClass(room)[1]).toContain("**B1 needs a clearing test**");
    expect(toTess(room)).toHaveLength(2);
    expect(toTess(room)[0]).toContain("18 rolls through it so far");
    room.asks("Aida", rolls(1), "aide");
    await room.tick();
    expect(toClass(room)).toHaveLength(2);
    room.asks("Aida", rolls(1), "aide");
    await room.tick();
    expect(toClass(room)).toHaveLength(3);
    expect(toClass(room)[2]).toContain("**B1 is exhausted: don't use it.**");
    expect(toClass(room)[2]).toContain("silver collection, never the drain");
    expect(room.heard.map(({ key }) => key.length).every((length) => length <= 25)).toBe(true);
  });

  test("begin anew after a top-up", async () => {
    const room = open(FIXER, rolls(20), "/batch topup batch:B1 add:500 ml remove:500 ml to:silver");
    await room.tick();
    expect(toClass(room).filter((text) => text.includes("exhausted"))).toHaveLength(1);
    room.asks("Aida", rolls(10), "aide");
    await room.tick();
    expect(toClass(room).filter((text) => text.includes("exhausted"))).toHaveLength(2);
  });

  test("keep still in the silent hours and are said at their end", async () => {
    const room = open(FIXER);
    // From 18:00 to 23:00 UTC; silence is from 22:00 to 7:00.
    room.away(5 * 3600);
    room.asks("Aida", rolls(20), "aide");
    await room.tick();
    expect(room.heard).toEqual([]);
    room.away(8 * 3600 - 1);
    await room.tick();
    expect(room.heard).toEqual([]);
    room.away(1);
    await room.tick();
    expect(toClass(room)[0]).toMatch(/^\*\*B1 is exhausted/);
    expect(toTess(room)).toHaveLength(1);
  });

  test("say nothing that was not written down: a refused command warns nobody", async () => {
    const room = open(FIXER);
    room.asks("Mina", rolls(20));
    await room.tick();
    expect(room.heard).toEqual([]);
  });
});
