import { beforeEach, describe, expect, test } from "vitest";
import { englishIn } from "../../support/english.ts";
import { createRoom, type Room } from "../../support/room.ts";
import { AROUND_DE } from "./around.de.ts";
import { BASICS_DE } from "./basics.de.ts";
import { BASICS_EN } from "./basics.en.ts";
import { DESK_DE } from "./desk.de.ts";
import { EVENING_DE } from "./evening.de.ts";
import { WORRY_DE } from "./worry.de.ts";

/* What stands in a beginner's way at the sink: each question gets something to do. */

const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:3";

let room: Room;
beforeEach(() => {
  room = createRoom();
});
const keys = (typed: string) =>
  (room.asks("Mina", typed).reply.actions ?? []).map(({ label, line }) => [label, line]);
/** Says that the bath of each of these steps is in. */
function put(...steps: readonly number[]): void {
  for (const step of steps) room.says("Mina", `/run next run:1 step:${step} sure:yes`);
}

// After two minutes in the fixer the lid may come off: Army correspondence course SS0509-8, p. 24. Here: after the whole time.
test("the tank stays shut until the fixing time is over, and may be opened then", async () => {
  expect(room.says("Mina", "can i open the tank")).toMatch(/^\*\*Leave the lid on/);
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  put(0, 1, 2, 3);
  expect(room.says("Mina", "can i open the tank now")).toMatch(/^\*\*Leave the lid on[^]*left in the fixer/);
  await room.pass(400);
  expect(room.says("Mina", "can i have a peek")).toMatch(/^\*\*The lid may come off: the film is fixed/);
  put(4);
  expect(room.says("Mina", "i took the lid off")).toMatch(
    /^\*\*The lid may come off: the film is fixed[^]*left in the wash/,
  );
});

test("a wrong plan is made anew before the developer is in, its run stopped first; after that the teacher says", () => {
  room.says("Mina", PLAN);
  expect(keys("i used the wrong film in the plan")).toEqual([["Make a plan", "plan"]]);
  room.says("Mina", "/run start");
  expect(keys("i used the wrong film in the plan")).toEqual([
    ["Stop R1", "run stop run:1"],
    ["Make a plan", "plan"],
  ]);
  put(0);
  expect(room.says("Mina", "i used the wrong film in the plan")).toMatch(
    /^\*\*Go on, and tell the teacher now/,
  );
});

test("a wrong number of the tank changes nothing that is poured in", () => {
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  expect(keys("i got the wrong tank number")).toEqual([
    ["Stop R1", "run stop run:1"],
    ["Make a plan", "plan"],
  ]);
  put(0);
  expect(room.says("Mina", "i got the wrong tank number")).toMatch(/^\*\*Go on: the tank's number/);
});

test("a tank that somebody else poured out, or into, is no bath of one's own", () => {
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  put(0);
  expect(room.says("Mina", "someone poured out my tank")).toMatch(/^\*\*Poured out too early\?/);
  expect(room.says("Mina", "someone poured something into my tank")).toMatch(/^\*\*The wrong bath\?/);
  expect(room.stores.runs.find(1, 1)?.phase).toMatchObject({ step: 0 });
});

test("where a film is in its tank, its run says which it is; before that, its cassette", () => {
  expect(room.says("Mina", "which film is this")).toMatch(/^\*\*Read its name off the cassette/);
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  expect(room.says("Mina", "which film is this")).toContain("tank 3");
});

test("a leak has a key that reports the tank: that of the film, or the one that is named", () => {
  expect(keys("it leaks")).toEqual([]);
  expect(keys("tank 4 is leaking")).toEqual([["Report tank 4: leaks", "tank report tank:T4 fault:leaks"]]);
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  expect(room.press("Mina", keys("its leaking")[0]?.[0] ?? "")).toContain("leaks");
  expect(room.stores.tanks.find(1, 3)?.condition).toBe("leaks");
});

test("how long a bath takes is told by one's own film or plan, else by what the class has at least", () => {
  expect(room.says("Mina", "how long do i fix")).toMatch(/^\*\*At least 5 min in the fixer and /);
  room.says("Mina", PLAN);
  expect(room.says("Mina", "how long in the stop bath")).toBe(
    "**Rinse 1 0:30, Rinse 2 0:30** (P1). I call you when it is over.",
  );
  room.says("Mina", "/run start");
  put(0, 1, 2, 3);
  expect(room.says("Mina", "how long in the fixer")).toContain("left in the fixer");
  expect(room.says("Mina", "how long do i wash")).toMatch(/^\*\*Wash \d+:00\*\* \(R1\)\./);
});

test("how to agitate is told by the plan before the film is in, and by the film then", () => {
  expect(room.says("Mina", "how often do i agitate")).toContain("**Agitating** brings");
  room.says("Mina", PLAN);
  expect(room.says("Mina", "how often do i agitate")).toMatch(
    /^\*\*Developer: first 30 s, then 5 s each minute/,
  );
  expect(room.says("Mina", "do i have to shake it in the rinse")).toBe(
    "**Rinse 1: keep the tank moving until its time is up.**\n" +
      "**Rinse 2: keep the tank moving until its time is up.**\n" +
      "**Wash: no agitating.**",
  );
  room.says("Mina", "/run start");
  put(0, 1);
  expect(room.says("Mina", "do i need to shake this one too")).toMatch(
    /^\*\*Rinse 1: keep the tank moving until its time is up\.\*\*[^]*left in the rinse 1/,
  );
  expect(room.says("Mina", "do i shake the fixer")).toMatch(/^\*\*Fixer: first 15 s, then 5 s every 30 s/);
  put(2, 3, 4);
  expect(room.says("Mina", "muss ich das auch kippen")).toMatch(/^\*\*Wash: no agitating\.\*\*/);
});

test("a wash of fills is told as so many fills", () => {
  room.says("Mina", `${PLAN} wash:fill-dump`);
  expect(room.says("Mina", "do i shake it in the wash")).toMatch(
    /\*\*Wash: fill the tank and empty it, \d+ times\.\*\*/,
  );
});

test("a lid that won't close is held once the developer is in, and keeps all baths out before", () => {
  expect(room.says("Mina", "the lid won't close")).toMatch(/^\*\*Don't pour anything in yet/);
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  expect(room.says("Mina", "the lid won't close")).toMatch(/^\*\*Don't pour anything in yet/);
  put(0);
  expect(room.says("Mina", "the lid won't close")).toMatch(
    /^\*\*Hold the lid on with your hand[^]*left in the developer/,
  );
});

test("how warm it should be is told with what the film's own data sheet has", () => {
  room.says("Mina", PLAN);
  expect(room.says("Mina", "how warm should the developer be")).toMatch(
    /^\*\*20 °C \(68 °F\) is usual[^]*has times from 18 °C \(64\.4 °F\) to 24 °C \(75\.2 °F\)\.$/,
  );
});

test("a letter held too long is one", () => {
  room.says("Mina", PLAN);
  expect(room.says("Mina", "lets gooooo")).toContain("Plan P1 is ready");
  expect(room.says("Mina", "fixer in my eeeeye")).toMatch(/^\*\*Eye: rinse now/);
});

test("in German no answer of an evening has English in it, or is without words", () => {
  room.says("Mina", "/mine language language:de");
  room.says("Mina", PLAN);
  for (const [, sentence] of [...EVENING_DE, ...WORRY_DE, ...AROUND_DE, ...BASICS_DE, ...DESK_DE]) {
    const { reply } = room.asks("Mina", `ask ${sentence}`);
    expect(englishIn(reply.text, ...(reply.actions ?? []).map(({ label }) => label)), sentence).toEqual([]);
    expect(reply.text, sentence).not.toContain("Das weiß ich nicht");
  }
});

test("a phone that went dark, or a film feared for, is told where the film is", () => {
  for (const sentence of ["my phone died", "is my film ruined"]) {
    expect(room.says("Mina", sentence)).not.toContain("left in the developer");
    room.says("Mina", PLAN);
  }
  room.says("Mina", "/run start");
  put(0);
  for (const sentence of ["my phone died", "is my film ruined", "when is it my turn"])
    expect(room.says("Mina", sentence)).toMatch(/left in the developer/);
});

test("whose turn it is hangs on a free tank, and who is not done yet stands on the board", () => {
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  put(0);
  expect(room.says("Ben", "when is it my turn")).toMatch(
    /^\*\*It is your turn when a tank is free[^]*Free: T1/,
  );
  expect(room.says("Ben", "who isnt done yet")).toContain("Mina");
});

test("none of what is typed in a first hour is left without an answer", () => {
  for (const [wanted, sentence] of BASICS_EN)
    expect(room.asks("Mina", `ask ${sentence}`).reply.fields?.["wanted"], sentence).toBe(wanted);
});

/*
 * Edges clear or dark tell the camera's fault from the tank's: NAVEDTRA 14209, table 10-1. Drops leave marks: the same, p. 280.
 * Air bells leave small round clear spots: Army correspondence course SS0509-8, p. 84. Milky means short fixing: from memory.
 */
test("how a film looks is judged once it is fixed, by the film in hand before it is in the log", () => {
  expect(room.says("Mina", "my negs are totally clear")).toMatch(/^\*\*Look for the numbers along its edge/);
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  put(0, 1, 2, 3);
  expect(room.says("Mina", "its still milky")).toMatch(/^\*\*Leave the lid on[^]*left in the fixer/);
  expect(room.says("Mina", "can i look at it yet")).toMatch(/^\*\*Leave the lid on/);
  put(4);
  expect(room.says("Mina", "its still milky")).toMatch(/^\*\*Milky means not fixed yet: back into the fixer/);
  expect(room.says("Mina", "theres spots on it")).toContain("air bubbles from the developer");
  expect(room.says("Mina", "its all black")).toMatch(/^\*\*Look at its edges/);
});

// When it may come off: common practice, no source.
test("a film comes off its reel after the last bath, not before", () => {
  expect(room.says("Mina", "how do i get the film off the reel")).toMatch(/^\*\*Only after the last bath/);
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  put(0);
  expect(room.says("Mina", "how do i get the film off the reel")).toMatch(
    /^\*\*Not yet: [^]*left in the developer/,
  );
});

// No more than 5 °F (2.8 °C) between baths: Army correspondence course SS0509-8, p. 84.
test("water to rinse in is told apart from the developer, whose degrees count", () => {
  expect(room.says("Mina", "does it matter if the water is cold")).toMatch(
    /^\*\*Stop bath, fixer and water: [^]*at most 3 °C \(5 °F\)[^]*The developer goes by the degree/,
  );
});

test("which of two calls comes first is said with where each film is; whoever has none sees the board", () => {
  expect(room.says("Ben", "which tank is beeping")).toMatch(/^\*\*You have no film in a tank/);
  for (const tank of [3, 4]) {
    room.says("Mina", PLAN.replace("tank:3", `tank:${tank}`));
    room.says("Mina", "/run start");
  }
  expect(room.says("Mina", "both are beeping which one first")).toMatch(
    /^\*\*First the tank whose developer is over[^]*R1[^]*R2/,
  );
});

test("whoever missed a call is told first to do what is to be done now", () => {
  expect(room.says("Mina", "i missed the beep")).toMatch(/^\*\*Turn up the volume/);
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  put(0);
  expect(room.says("Mina", "i missed the beep")).toMatch(
    /^\*\*Do now what stands below[^]*Turn up the volume[^]*left in the developer/,
  );
});

/* 9:00 + 2 x 0:30 + 5:00, with 20 s of our own to empty and fill each: fixed after 16:20. */
describe("whether a film is done by the bell is told by the bell of the day", () => {
  const asked = "will i make it before the bell";
  const until = (bell: string): string =>
    room.says("Iris", `/class periods days:mon-sun from:17:00 to:${bell}`, "teacher");

  test.each([
    ["how long until the bell", "**In 10 min: the bell rings at 18:10:00.**"],
    ["wann klingelt es", "**In 10 min: Die Klingel läutet um 18:10:00.**"],
  ])("%s: by the bell that is set, else nothing is told of it", (asks, says) => {
    if (asks.startsWith("wann")) room.says("Mina", "/mine language language:de");
    expect(room.says("Mina", asks)).toMatch(/^\*\*(No bell is set|Für jetzt ist keine Klingel)/);
    until("18:10");
    expect(room.says("Mina", asks)).toBe(says);
  });

  test("before it is poured", () => {
    room.says("Mina", PLAN);
    until("18:10");
    expect(room.says("Mina", asked)).toMatch(/^\*\*The bell rings at 18:10:00\.\*\* \*\*Don't pour in/);
  });

  test("and once it is in a bath, where nothing can be left unpoured", () => {
    room.says("Mina", PLAN);
    room.says("Mina", "/run start");
    room.says("Mina", "/run next");
    until("18:10");
    expect(room.says("Mina", asked)).toMatch(/^\*\*Tell the teacher now:[^]*left in the developer/);
    room.says("Iris", "/class periods remove:1", "teacher");
  });

  test.each([
    [
      "18:18",
      /^\*\*The bell rings at 18:18:00\.\*\* The film is out of the fixer at 18:16:20, but not washed by then/,
    ],
    ["21:30", /^\*\*Yes: all done at [^]*, before the bell at 21:30:00\.\*\*/],
  ])("at %s", (bell, says) => {
    room.says("Mina", PLAN);
    room.says("Mina", "/run start");
    room.says("Mina", "/run next");
    until(bell);
    expect(room.says("Mina", asked)).toMatch(says);
    room.says("Mina", "/mine language language:de");
    expect(room.says("Mina", "schaffe ich es bis zur klingel")).toMatch(
      bell === "18:18"
        ? /^\*\*Die Klingel läutet um 18:18:00\.\*\* Der Film ist um 18:16:20 aus/
        : /^\*\*Ja: alles fertig um /,
    );
  });
});

test("a red light is for paper: whoever does not say so is told of film first", () => {
  expect(room.says("Mina", "is the red light ok for this")).toMatch(
    /^\*\*Not for film: it wants total darkness/,
  );
  expect(room.says("Mina", "is the red light ok for paper")).toMatch(/^\*\*Nobody has tested it yet/);
});

test("water beside a film in its tank is as much as the developer; before that it is for mixing", () => {
  room.says("Mina", PLAN);
  expect(room.says("Mina", "how much water")).toMatch(/250 ml of water/);
  room.says("Mina", "/run start");
  put(0);
  expect(room.says("Mina", "how much water")).toMatch(/^\*\*500 ml\*\*, as much as of the developer/);
});

test("a weak reading among many words is offered, not answered", () => {
  room.says("Mina", PLAN);
  room.says("Mina", "/run start");
  put(0);
  expect(room.says("Mina", "is it ok if i put it down")).toMatch(/^\*\*I don't know that/);
  expect(room.says("Ben", "does it have to be pitch black")).not.toContain("Skin");
  expect(room.says("Mina", "mein film ist gerissen")).not.toMatch(/Mouth|Swallowed/);
});

test("a dilution is explained by the very one that is asked for, in amounts that can be measured", () => {
  expect(room.says("Mina", "what does 1+9 mean")).toBe(
    "**1+9** means 1 part of concentrate or stock and 9 parts of water. 300 ml of it: 30 ml and 270 ml of water.",
  );
  expect(room.says("Mina", "what is a dilution")).toContain("**1+1** means 1 part");
});

test("a film that nobody knows is never held to the light", () => {
  expect(room.says("Mina", "i don't know what film i have")).toMatch(/^\*\*Read its name off the cassette/);
  expect(room.says("Mina", "my film looks strange")).not.toMatch(/^\*\*Show/);
});
