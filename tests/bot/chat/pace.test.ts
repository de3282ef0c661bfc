import { describe, expect, test } from "vitest";
import { createPace } from "../../../bot/chat/pace.ts";

const settings = { perSecond: 45, channelCount: 5, channelWindowMs: 5000 };

describe("keeping to a chat's limits ahead of time", () => {
  test("a channel takes five in five seconds, then waits for its window", () => {
    const pace = createPace(settings);
    for (let sent = 0; sent < 5; sent += 1) {
      expect(pace.readyAt("a", 1000)).toBe(1000);
      pace.take("a", 1000);
    }
    expect(pace.readyAt("a", 1001)).toBe(6000);
    expect(pace.readyAt("b", 1001)).toBe(1001);
    expect(pace.readyAt("a", 6000)).toBe(6000);
  });

  test("what the platform says of a channel is believed", () => {
    const pace = createPace(settings);
    pace.take("a", 0);
    pace.learn("a", { remaining: 0, resetAfterMs: 700 }, 100);
    expect(pace.readyAt("a", 200)).toBe(800);
    pace.learn("a", { remaining: 9, resetAfterMs: 5000 }, 300);
    expect(pace.readyAt("a", 300)).toBe(300);
  });

  test("a message on its way counts until its answer, and a second longer", () => {
    const pace = createPace({ ...settings, perSecond: 1 });
    pace.take("a", 0);
    expect(pace.readyAt("b", 3000)).toBe(Infinity);
    pace.settle("a", 3000);
    expect(pace.readyAt("b", 3001)).toBe(4000);
    expect(pace.readyAt("b", 4000)).toBe(4000);
  });

  test("room that was kept and not used is free a second after at the latest", () => {
    const pace = createPace({ ...settings, perSecond: 1 });
    pace.take("a", 0);
    expect(pace.claim("a")).toBeDefined();
    expect(pace.claim("a")).toBeUndefined();
    pace.settle("a", 10);
    expect(pace.readyAt("b", 10)).toBe(Infinity);
  });

  test("a clock set back an hour holds nothing up for an hour", () => {
    const hour = 3_600_000;
    const pace = createPace({ ...settings, perSecond: 5 });
    for (let sent = 0; sent < 5; sent += 1) pace.take("a", hour);
    pace.learn("a", { remaining: 0, resetAfterMs: 5000 }, hour);
    for (let sent = 0; sent < 5; sent += 1) pace.settle("a", hour);
    expect(pace.readyAt("a", 0)).toBe(1000);
  });
});
