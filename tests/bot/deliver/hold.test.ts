import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { latestStarts } from "../../../bot/deliver/hold.ts";

const EACH_MS = 20;
const waiting = (dues: readonly number[]): readonly number[] =>
  latestStarts(dues, [], 1000 / EACH_MS).waiting;

describe("the latest starts", () => {
  test("a message alone leaves at its moment", () => expect(waiting([5000])).toEqual([5000]));
  test("a burst begins ahead by what it takes", () => expect(waiting(Array(101).fill(5000))[0]).toBe(3000));
  test("a burst to come does not hurry what has room before it", () =>
    expect(waiting([1000, 5000, 5000])).toEqual([1000, 4980, 5000]));
  test("what is not decided yet makes room for itself", () =>
    expect(latestStarts([5000], [{ dueAt: 5010, count: 101 }], 50)).toEqual({
      waiting: [2990],
      ahead: [3010],
    }));
  test("nothing due never starts", () => expect(waiting([])).toEqual([]));

  test("sent one at a time from its instant on, none is late; a moment later, one would be", () => {
    const dues = fc
      .array(fc.integer({ min: 0, max: 20_000 }), { minLength: 1, maxLength: 300 })
      .map((unsorted) => unsorted.sort((a, b) => a - b));
    fc.assert(
      fc.property(dues, fc.nat(), (list, pick) => {
        const starts = waiting(list);
        const from = pick % list.length;
        const slack = list
          .slice(from)
          .map((due, position) => due - ((starts[from] ?? 0) + position * EACH_MS));
        expect(Math.min(...slack)).toBe(0);
        for (const [position, start] of starts.entries()) {
          expect(start).toBeLessThanOrEqual(list[position] ?? 0);
          expect((starts[position + 1] ?? Infinity) - start).toBeGreaterThanOrEqual(EACH_MS);
        }
      }),
    );
  });

  test("demand counts as the messages it will be", () => {
    const list = fc.array(fc.integer({ min: 0, max: 3000 }), { maxLength: 40 });
    fc.assert(
      fc.property(
        list,
        fc.array(fc.tuple(fc.integer({ min: 3001, max: 9000 }), fc.integer({ min: 1, max: 40 }))),
        (now, coming) => {
          const dues = now.sort((a, b) => a - b);
          const ahead = coming.map(([dueAt, count]) => ({ dueAt, count })).sort((a, b) => a.dueAt - b.dueAt);
          const spread = ahead.flatMap(({ dueAt, count }) => Array<number>(count).fill(dueAt));
          const all = waiting([...dues, ...spread]);
          expect(latestStarts(dues, ahead, 1000 / EACH_MS).waiting).toEqual(all.slice(0, dues.length));
        },
      ),
    );
  });
});
