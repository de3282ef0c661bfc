import { beforeEach, expect, test } from "vitest";
import { createRoom, type Room } from "../../support/room.ts";

/* No refusal is a dead end: it offers what would do, and the form as it was filled in. */

let room: Room;
beforeEach(() => {
  room = createRoom();
});
const labels = (typed: string): string[] =>
  (room.asks("Mina", typed).reply.actions ?? []).map(({ label }) => label);

test("several data sheets: a key for each, with its time, that keeps what was typed", () => {
  const typed = "/plan film:Lantern 400 temp:20 tank:3";
  expect(labels(typed)).toEqual(["9:00 · House MQ 1+1", "7:00 · House MQ stock"]);
  const plan = room.press("Mina", "9:00 · House MQ 1+1");
  expect(plan).toMatch(/^\*\*9:00\*\* at 20 °C/);
  expect(plan).toContain("tank 3");
});

test("a name nearly right: a key with the right one", () => {
  expect(labels("/plan film:Lanten 400 developer:House MQ dilution:1+1 temp:20")).toEqual(["Lantern 400"]);
  expect(room.press("Mina", "Lantern 400")).toMatch(/^\*\*9:00\*\*/);
});

test("a developer that is not there for this film: those that are", () => {
  expect(labels("/plan film:Quay 100 developer:Brine temp:20")).toEqual([
    "10:00 · House MQ 1+1",
    "8:00 · Pier Fine 1+9",
  ]);
  expect(labels("/sheet show film:Quay 100")).toEqual(["House MQ 1+1", "Pier Fine 1+9"]);
});

test("a tank that is none: the time all the same, and the tanks there are", () => {
  const answered = room.asks(
    "Mina",
    "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:44",
  );
  expect(answered.reply.text).toMatch(/^\*\*9:00\*\* at 20 °C \(68 °F\): Lantern 400 in House MQ 1\+1\. But/);
  expect(answered.reply.actions?.map(({ label }) => label)).toContain("Tank 3");
  expect(room.press("Mina", "Tank 3")).toMatch(/^\*\*9:00\*\* at 20 °C/);
});

test("chemistry that is exhausted: the time first, then what hinders the start", () => {
  room.says("Iris", "/batch mix kind:fixer product:Pier Fix volume:1 l dilution:1+4", "teacher");
  room.says("Iris", "/batch discard batch:B1 to:silver", "teacher");
  const { code, reply } = room.asks("Mina", "/plan film:Quay 100 developer:Pier Fine temp:20");
  expect(code).toBe("ERR_NO_BATCH_READY");
  expect(reply.text).toMatch(/^\*\*8:00\*\* at 20 °C .*\n.*fixer/);
});

test("a form that does not fit comes back with what was typed and its first fault", () => {
  const { reply } = room.asks("Mina", "/plan film:Lantern 400 temp:warm rolls:0");
  expect(reply.again).toEqual({ line: 'plan film:"Lantern 400" temp:warm rolls:0', option: "temp" });
  expect(room.asks("Mina", "/plan temp:20").reply.again?.option).toBe("film");
  expect(room.asks("Mina", "/plan film:Quay 100 temp:20").reply.again?.option).toBe("film");
  // Where there is nothing to fill in, no form opens.
  expect(room.asks("Mina", "/run next").reply.again).toBeUndefined();
  expect(room.asks("Mina", "/class say text:hello").reply.again).toBeUndefined();
});

test("what a tank, a run or a roll is called by is read wherever its number is", () => {
  expect(room.asks("Mina", "/tank report tank:T2 fault:leaks").kind).toBe("done");
  expect(room.asks("Iris", "/tank clear tank:t2", "teacher").kind).toBe("done");
  expect(room.asks("Mina", "/tank report tank:R2 fault:leaks").code).toBe("ERR_OPTIONS");
});
