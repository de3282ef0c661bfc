import { expect, test } from "vitest";
import { createLane } from "../../../bot/chat/lane.ts";

test("lets everybody go on in turn, and whatever else is to be done come between", async () => {
  const lane = createLane();
  const done: string[] = [];
  function* work(name: string): Generator<string> {
    for (const part of [1, 2, 3]) {
      done.push(`${name}${part}`);
      setImmediate(() => done.push("call"));
      yield `${name}${part}`;
    }
  }
  const all = async (name: string): Promise<string[]> => {
    const got: string[] = [];
    for await (const part of lane.through(work(name))) got.push(part);
    return got;
  };
  expect(await Promise.all([all("a"), all("b")])).toEqual([
    ["a1", "a2", "a3"],
    ["b1", "b2", "b3"],
  ]);
  expect(done.filter((each) => each !== "call")).toEqual(["a1", "b1", "a2", "b2", "a3", "b3"]);
  for (const [at, each] of done.entries()) if (each !== "call") expect(done[at + 1]).not.toMatch(/^[ab]/);
});

test("does no more than is asked for, and ends with who stops listening", async () => {
  let made = 0;
  let isEnded = false;
  function* endless(): Generator<number> {
    try {
      for (;;) yield (made += 1);
    } finally {
      isEnded = true;
    }
  }
  for await (const portion of createLane().through(endless())) if (portion === 3) break;
  expect(made).toBe(3);
  expect(isEnded).toBe(true);
});

test("a fault of one is its own, and the others go on", async () => {
  const lane = createLane();
  function* broken(): Generator<number> {
    yield 1;
    throw new Error("unreadable");
  }
  const all = async (portions: Iterable<number>): Promise<number[]> => {
    const got: number[] = [];
    for await (const portion of lane.through(portions)) got.push(portion);
    return got;
  };
  const [first, second] = await Promise.allSettled([all(broken()), all([1, 2])]);
  expect(first.status).toBe("rejected");
  expect(second).toEqual({ status: "fulfilled", value: [1, 2] });
});
