import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { onWallClock, type WallTimer } from "../../../bot/rounds/wall-timer.ts";
import { START } from "../../support/make.ts";

const MINUTE = 60_000;
const YEAR = 365 * 24 * 3_600_000;

let timer: WallTimer | undefined;
let calls: number[];

beforeEach(() => {
  vi.useFakeTimers({ now: START });
  calls = [];
});
afterEach(() => {
  timer?.stop();
  vi.useRealTimers();
});

const begin = (pattern: string, zone?: string): void =>
  void (timer = onWallClock(pattern, zone, () => calls.push(Date.now())));

test("each match once, none early, and none after it is stopped", async () => {
  begin("* * * * *");
  await vi.advanceTimersByTimeAsync(10 * MINUTE);
  expect(calls).toHaveLength(10);
  // START is a full minute, and time goes by here only as it is told to.
  expect(calls).toEqual(Array.from({ length: 10 }, (_, index) => START + (index + 1) * MINUTE));
  timer?.stop();
  await vi.advanceTimersByTimeAsync(5 * MINUTE);
  expect(calls).toHaveLength(10);
});

test("on the wall clock of a zone, through the change to summer time", async () => {
  // Lisbon goes from UTC to UTC+1 on 29 March 2026.
  vi.setSystemTime(Date.UTC(2026, 2, 28, 12));
  begin("30 8 * * *", "Europe/Lisbon");
  await vi.advanceTimersByTimeAsync(48 * 3_600_000);
  expect(calls.map((at) => new Date(at).toISOString().slice(0, 16))).toEqual([
    "2026-03-29T07:30",
    "2026-03-30T07:30",
  ]);
});

test("a clock set forward by ten years: one call for all that was passed over, at once, and the loop goes on", async () => {
  begin("* * * * *");
  vi.setSystemTime(START + 10 * YEAR);
  await vi.advanceTimersByTimeAsync(MINUTE);
  expect(calls.length).toBeGreaterThanOrEqual(1);
  expect(calls.length).toBeLessThanOrEqual(2);
  await vi.advanceTimersByTimeAsync(3 * MINUTE);
  expect(calls.length).toBeLessThanOrEqual(5);
});

test("a clock set back by ten years: it goes on each minute", async () => {
  begin("* * * * *");
  vi.setSystemTime(START - 10 * YEAR);
  await vi.advanceTimersByTimeAsync(4 * MINUTE);
  expect(calls.length).toBeGreaterThanOrEqual(3);
  expect(calls.length).toBeLessThanOrEqual(5);
});
