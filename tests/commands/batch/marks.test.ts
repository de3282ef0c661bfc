import { describe, expect, test } from "vitest";
import type { LineBody } from "../../../store/shapes/ledger.ts";
import { newsOf, reachedMarks, type Mark, type Reached } from "../../../commands/batch/marks.ts";
import { aBatch, aDeveloper, DAY_MS, ledger, mixed, tested, topped, used } from "../../support/batch.ts";
import { START } from "../../support/make.ts";

const marksAt = (days: number, ...bodies: LineBody[]): Mark[] =>
  reachedMarks(aBatch(), ledger(mixed(1000, 45), ...bodies), START + days * DAY_MS).map(({ mark }) => mark);

/** Uses one roll at a time, testing so often that no test is overdue, and notes at which roll what is said. */
function saidAtRoll(rolls: number): [number, Mark][] {
  const known = new Set<string>();
  const name = ({ mark, arm }: Reached): string => `${mark}.${arm}`;
  const bodies: LineBody[] = [mixed(1000, 45)];
  const said: [number, Mark][] = [];
  for (let roll = 1; roll <= rolls; roll += 1) {
    bodies.push(used(1), tested(Math.round(45 * (1 + roll / 22))));
    const { say, remember } = newsOf(reachedMarks(aBatch(), ledger(...bodies), START), (each) =>
      known.has(name(each)),
    );
    for (const each of remember) known.add(name(each));
    said.push(...say.map(({ mark }): [number, Mark] => [roll, mark]));
  }
  return said;
}

describe("marks of use", () => {
  test("a bath for 20 rolls speaks once at half as slow again, at 2 rolls left and at its end", () => {
    // 45 s times 1.5 is 67.5 s: by the tests above that is passed at the 11th roll (68 s).
    expect(saidAtRoll(20)).toEqual([
      [11, "tired"],
      [18, "last-films"],
      [20, "exhausted"],
    ]);
  });

  test("untested it is tired at three quarters of its capacity", () => {
    const plain = aBatch({ capacitySqInPerLitre: 1600 });
    const marks = (rolls: number) =>
      reachedMarks(plain, ledger(mixed(1000, null), used(rolls)), START).map(({ mark }) => mark);
    expect(marks(14)).not.toContain("tired");
    expect(marks(15)).toContain("tired");
  });

  test("where one big load passes several marks only the furthest is said, and the others never after it", () => {
    const known = new Set<string>();
    const reached = reachedMarks(aBatch(), ledger(mixed(1000, 45), used(20)), START);
    const news = newsOf(reached, () => false);
    expect(news.say.map(({ mark }) => mark)).toEqual(["exhausted"]);
    for (const { mark } of news.remember) known.add(mark);
    expect(newsOf(reached, ({ mark }) => known.has(mark)).say).toEqual([]);
    expect([...known]).toEqual(["tired", "last-films", "exhausted"]);
  });

  test("a top-up arms them again", () => {
    const arms = (...bodies: LineBody[]) =>
      reachedMarks(aBatch(), ledger(mixed(1000, 45), ...bodies), START).map(
        ({ mark, arm }) => `${mark}.${arm}`,
      );
    expect(arms(used(16))).toContain("tired.0");
    expect(arms(used(16), topped(500, 500))).not.toContain("tired.1");
    expect(arms(used(16), topped(500, 500), used(8))).toContain("tired.1");
  });

  test("a test that shows a bath good again arms them again", () => {
    const good = [used(5), tested(70), used(4), tested(75)] as const;
    const marks = reachedMarks(aBatch(), ledger(mixed(1000, 45), ...good, used(11)), START);
    expect(marks).toContainEqual({ mark: "exhausted", arm: 1 });
  });

  test("of a developer used once the last rolls are counted in what one takes", () => {
    const lines = (ml: number) =>
      ledger(mixed(5000), used(1, { ml: 500 }), used(1, { ml: ml - 500, films: 1 }));
    // Two films took 2600 ml, 1300 each: what is left is enough for one. At 4900 ml it is enough for none.
    const marks = (ml: number) => reachedMarks(aDeveloper(), lines(ml), START).map(({ mark }) => mark);
    expect(marks(1000)).toEqual([]);
    expect(marks(2600)).toEqual(["last-films"]);
    expect(marks(4900)).toContain("exhausted");
  });
});

describe("marks of time", () => {
  test("out of date is said two days before, and on the day", () => {
    expect(marksAt(57.9)).toEqual([]);
    expect(marksAt(58)).toEqual(["out-of-date-soon"]);
    expect(marksAt(60)).toEqual(["out-of-date-soon", "out-of-date"]);
  });

  test("what is mixed for the day is not called out of date soon", () => {
    const day = aDeveloper({ fullHours: 24, partHours: 24 });
    const marks = (days: number) =>
      reachedMarks(day, ledger(mixed(5000)), START + days * DAY_MS).map(({ mark }) => mark);
    expect(marks(0.5)).toEqual([]);
    expect(marks(1)).toEqual(["out-of-date"]);
  });

  test("a discarded bottle is silent", () => {
    const gone = { kind: "discarded", ml: 1000, to: "silver", isAll: true, note: "" } as const;
    expect(marksAt(99, used(20), gone)).toEqual([]);
  });
});

describe("a clearing test is overdue", () => {
  test("after a quarter of the capacity since the last", () => {
    expect(marksAt(0, used(4))).not.toContain("test-overdue");
    expect(marksAt(0, used(5))).toContain("test-overdue");
    expect(marksAt(0, used(5), tested(50))).not.toContain("test-overdue");
  });

  test("after two weeks, if it was used at all", () => {
    expect(marksAt(14, used(1))).toContain("test-overdue");
    expect(marksAt(13.9, used(1))).not.toContain("test-overdue");
    expect(marksAt(40)).not.toContain("test-overdue");
  });

  test("at the first roll through a fixer that nobody tested fresh", () => {
    const marks = (...bodies: LineBody[]) =>
      reachedMarks(aBatch(), ledger(mixed(1000, null), ...bodies), START).map(({ mark }) => mark);
    expect(marks()).toEqual([]);
    expect(marks(used(1))).toEqual(["test-overdue"]);
  });

  test("never for what is no fixer", () => {
    const stop = aBatch({ kind: "stop" });
    expect(reachedMarks(stop, ledger(mixed(), used(5)), START)).toEqual([]);
  });
});
