import { expect, test } from "vitest";
import { createRoom } from "../support/room.ts";

/* A teacher's day: a leak before class, a bottle that is exhausted, a bell too near, a run nobody tends, a film at the end. */

test("a teacher's day, from the first leak to the last film", async () => {
  const room = createRoom();
  const teacher = (line: string): string => room.says("Iris", line, "teacher");
  teacher("/class periods days:thu from:18:00 to:19:30");
  teacher("/class setup sinks:2 washplaces:2 dryslots:6");
  teacher("/batch mix kind:fixer product:Pier Fix volume:1 l dilution:1+4 capacity:10 films/l clearing:0:45");

  // A student reports a leak: every plan for that tank says so, and the class sees it.
  room.says("Mina", "/tank report tank:1 fault:leaks at the lid");
  expect(room.says("Ben", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1")).toContain(
    "leaks at the lid",
  );
  expect(teacher("/tank list")).toContain("**4 of 5** tanks are free and in order.");

  // How many can be done tonight?
  const fit = teacher("/class turns loads:8 films:1");
  expect(fit).toMatch(/^\*\*(All films|The films of \d) (of \d+) tank loads\*\*/);
  expect(fit).toContain("Bottleneck:");
  const { fields } = room.asks("Iris", "/class turns loads:8 films:1", "teacher").reply;
  expect(fields?.["hungByBell"]).toBeLessThan(9);

  // Three at work; the board has them in the order of urgency.
  for (const [at, person] of ["Mina", "Ben", "Ola"].entries()) {
    room.says(person, `/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:${at + 2}`);
    room.press(person, "Start");
  }
  room.press("Mina", "Tank is full");
  await room.pass(120);
  room.press("Ben", "Tank is full");
  await room.pass(440);
  // Mina was called at 9:00 and did nothing for twenty seconds: she is late, and she comes first.
  const board = teacher("/class board");
  expect(board.split("\n")[0]).toBe("**3 tanks in use**, **1 late**");
  expect(board.split("\n")[1]).toMatch(/^\*\*T2\*\* Mina, Rinse 1: \*\*LATE\*\*/);

  // The teacher taps for her, and says so to whoever is at the developer.
  expect(teacher("/run next run:R1")).toContain("rinse 1");
  expect(teacher("/class say mind the clock to:at step:develop")).toBe(
    "On its way to **2 people**: Ben and Ola.",
  );
  await room.pass(1);
  expect(teacher("/class said")).toContain("**2 of 2** reached.");

  // The fixer is found exhausted; everybody who has it before them is told what to take.
  teacher("/batch mix kind:fixer product:Pier Fix volume:1 l dilution:1+4 capacity:10 films/l clearing:0:45");
  teacher("/batch discard batch:B1 to:silver");
  expect(teacher("/class say fixer B1 is retired, take B2 to:before step:fix")).toContain("**3 people**");

  // Ola's tank stands loaded; the bell has come too near to pour in at all.
  await room.pass(4200);
  room.says("Ola", "/run stop run:R3 reason:no time left sure:yes");
  room.says("Ola", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:4");
  expect(room.press("Ola", "Start")).toContain("**Don't pour in.**");
  const late = teacher("/class turns");
  expect(late).toContain("Must wait for next time:** Ola");

  // Somebody has left the class; the log keeps what they did, nameless.
  room.says("Ola", "/run stop run:R4 sure:yes");
  expect(room.asks("Iris", "/class forget person:Mina sure:yes", "teacher").code).toBe("ERR_RUN_GOING");
  teacher("/run stop run:R1 sure:yes");
  expect(teacher("/class forget person:Mina sure:yes")).toContain("nameless");
  expect(teacher("/roll find")).toContain("Somebody: Lantern 400");
  expect(teacher("/class report today")).toContain("rolls by 2 people");
});
