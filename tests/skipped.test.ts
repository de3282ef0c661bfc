import { expect, test } from "vitest";
import { describeSkipped } from "./support/skipped.ts";

test("where nothing was skipped, it says so", () => {
  expect(describeSkipped([])).toEqual({ lines: ["No test was skipped."], isExplained: true });
});

test("what was skipped is counted in the last line, with what it wanted", () => {
  const { lines, isExplained } = describeSkipped([
    { name: "fills its disk", lacks: ["root's right to mount"] },
    { name: "locks its disk", lacks: ["root's right to mount"] },
  ]);
  expect(lines).toEqual(["2 tests were skipped for want of root's right to mount"]);
  expect(isExplained).toBe(true);
});

test("a test skipped without a reason is named, and fails the run", () => {
  const { lines, isExplained } = describeSkipped([{ name: "is left for later", lacks: [] }]);
  expect(lines[0]).toContain("is left for later");
  expect(isExplained).toBe(false);
  expect(describeSkipped([{ name: "is left for later", lacks: [] }], true).isExplained).toBe(true);
});
