import { beforeEach, describe, expect, test } from "vitest";
import { calledStrip } from "../../../commands/print/called-strip.ts";
import type { Strip } from "../../../store/shapes/print.ts";
import { englishIn } from "../../support/english.ts";
import { createRoom, type Room } from "../../support/room.ts";

/* A test strip whose bars are called. */

const STRIP: Strip = {
  baseTenths: 200,
  step: { kind: "seconds", tenths: 100 },
  bars: 4,
  way: "cover",
  timerTenths: 1,
  enlarger: null,
  paper: null,
  gradeTenths: null,
  apertureTenths: null,
};

describe("the plan", () => {
  test("has a step for each exposure, as long as is added, and one to look at it", () => {
    const made = calledStrip(STRIP);
    const steps = made.ok ? made.value.plan.steps : [];
    expect(steps.map(({ kind, seconds, bars }) => [kind, seconds, bars?.from])).toEqual([
      ["expose", 20, 1],
      ["expose", 10, 2],
      ["expose", 10, 3],
      ["expose", 10, 4],
      ["judge", null, 1],
    ]);
  });

  test("uncovered, the darkest bar comes first and the base time last", () => {
    const made = calledStrip({ ...STRIP, way: "uncover" });
    const steps = made.ok ? made.value.plan.steps : [];
    expect(steps.slice(0, 4).map(({ seconds, bars }) => [seconds, bars?.from, bars?.to])).toEqual([
      [10, 4, 4],
      [10, 3, 4],
      [10, 2, 4],
      [20, 1, 4],
    ]);
  });

  // Derived by hand: half stops from 25 s are 25, 35.36, 50 and 70.71 s.
  test("stops are rounded to whole seconds, and the sums stay those of the bars", () => {
    const made = calledStrip({ ...STRIP, baseTenths: 250, step: { kind: "stops", twelfths: 6 } });
    if (!made.ok) throw new Error(made.fault.code);
    expect(made.value.bars.map(({ totalTenths }) => totalTenths)).toEqual([250, 350, 500, 710]);
    const seconds = made.value.plan.steps.flatMap((step) => step.seconds ?? []);
    expect(seconds).toEqual([25, 10, 15, 21]);
  });

  // Half stops from 8 s: the second bar gets 3.3 s more.
  test("what is too quick for a chat is none", () => {
    expect(calledStrip({ ...STRIP, baseTenths: 80, step: { kind: "stops", twelfths: 6 } })).toEqual({
      ok: false,
      fault: { code: "ERR_STRIP_QUICK", shortestTenths: 33 },
    });
  });
});

describe("in the class", () => {
  let room: Room;
  beforeEach(() => {
    room = createRoom();
  });
  const call = async (person: string, seconds: number): Promise<string[]> => {
    await room.pass(seconds);
    return room.news(person).map((text) => text.split("\n")[0] ?? "");
  };

  test("each exposure ends with a call that says what the card does and how long the lamp is on", async () => {
    room.says("Mina", "/print strip base:20 seconds:10 bars:3");
    expect(room.press("Mina", "Call it")).toContain(
      "1. Leave all bars open, lamp on: **20 s**\n2. Cover bar 1, lamp on: **10 s**\n3. Cover bar 2, lamp on: **10 s**",
    );
    expect(room.press("Mina", "Start")).toContain(
      "**R1**: a test strip of 3 bars.\nNext: Leave all bars open, then lamp on for 20 s.",
    );
    room.press("Mina", "Lamp is on");
    expect(await call("Mina", 19)).toEqual([]);
    expect(await call("Mina", 1)).toEqual([
      "**Lamp off now.** Cover bar 1, then lamp on for 10 s. Press the button when it is on.",
    ]);
    // However long the card takes in the dark, no bar gets light.
    await room.pass(7);
    room.press("Mina", "Lamp is on");
    expect(await call("Mina", 10)).toEqual([
      "**Lamp off now.** Cover bar 2, then lamp on for 10 s. Press the button when it is on.",
    ]);
    room.press("Mina", "Lamp is on");
    expect(await call("Mina", 10)).toEqual([
      "**Lamp off now.** Develop the strip in full and look at it in white light. Press the button, then the bar that is right.",
    ]);
    expect(room.press("Mina", "Looked at")).toContain("Which bar is right?");
    expect(room.press("Mina", "Bar 2")).toContain("30 s");
    expect(room.says("Mina", "/roll find")).toContain("The log is empty yet");
  });

  test("a longer exposure is told of before its end", async () => {
    room.says("Mina", "/print strip base:40 seconds:20 bars:2");
    room.says("Mina", "/print call");
    room.press("Mina", "Start");
    room.press("Mina", "Lamp is on");
    expect(await call("Mina", 25)).toEqual(["**Lamp off in 15 s.** Then: cover bar 1."]);
  });

  test("too quick a strip is told so, with its table, and nothing is planned", () => {
    room.says("Mina", "/print strip base:8 step:1/2 bars:3 timer:0.1");
    const refused = room.asks("Mina", "/print call");
    expect(refused.code).toBe("ERR_STRIP_QUICK");
    expect(refused.reply.text).toMatch(/^\*\*3\.3 s is too quick for a chat\*\*/);
    expect(refused.reply.text).toContain("2. Cover bar 1: **3.3 s** (bar 2 has 11.3 s)");
    expect(room.asks("Mina", "/run start").code).toBe("ERR_NO_PLAN");
    expect(room.asks("Ben", "/print call").code).toBe("ERR_NO_STRIP");
  });

  test("it can be stopped, and a key pressed too early changes nothing", async () => {
    room.says("Mina", "/print strip base:20 seconds:10 bars:3");
    room.press("Mina", "Call it");
    room.press("Mina", "Start");
    room.press("Mina", "Lamp is on");
    await room.pass(5);
    const early = room.asks("Mina", "/run next run:R1");
    expect(early.code).toBe("ERR_TOO_EARLY");
    expect(early.reply.text).toContain("**0:15 to go: leave the lamp on.**");
    expect(room.says("Mina", "/run stop")).toContain("No more calls come: lamp off first.");
    room.says("Mina", "/run stop sure:yes");
    expect(await call("Mina", 60)).toEqual([]);
  });

  test("a film that waits for its tank is still started by its own key", () => {
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    room.says("Mina", "/print strip base:20 seconds:10 bars:3");
    room.press("Mina", "Call it");
    room.press("Mina", "Start");
    expect(room.says("Ada", "/class turns", "aide")).toContain("Mina (P1)");
    expect(room.asks("Mina", "/run start plan:P1").kind).toBe("done");
  });

  test("all of it in German", async () => {
    room.says("Mina", "/mine language language:de");
    const said = [
      room.says("Mina", "/print strip base:8 bars:3"),
      room.says("Mina", "/print call"),
      room.says("Mina", "/print strip base:40 seconds:20 bars:3 way:uncover"),
      room.says("Mina", "/print call"),
      room.says("Mina", "/run start"),
      room.says("Mina", "/run next"),
      room.says("Mina", "/run next"),
      room.says("Mina", "/run status"),
      room.says("Mina", "/run stop"),
    ];
    await room.pass(30);
    said.push(...room.news("Mina"), room.says("Mina", "/run next"), room.says("Mina", "/run stop sure:yes"));
    expect(englishIn(...said)).toEqual([]);
  });
});
