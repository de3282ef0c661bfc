import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { createPace, latestStart } from "../../../bot/chat/pace.ts";

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

  test("never more than the common limit leaves in any second, whatever is asked for", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 100, maxLength: 400 }), (gaps) => {
        const pace = createPace(settings);
        const sent: number[] = [];
        let now = 0;
        for (const [index, gap] of gaps.entries()) {
          now = Math.max(now + gap, pace.readyAt(String(index), now + gap));
          pace.take(String(index), now);
          sent.push(now);
        }
        for (const [index, at] of sent.entries()) {
          const after = sent[index + settings.perSecond];
          if (after !== undefined) expect(after - at).toBeGreaterThanOrEqual(1000);
        }
      }),
    );
  });
});

describe("the latest safe start", () => {
  test("a message alone leaves at its moment", () => expect(latestStart([5000], 50)).toBe(5000));
  test("a burst begins ahead by what it takes", () =>
    expect(latestStart(Array(101).fill(5000), 50)).toBe(3000));
  test("nothing due never starts", () => expect(latestStart([], 50)).toBe(Infinity));
  test("sent evenly from then on, none is late, and none leaves earlier than it must", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 60_000 }), { minLength: 1, maxLength: 300 }),
        (unsorted) => {
          const dues = [...unsorted].sort((a, b) => a - b);
          const start = latestStart(dues, 50);
          const slack = dues.map((due, position) => due - (start + position * 20));
          expect(Math.min(...slack)).toBe(0);
        },
      ),
    );
  });
});
