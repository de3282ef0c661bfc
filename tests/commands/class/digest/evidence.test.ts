import { expect, test } from "vitest";
import { chanceOf, evidenceOf, type JudgedRoll } from "../../../../commands/class/digest/evidence.ts";

const rolls = (label: string, count: number, faulty: number, fault = "milky"): JudgedRoll[] =>
  Array.from({ length: count }, (_, index) => ({ labels: [label], fault: index < faulty ? fault : "" }));

test.each([
  // R. A. Fisher, The Design of Experiments (1935), ch. II: a lady tells four cups of eight; all right by chance 1 in 70,
  // at least three right 17 in 70.
  [4, 4, 4, 8, 1 / 70],
  [3, 4, 4, 8, 17 / 70],
  [0, 4, 4, 8, 1],
])("%i or more of %i drawn, %i such among %i", (faulty, drawn, allFaulty, all, chance) => {
  expect(chanceOf(faulty, drawn, allFaulty, all)).toBeCloseTo(chance, 10);
});

test("six milky rolls of nine through one fixer, two of thirty-one elsewhere, are no chance", () => {
  const found = evidenceOf([...rolls("B3", 9, 6), ...rolls("B4", 31, 2)], ["B3", "B4"]);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({
    label: "B3",
    fault: "milky",
    faulty: 6,
    rolls: 9,
    otherFaulty: 2,
    otherRolls: 31,
  });
  // Counted another way: C(8,6)C(32,3)/C(40,9) + C(8,7)C(32,2)/C(40,9) + C(8,8)C(32,1)/C(40,9)
  // = (28*4960 + 8*496 + 1*32) / 273438880.
  expect(found[0]?.chance).toBeCloseTo((28 * 4960 + 8 * 496 + 32) / 273_438_880, 10);
});

test("what chance explains is not told: two of nine, or the same everywhere", () => {
  expect(evidenceOf([...rolls("B3", 9, 2), ...rolls("B4", 31, 2)], ["B3", "B4"])).toEqual([]);
  expect(evidenceOf([...rolls("B3", 20, 10), ...rolls("B4", 20, 10)], ["B3", "B4"])).toEqual([]);
});

test("with nothing to compare with, nothing is told", () => {
  expect(evidenceOf([...rolls("B3", 20, 20), ...rolls("B4", 4, 0)], ["B3", "B4"])).toEqual([]);
});

test("among blameless batches an alarm is rare (1,000 invented terms of 5 batches and 3 faults, fixed seed)", () => {
  let state = 7;
  const random = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  const labels = ["B1", "B2", "B3", "B4", "B5"];
  let alarms = 0;
  for (let term = 0; term < 1000; term += 1) {
    const judged = Array.from({ length: 60 }, () => ({
      labels: [labels[Math.floor(random() * 5)] ?? "B1"],
      fault: random() < 0.75 ? "" : (["milky", "streaks", "thin"][Math.floor(random() * 3)] ?? ""),
    }));
    if (evidenceOf(judged, labels).length > 0) alarms += 1;
  }
  expect(alarms).toBeLessThanOrEqual(10);
});
