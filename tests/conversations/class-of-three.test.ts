import { expect, test } from "vitest";
import { putToWork } from "../support/at-work.ts";
import { createRoom } from "../support/room.ts";

/* A class of three, from its set-up to the report of its week. Everybody uses what the bot offers, mostly its buttons. */

const TEACHER = "Iris";
const STUDENTS = ["Mina", "Ben", "Ola"] as const;

test("a class of three, from set-up to the weekly report", async () => {
  const room = createRoom();
  const teacher = (line: string): string => room.says(TEACHER, line, "teacher");
  const press = (label: string): string => room.press(TEACHER, label, "teacher");

  // Set-up: eleven parts, by buttons where there are any.
  let lines = 0;
  const count = (text: string): string => {
    lines += 1;
    return text;
  };
  expect(count(teacher("/class setup"))).toContain("**Next: Name.**");
  count(teacher("/class setup name:Harbour Thursday zone:lisbon"));
  expect(count(teacher("/class periods days:thu from:18:00 to:20:30 name:Evening class"))).toContain(
    "The bell rings at 20:30:00",
  );
  expect(count(teacher("/class setup"))).toContain("**Next: Places at the sinks.**");
  count(teacher("/class setup sinks:2"));
  count(press("4"));
  count(press("12"));
  count(press("5 min"));
  count(press("20 min running"));
  expect(count(press("As each data sheet has it"))).toContain("**All 11 parts are set.**");
  // A minute and a half at ten seconds a line.
  expect(lines).toBeLessThanOrEqual(10);

  // Chemistry, and the class's places against the bell.
  teacher("/batch mix kind:fixer product:Pier Fix volume:1 l dilution:1+4 capacity:10 films/l clearing:0:45");
  for (const [at, person] of STUDENTS.entries())
    room.says(person, `/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:${at + 1}`);
  const fit = teacher("/class turns");
  expect(fit).toContain("**All films of 3 tank loads** can be dry, cut and sleeved by the bell");
  expect(fit).toContain("Bottleneck: the sinks (2 places).");

  // Two pour in, the third waits for a place at the sinks; the board knows it.
  for (const person of STUDENTS.slice(0, 2)) {
    room.says(person, "/help");
    expect(room.press(person, "Start")).not.toContain("bell");
    room.press(person, "Tank is full");
  }
  await room.pass(60);
  expect(teacher("/class board")).toContain("**T1** Mina, Developer: until");
  expect(room.says("Ola", "/class turns")).toMatch(/Ola \(P3\): pour in .*, at the latest \*\*/);

  // Ben's tank is warmer than planned; his calls move, Mina's do not. From here on everybody acts when called.
  expect(room.says("Ben", "/run correct temp:22")).toContain("22 °C");
  const atWork = putToWork(room, STUDENTS);
  await atWork.until("Mina", "Water is in");
  expect(atWork.pressed[0]).toEqual({ person: "Ben", label: "Water is in" });
  await atWork.until("Mina", "Fixer is in");
  await atWork.until("Mina", "Wash is running");
  room.says("Ola", "/help");
  room.press("Ola", "Start");
  room.press("Ola", "Tank is full");
  await atWork.until("Mina", "Film hangs");

  // The teacher says something to those who have their drying still before them.
  expect(teacher("/class say leave your film hanging over night to:before step:dry")).toContain("Ola");
  await atWork.pass(1);
  const said = /\*\*(\d) of \1\*\* reached\./.exec(teacher("/class said"));
  expect(said).not.toBeNull();
  for (const person of STUDENTS) await atWork.until(person, "Cut and sleeved");
  expect(room.stores.runs.open(1)).toEqual([]);

  // What came out of it, and what it teaches.
  room.says("Mina", "/help");
  room.press("Mina", "5");
  room.says("Ben", "/help");
  room.press("Ben", "Something looks wrong");
  room.press("Ben", "Too dark");
  room.press("Ben", "dense");
  const ranked = room.press("Ben", "Dark");
  expect(ranked).toContain("**1. ");
  const [, first] = /\*\*1\. (.+?)\*\* \(/.exec(ranked) ?? [];
  room.press("Ben", `1: ${first}`);
  room.says("Ola", "/roll note note:harbour lights from the pier");
  expect(room.says("Mina", "/roll find harb pier")).toContain("Ola: Lantern 400");
  expect(teacher("/roll find batch:B1")).toContain("**3 rolls**");
  expect(teacher("/batch status")).toContain("B1");

  // The week on one page.
  const report = room.asks(TEACHER, "/class report this week", "teacher").reply;
  expect(report.text).toContain("3 rolls by 3 people");
  expect(report.fields).toMatchObject({
    rolls: 3,
    finished: 3,
    runsCalled: 3,
    faulty: 1,
    faults: [{ name: "dense", count: 1 }],
    rating: { mean: 5, count: 1 },
    developers: [{ name: "House MQ 1+1", ml: 300 + 300 + 500 }],
    batchesMixed: [{ name: "fixer", count: 1 }],
  });
  const doses = report.fields?.["dosePerMille"] as { median: number };
  expect(Math.abs(doses.median - 1000)).toBeLessThan(20);
});

test("somebody else's plan and somebody else's tank are named, not taken", async () => {
  const room = createRoom();
  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  room.says("Ben", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  expect(room.says("Ben", "/run start plan:P1")).toBe(
    "P1 is Mina's plan. Make your own with `/plan`: it takes the same film and bath.",
  );
  room.says("Mina", "/run start plan:P1");
  expect(room.says("Ben", "/run start plan:P2")).toBe(
    "Tank 1 is in use by Mina (R1). **Take tank 2**: of the same size, and free.",
  );
  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  expect(room.says("Mina", "/run start plan:P3")).toBe(
    "Tank 1 is in use by your own R1. Take another tank, or stop that run first.",
  );
});
