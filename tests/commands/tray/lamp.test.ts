import { describe, expect, test } from "vitest";
import { judgeLamp, lampPlan, lampsDue, type Seen, USUAL_MINUTES } from "../../../commands/tray/lamp.ts";
import { englishIn } from "../../support/english.ts";
import { createRoom } from "../../support/room.ts";

/* Safelights. Sources: K4, a film maker's guide to testing safelights; NAVEDTRA 14209; a practitioner's coin test. */

const seen = (over: Partial<Seen>): Seen => ({
  beforeMinutes: null,
  afterMinutes: null,
  aloneMinutes: null,
  longestMinutes: 7,
  ...over,
});

describe("reading a test", () => {
  test("no change at 1, 3 and 7 min: safe for at least 7 min (K4, result A)", () => {
    expect(judgeLamp(seen({}), 1)).toEqual({ safeSeconds: 420, isAtLeast: true });
  });

  test("a change from 1 min before, 3 min after, bare paper at 7: unsafe (K4, result B)", () => {
    const verdict = judgeLamp(seen({ beforeMinutes: 1, afterMinutes: 3, aloneMinutes: 7 }), 1);
    expect(verdict).toEqual({ safeSeconds: null, isAtLeast: false });
  });

  test("coins every 2 min to 8: 2 clean, 4 marked, safe about 2 min, half of the first change (K4's rule)", () => {
    expect(judgeLamp(seen({ afterMinutes: 4, longestMinutes: 8 }), 2)).toEqual({
      safeSeconds: 120,
      isAtLeast: false,
    });
  });

  test("whatever changes first decides", () => {
    expect(judgeLamp(seen({ beforeMinutes: 7, afterMinutes: 3 }), 1).safeSeconds).toBe(90);
    expect(judgeLamp(seen({ aloneMinutes: 3 }), 1).safeSeconds).toBe(90);
  });
});

test("the run has steps of 1, 3 and 7 min before the grey and after it (K4), the lamp burning on between them", () => {
  const { steps } = lampPlan("bench", USUAL_MINUTES);
  expect(steps.map(({ kind, seconds }) => [kind, seconds])).toEqual([
    ["lamp", 60],
    ["lamp", 120],
    ["lamp", 240],
    ["grey", null],
    ["lamp", 60],
    ["lamp", 120],
    ["lamp", 240],
    ["read", null],
  ]);
  expect(steps.map(({ lamp }) => lamp?.toMinutes ?? null)).toEqual([1, 3, 7, null, 1, 3, 7, null]);
});

test("steps are in order and once each, however they are typed", () => {
  expect(lampPlan("bench", [7, 1, 3, 3]).minutes).toEqual([1, 3, 7]);
});

test("a lamp is due from its day on", () => {
  const lamp = { name: "bench", testedAtMs: 0, ...seen({}), safeSeconds: 420, nextAtMs: 1000 };
  expect([lampsDue([lamp], 999), lampsDue([lamp], 1000)].map(({ length }) => length)).toEqual([0, 1]);
});

test("a whole test, called coin by coin, and its reading kept for the class", async () => {
  const room = createRoom();
  const planned = room.says("Ada", "/tray test lamp:bench", "aide");
  expect(planned).toContain("**About 14 min under the safelight bench**");
  // Density 0.25 to 0.50; wait 5 min after fluorescent light, 10 for the eyes: K4.
  expect(planned).toMatch(/0\.25 to 0\.50.*wait 5 min, and 10/s);
  expect(planned).toContain("It is the lamp that is tested, not this page");
  room.says("Ada", "/run start", "aide");
  const calls: string[] = [];
  for (const seconds of [60, 120, 240, 0, 60, 120, 240]) {
    room.says("Ada", "/run next", "aide");
    await room.pass(seconds);
    calls.push(...room.news("Ada").filter((text) => text.includes("Now:")));
  }
  expect(calls.map((text) => text.split("\n")[0])).toEqual([
    expect.stringContaining("it covers what has had 1 min. The lamp stays on."),
    expect.stringContaining("it covers what has had 3 min. The lamp stays on."),
    expect.stringContaining("expose the rest under the enlarger to a light grey"),
    expect.stringContaining("it covers what has had 1 min. The lamp stays on."),
    expect.stringContaining("it covers what has had 3 min. The lamp stays on."),
    expect.stringContaining("Develop, stop and fix it in the dark"),
  ]);
  const done = room.asks("Ada", "/run next", "aide").reply;
  expect(done.actions?.[0]?.line).toBe("tray lamp lamp:bench longest:7");
  expect(room.says("Ada", "/tray lamp lamp:bench after:3", "aide")).toContain(
    "**1 min 30 s in all under the safelight bench**: half the time of the first change.",
  );
  expect(room.says("Ada", "/tray lamp", "aide")).toMatch(/\*\*bench\*\*: safe for 1 min 30 s in all/);
  expect(room.says("Mina", "/roll find")).toContain("empty");
});

test("sources that contradict each other are told: twice the processing time on bare paper, 4 min at 4 ft", () => {
  const said = createRoom().says("Ada", "/tray lamp lamp:bench after:3", "aide");
  expect(said).toContain("US Navy NAVEDTRA 14209 has no fog in twice the processing time, on bare paper");
  expect(said).toContain("4 min at 1.2 m");
});

test("an unsafe lamp: bulb, distance and filter (NAVEDTRA 14209: 7 1/2 to 25 W, 3 to 6 ft; a seller's filter list)", () => {
  const said = createRoom().says("Ada", "/tray lamp lamp:bench before:1 after:3 alone:7", "aide");
  expect(said).toContain("**The safelight bench is not safe: don't open paper under it.**");
  expect(said).toMatch(/0\.9 to 1\.8 m.*7\.5 to 25 W.*light amber.*red/);
});

test("a coin at a step nobody tried is asked about", () => {
  const room = createRoom();
  expect(room.asks("Ada", "/tray lamp lamp:bench after:9", "aide").code).toBe("ERR_LAMP_STEP");
  expect(room.asks("Ada", "/tray lamp lamp:bench after:9 longest:10", "aide").kind).toBe("done");
  expect(room.asks("Ada", "/tray test minutes:1,zwei", "aide").code).toBe("ERR_NO_LAMP_STEPS");
});

test("in German, to the last coin", async () => {
  const room = createRoom();
  room.says("Ada", "/mine language language:de", "aide");
  const said = [room.says("Ada", "/tray test", "aide"), room.says("Ada", "/run start", "aide")];
  for (const seconds of [60, 120, 240, 0, 60, 120, 240, 0]) {
    said.push(room.says("Ada", "/run next", "aide"));
    await room.pass(seconds);
  }
  said.push(...room.news("Ada"));
  for (const line of ["lamp:bench after:3", "lamp:bench before:1", "lamp:bench", ""])
    said.push(room.says("Ada", `/tray lamp ${line}`, "aide"));
  expect(englishIn(...said)).toEqual([]);
});
