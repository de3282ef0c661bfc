import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { createAllowance, createArrivals } from "../../../bot/chat/allowance.ts";

const COUNT = 5;
const WINDOW_MS = 1000;

interface Trip {
  readonly gapMs: number;
  readonly thereMs: number;
  readonly backMs: number;
}

const trip = fc.record({
  gapMs: fc.integer({ min: 0, max: 300 }),
  thereMs: fc.integer({ min: 0, max: 2500 }),
  backMs: fc.integer({ min: 0, max: 2500 }),
});

/** Sends as soon as the allowance lets it, in virtual time; when the platform had each. */
function send(trips: readonly Trip[], isStamped: boolean, platformAheadMs: number): number[] {
  const allowance = createAllowance(COUNT, WINDOW_MS + 5);
  const arrivals = createArrivals();
  const underWay: { ticket: number; sentAt: number; arrivesAt: number; answeredAt: number }[] = [];
  const arrived: number[] = [];
  let now = 0;
  const answerUntil = (until: number): void => {
    underWay.sort((a, b) => a.answeredAt - b.answeredAt);
    while (underWay[0] && underWay[0].answeredAt <= until) {
      const { ticket, sentAt, arrivesAt, answeredAt } = underWay.shift()!;
      const stamp = isStamped ? arrivesAt + platformAheadMs : undefined;
      allowance.end(ticket, arrivals.latestOf(sentAt, answeredAt, stamp));
    }
  };
  for (const { gapMs, thereMs, backMs } of trips) {
    now += gapMs;
    answerUntil(now);
    for (let freeAt = allowance.freeAt(now); freeAt > now; freeAt = allowance.freeAt(now)) {
      now = Math.min(freeAt, underWay[0]?.answeredAt ?? Infinity);
      answerUntil(now);
    }
    underWay.push({
      ticket: allowance.begin(now),
      sentAt: now,
      arrivesAt: now + thereMs,
      answeredAt: now + thereMs + backMs,
    });
    arrived.push(now + thereMs);
  }
  return arrived.sort((a, b) => a - b);
}

function mostInOneWindow(arrived: readonly number[]): number {
  return Math.max(
    ...arrived.map((at) => arrived.filter((each) => each >= at && each < at + WINDOW_MS).length),
  );
}

describe("never too many in any second at the platform", () => {
  test.each([
    ["with the platform's stamps", true, 0],
    ["with a platform whose clock is an hour ahead", true, 3_600_000],
    ["with one whose clock is behind", true, -7_000],
    ["without stamps", false, 0],
  ])("%s, however long each is on its way, and however the ways differ", (_, isStamped, aheadMs) => {
    fc.assert(
      fc.property(fc.array(trip, { minLength: 1, maxLength: 80 }), (trips) => {
        expect(mostInOneWindow(send(trips, isStamped, aheadMs))).toBeLessThanOrEqual(COUNT);
      }),
    );
  });

  test("a count of those that left in the last second alone would not do", () => {
    // Five leave at 0 and are long on their way; five leave a second later and are quick.
    const trips = Array.from({ length: 10 }, (_, index) => ({
      gapMs: index === 5 ? 1000 : 0,
      thereMs: index < 5 ? 900 : 20,
      backMs: 20,
    }));
    const leaving = trips.map(({ thereMs }, index) => (index < 5 ? 0 : 1000) + thereMs);
    expect(mostInOneWindow(leaving)).toBe(10);
    expect(mostInOneWindow(send(trips, true, 0))).toBe(5);
  });

  test("nothing is held up without need: stamps give back what the way back costs", () => {
    const trips = Array.from({ length: 50 }, () => ({ gapMs: 0, thereMs: 60, backMs: 400 }));
    const withStamps = send([{ gapMs: 0, thereMs: 60, backMs: 0 }, ...trips], true, 0).at(-1) ?? 0;
    const without = send([{ gapMs: 0, thereMs: 60, backMs: 0 }, ...trips], false, 0).at(-1) ?? 0;
    expect(withStamps).toBeLessThan(10 * (WINDOW_MS + 80) + 100);
    expect(without).toBeGreaterThan(9 * (WINDOW_MS + 400));
  });
});

test("a request that was never sent does not count", () => {
  const allowance = createAllowance(1, 1000);
  const ticket = allowance.begin(0);
  expect(allowance.freeAt(0)).toBe(Infinity);
  allowance.end(ticket, null);
  expect(allowance.freeAt(0)).toBe(0);
});

test("after this computer's clock is set the old distance between the clocks is forgotten", () => {
  const arrivals = createArrivals();
  expect(arrivals.latestOf(0, 100, 50)).toBe(100);
  expect(arrivals.latestOf(200, 220, 210)).toBe(222 - 2);
  expect(arrivals.latestOf(3_600_000, 3_600_300, 400)).toBe(3_600_300);
});
