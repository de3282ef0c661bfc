import { beforeEach, expect, test } from "vitest";
import { playDemoEvening } from "../../../bot/demo/evening.ts";
import { refillDemo } from "../../../bot/demo/refill.ts";
import { createRoom, type Room } from "../../support/room.ts";

/* What a fresh install has to look at: all of it invented. */

let room: Room;
beforeEach(() => {
  room = createRoom();
  playDemoEvening(room.stores, room.clock, room.log);
});

test("the log, the shelf and a ledger have something in them, and nothing was refused", () => {
  expect(room.log.lines).toEqual([]);
  const found = room.says("Mina", "/roll find");
  expect(found).toMatch(/^\*\*6 rolls\*\*/);
  expect(room.says("Mina", "/batch status")).toMatch(/^\*\*3 bottles\*\*, all fit for use/);
  // Six films through it, one of them tabular-grain, which loads it twice: 7 of 12 (its invented capacity).
  expect(room.says("Mina", "/batch status batch:B2")).toMatch(/^\*\*5 rolls left\*\*/);
  expect(room.says("Jo", "/batch ledger batch:B2", "teacher").match(/, used: 1 roll/g)).toHaveLength(6);
});

test("one film has a fault, and its cause stands in what was done to it", () => {
  expect(room.says("Mina", "/roll show roll:L5")).toMatch(
    /Fixer: 0:50 .*put down to: not fixed long enough/s,
  );
  expect(room.says("Mina", "/roll fault roll:L5 look:milky place:everywhere")).toMatch(
    /1\. Not fixed long enough\*\* \(likely\)/,
  );
});

test("the other half of the evening stands in the log: a contact sheet, and a print got right by a strip", () => {
  const found = room.says("Mina", "/print find");
  expect(found).toMatch(/^\*\*4 prints\*\*/);
  expect(room.says("Mina", "/roll frame roll:L1")).toContain("12");
  expect(room.says("Mina", "/contact sheet roll:L1")).toMatch(/^\*\*10 s\*\*/);
  expect(room.says("Mina", "/print show print:V4")).toContain("sky");
  expect(room.says("Mina", "/print fault print:V2 look:dark")).toMatch(/1\. Too much exposure/);
  expect(room.says("Mina", "/print again print:V4 size:24x30")).toMatch(/sky/);
});

test("it is over: nobody is called, no tank is in use, and whoever comes begins as ever", async () => {
  await room.pass(5);
  expect(room.heard).toEqual([]);
  expect(room.says("Mina", "/class board")).toContain("No tank is in use");
  expect(room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20")).toMatch(
    /^\*\*9:00\*\*/,
  );
  // A name that is taken is not shared.
  room.says("Ines", "/help");
  const rolls = room.says("Ines", "/mine show");
  expect(rolls).toContain("0 rolls");
});

test("where it can't be played the class has no past, and that is told", () => {
  const other = createRoom();
  other.stores.db.exec("delete from sheets");
  playDemoEvening(other.stores, other.clock, other.log);
  expect(other.log.lines.filter(({ level }) => level === "error").map(({ message }) => message)).toEqual([
    "the demo class starts without its last evening",
  ]);
  expect(other.says("Mina", "/batch status")).toContain("No bottle is noted yet");
});

test("the demo class never runs dry: what is used up or out of date is there anew, and only that", () => {
  const refill = (): void => refillDemo(room.stores, room.clock, room.log);
  const plan = "/plan film:Quay 100 developer:Pier Fine temp:20";
  const bottles = (): number => room.stores.batches.list(1).length;
  refill();
  expect(bottles()).toBe(3);
  room.says("Jo", "/batch discard batch:B2 to:silver", "teacher");
  expect(room.asks("Mina", plan).kind).toBe("refused");
  refill();
  expect(bottles()).toBe(4);
  expect(room.says("Mina", plan)).toMatch(/^\*\*8:00\*\*/);
  // A year later all of it is out of date.
  room.clock.advance(365 * 86_400);
  expect(room.asks("Mina", plan).kind).toBe("refused");
  refill();
  expect(bottles()).toBe(7);
  expect(room.asks("Mina", plan).kind).toBe("done");
  expect(room.log.lines.filter(({ level }) => level !== "debug")).toEqual([]);
});
