import { describe, expect, test } from "vitest";
import { createSteadyClock, systemTime, type Anchor, type TimeSources } from "../../../bot/process/clock.ts";

/** A computer whose clocks are turned by hand. */
function aComputer(bootId = "boot-1") {
  const state = { wall: 1_000_000, mono: 5000, uptime: 5000 as number | undefined };
  const sources: TimeSources = {
    bootId,
    wallMs: () => state.wall,
    monoMs: () => state.mono,
    uptimeMs: () => state.uptime,
  };
  const run = (ms: number): void => {
    state.wall += ms;
    state.mono += ms;
    if (state.uptime !== undefined) state.uptime += ms;
  };
  const sleep = (ms: number): void => {
    state.wall += ms;
    if (state.uptime !== undefined) state.uptime += ms;
  };
  return { state, sources, run, sleep };
}

function watch(sources: TimeSources, anchor?: Anchor) {
  const steps: number[] = [];
  const anchors: Anchor[] = [];
  const disk = { isFull: false };
  const clock = createSteadyClock({
    sources,
    anchor,
    onStep: (byMs, at) => {
      if (disk.isFull) return false;
      steps.push(byMs);
      anchors.push(at);
      return true;
    },
    onAnchor(at) {
      if (!disk.isFull) anchors.push(at);
      return !disk.isFull;
    },
  });
  return { clock, steps, anchors, disk };
}

const HOUR = 3_600_000;

describe("the watched clock", () => {
  test("is the wall clock while nobody sets it", () => {
    const { sources, run, state } = aComputer();
    const { clock, steps } = watch(sources);
    run(1234);
    expect(clock.now()).toBe(state.wall);
    expect(steps).toEqual([]);
  });

  test.each([HOUR, -HOUR, 10 * 365 * 24 * HOUR, -1_000_000, 51, -51])("tells a step of %i ms once", (by) => {
    const { sources, run, state } = aComputer();
    const { clock, steps } = watch(sources);
    run(1000);
    state.wall += by;
    expect(clock.now()).toBe(state.wall);
    run(1000);
    clock.now();
    expect(steps).toEqual([by]);
  });

  test("small steps add up and are told before they matter", () => {
    const { sources, run, state } = aComputer();
    const { clock, steps } = watch(sources);
    for (let second = 0; second < 1800; second += 1) {
      run(1000);
      state.wall += 0.5; // 500 ppm of slewing
      clock.now();
    }
    expect(steps.reduce((sum, each) => sum + each, 0)).toBeGreaterThan(850);
    expect(Math.max(...steps)).toBeLessThan(60);
  });

  test("sleep is elapsed time: the film went on developing", () => {
    const { sources, sleep } = aComputer();
    const { clock, steps } = watch(sources);
    sleep(42 * 60_000);
    clock.now();
    expect(steps).toEqual([]);
  });

  test("a step during sleep is told apart from the sleep", () => {
    const { sources, sleep, state } = aComputer();
    const { clock, steps } = watch(sources);
    sleep(60_000);
    state.wall -= HOUR;
    clock.now();
    expect(steps).toEqual([-HOUR]);
  });

  test("where sleep can't be told from a step, forward is sleep and back is a step", () => {
    const { sources, state } = aComputer();
    state.uptime = undefined;
    const { clock, steps } = watch(sources);
    state.wall += HOUR;
    clock.now();
    state.wall -= HOUR;
    clock.now();
    expect(steps).toEqual([-HOUR]);
  });

  test("a step while no process ran is told by the next process of the same boot", () => {
    const { sources, run, state } = aComputer();
    const first = watch(sources);
    run(5000);
    state.wall += HOUR;
    const second = watch(sources, first.anchors.at(-1));
    second.clock.now();
    expect(second.steps).toEqual([HOUR]);
  });

  test("after a new boot the wall clock is taken as it is", () => {
    const first = watch(aComputer("boot-1").sources);
    const second = watch({ ...aComputer("boot-2").sources, wallMs: () => 9_999_999 }, first.anchors.at(-1));
    second.clock.now();
    expect(second.steps).toEqual([]);
  });

  test("while a step can't be kept, time goes on as the film's does; it is told once it can", () => {
    const { sources, run, state } = aComputer();
    const { clock, steps, disk } = watch(sources);
    const before = clock.now();
    state.wall += HOUR;
    disk.isFull = true;
    run(2000);
    expect(clock.now()).toBe(before + 2000);
    run(3000);
    expect(clock.now()).toBe(before + 5000);
    expect(steps).toEqual([]);
    disk.isFull = false;
    expect(clock.now()).toBe(state.wall);
    expect(steps).toEqual([HOUR]);
  });
});

test("this computer's own clocks agree with each other", () => {
  const sources = systemTime();
  const { clock, steps } = watch(sources);
  expect(Math.abs(clock.now() - sources.wallMs())).toBeLessThan(50);
  expect(steps).toEqual([]);
});
