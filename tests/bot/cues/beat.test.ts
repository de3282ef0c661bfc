import { setImmediate as turn } from "node:timers/promises";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { createBeat, type Beat, type BeatDeps } from "../../../bot/cues/beat.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createMemoryLog } from "../../support/room.ts";
import { START } from "../../support/make.ts";

let stores: OpenedStores;
let beat: Beat;
let looks = 0;

beforeEach(() => {
  looks = 0;
  stores = openStores(":memory:");
  // Its seconds pass when the test says so; turns of the loop are real.
  vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
});
afterEach(() => {
  beat.stop();
  vi.useRealTimers();
  stores.close();
});

/** Whenever it has looked there is more to look for. */
function busyParts(): BeatDeps {
  return {
    stores,
    clock: { now: () => START },
    log: createMemoryLog(),
    deliverer: {
      pump: () => {
        looks += 1;
        beat.rearm();
        return Infinity;
      },
      decideUntil: (now: number) => now,
    } as unknown as BeatDeps["deliverer"],
    onSpoken: () => undefined,
    tidy: () => undefined,
  };
}

test("with each turn of the loop one portion is settled, however many seconds that goes on", async () => {
  beat = createBeat(busyParts());
  beat.start();
  for (let second = 0; second < 5; second += 1) {
    await turn();
    vi.advanceTimersByTime(1000);
  }
  const before = looks;
  for (let turns = 0; turns < 20; turns += 1) await turn();
  expect(looks - before).toBeLessThanOrEqual(21);
  expect(looks - before).toBeGreaterThanOrEqual(19);
});

test("nothing is looked at once it has stopped, though a look was to come", async () => {
  beat = createBeat(busyParts());
  beat.start();
  await turn();
  beat.stop();
  const before = looks;
  for (let turns = 0; turns < 5; turns += 1) await turn();
  expect(looks).toBe(before);
});
