import { expect, test } from "vitest";
import { createRoom } from "../support/room.ts";

/* A student who does everything wrong. Each time: what is wrong, what to do, and nothing lost. */

test("a student who does everything wrong still ends with a film and a cause", async () => {
  const room = createRoom();
  const says = (line: string): string => room.says("Mina", line);
  const code = (line: string): string | null => room.asks("Mina", line).code;

  // Typing.
  expect(says("")).toBe("Type a command, for example /help.");
  expect(says("/pln film:Lantern")).toContain("Did you mean /plan");
  expect(says("/plan film:Lantren 400 temp:20")).toContain("Lantern 400");
  expect(code("/plan film:Lantern 400 temp:99")).not.toBeNull();
  expect(says("/plan film:Lantern 400 temp:68 developer:House MQ")).toContain("Which scale");
  expect(code("/plan film:Lantern 400 temp:twenty")).toBe("ERR_OPTIONS");
  expect(code(`/plan film:${"x".repeat(5000)} temp:20`)).toBe("ERR_OPTIONS");
  expect(code("/plan film:Lantern 400 temp:20 temp:21")).toBe("ERR_TWICE");
  expect(code("/plan film:'; drop table rolls; -- temp:20")).not.toBe("ERR_BROKEN");

  // What is not theirs to do.
  for (const line of [
    "/class setup sinks:9",
    "/class say hello",
    "/batch discard batch:B1 to:drain",
    "/tank clear tank:1",
    "/roll export",
  ])
    expect(code(line), line).toBe("ERR_ROLE");
  room.says("Ben", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:2");
  room.press("Ben", "Start");
  expect(code("/run next run:R1")).toBe("ERR_NOT_YOURS");
  expect(code("/run stop run:R1 sure:yes")).toBe("ERR_NOT_YOURS");

  // Starting without a plan, then in a tank that is taken, then twice.
  expect(code("/run start")).toBe("ERR_NO_PLAN");
  expect(code("/run next")).toBe("ERR_NO_RUN");
  says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:2");
  expect(code("/run start")).toBe("ERR_TANK_BUSY");
  says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:3");
  expect(room.press("Mina", "Start")).toContain("Pour in the developer");
  expect(code("/run start")).toBe("ERR_TANK_BUSY");

  // Taps twice, taps too early, says they poured an hour before they began.
  room.press("Mina", "Tank is full");
  expect(says("/run next run:R2 step:0")).toContain("Noted already");
  await room.pass(60);
  expect(code("/run next run:R2 step:1")).toBe("ERR_TOO_EARLY");
  expect(code("/run next run:R2 step:5")).toBe("ERR_OLD_BUTTON");
  expect(code("/run correct ago:3 h")).toBe("ERR_BEFORE_LAST_STEP");
  expect(code("/run correct")).toBe("ERR_NOTHING_TO_CORRECT");
  expect(code("/run correct temp:60")).not.toBeNull();

  // Doesn't hear the call and pours out three minutes late; skips half of the fixer.
  await room.pass(480 + 180);
  expect(room.news("Mina").some((text) => text.includes("**Is the rinse 1 in?**"))).toBe(true);
  says("/run next run:R2");
  await room.pass(40);
  says("/run next run:R2");
  await room.pass(40);
  says("/run next run:R2");
  await room.pass(150);
  expect(says("/run next run:R2")).toContain("Is the next bath really in already?");
  says("/run next run:R2 sure:yes");
  await room.pass(200);

  // Gives up, and tries to give up twice.
  expect(says("/run stop run:R2 reason:milky!")).toContain("Stop **R2, tank 3**?");
  says("/run stop run:R2 reason:milky! sure:yes");
  expect(code("/run next run:R2")).toBe("ERR_RUN_OVER");

  // The log knows what went wrong, and says it.
  const shown = says("/roll show");
  expect(shown).toContain("Developer: 3 min too long");
  expect(shown).toContain("Fixer: 2 min 30 s too short");
  says("/roll fault look:milky");
  const ranked = room.press("Mina", "Everywhere");
  expect(ranked).toContain("**1. Not fixed long enough** (likely)");
  expect(ranked).toContain("it was fixed 2:30 instead of 5:00");
  expect(ranked).toContain("Fix again now, in fresh fixer");
  room.press("Mina", "1: Not fixed long enough");
  expect(says("/roll find fault:milky")).toContain("**1 roll**");

  // Rates it nine of five, notes an essay, erases somebody else's name.
  expect(code("/roll rate rating:9")).toBe("ERR_OPTIONS");
  expect(code(`/roll note note:${"long ".repeat(500)}`)).toBe("ERR_OPTIONS");
  expect(says("/mine erase name:Ben")).toContain("Nothing is erased.");

  // Ben's film was never touched by any of it.
  expect(room.stores.runs.find(1, 1)?.phase).toMatchObject({ kind: "waiting", step: 0 });
  expect(room.log.lines.filter(({ level }) => level === "error")).toEqual([]);
});

/** Fixing 5:00, wash 3:00; steps by number, as the demo's plan has them. */
test.each([
  [3, "was fixed 4 min too short: tell the teacher."],
  [4, "was washed 2 min too short: wash it again."],
])("a film whose step %i was cut short is not called ready for its contact sheet", async (short, says) => {
  const room = createRoom();
  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  room.press("Mina", "Start");
  const seconds = [540, 30, 30, 300, 180, 60, 1200];
  let last = "";
  for (let step = 0; step <= 7; step += 1) {
    last = room.says("Mina", `/run next sure:yes step:${step}`);
    await room.pass(step === short ? 60 : (seconds[step] ?? 0) + 1);
  }
  expect(last).toMatch(/^\*\*R1, tank 1 is finished, but it/);
  expect(last).toContain(says);
});
