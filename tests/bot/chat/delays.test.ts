import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { createDelays, MOST_AHEAD_MS } from "../../../bot/chat/delays.ts";

const after = (...took: readonly number[]) => {
  const delays = createDelays();
  took.forEach((ms, at) => delays.record(ms, at * 1000));
  return delays;
};

describe("how far ahead of its moment a message leaves", () => {
  test("nothing where nothing is known, and nothing where the chat is quick", () => {
    expect(after().aheadMs(0)).toBe(0);
    expect(after(120, 90, 400, 130).aheadMs(4000)).toBe(0);
  });

  test("what a slow chat takes, from its first message on", () => {
    expect(after(3000).aheadMs(1)).toBe(3000);
    expect(after(3000, 2800, 3100, 2900).aheadMs(4000)).toBe(3000);
  });

  test("one odd message among four moves nothing, in either direction", () => {
    expect(after(120, 130, 9000, 110).aheadMs(4000)).toBe(0);
    expect(after(3000, 3000, 100, 3000).aheadMs(4000)).toBe(3000);
  });

  test("it comes back once the chat is quick again, and at the latest ten minutes after", () => {
    const delays = after(3000, 3000, 3000, 3000);
    expect(delays.aheadMs(9 * 60_000)).toBe(3000);
    expect(delays.aheadMs(11 * 60_000)).toBe(0);
    const quick = after(3000, 3000, 3000);
    for (let at = 3; at < 16; at += 1) quick.record(100, at * 1000);
    expect(quick.aheadMs(16_000)).toBe(0);
  });

  test("never further than a countdown helps; then it says that it can't make up for it", () => {
    const delays = after(12_000, 12_000);
    expect(delays.aheadMs(2000)).toBe(MOST_AHEAD_MS);
    expect(delays.tooSlowMs(2000)).toBeNull();
    delays.record(12_000, 2500);
    expect(delays.tooSlowMs(3000)).toBe(12_000);
    expect(after(3000, 3000, 3000).tooSlowMs(3000)).toBeNull();
  });

  test("within bounds whatever was measured, whenever, clocks set back included", () => {
    const measured = fc.array(
      fc.tuple(fc.integer({ min: -10, max: 60_000 }), fc.integer({ min: 0, max: 2e6 })),
    );
    fc.assert(
      fc.property(measured, fc.integer({ min: 0, max: 2e6 }), (list, now) => {
        const delays = createDelays();
        for (const [took, at] of list) delays.record(took, at);
        const ahead = delays.aheadMs(now);
        expect(ahead === 0 || (ahead > 400 && ahead <= MOST_AHEAD_MS)).toBe(true);
      }),
    );
  });
});
