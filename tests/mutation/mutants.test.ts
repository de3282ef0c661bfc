import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { MUTANTS } from "./mutants.ts";

const root = join(import.meta.dirname, "..", "..");

test.each(MUTANTS)("$name: there is still one place to plant it, and the test it names", (mutant) => {
  const source = readFileSync(join(root, mutant.file), "utf8");
  expect(source.split(mutant.find)).toHaveLength(2);
  expect(readFileSync(join(root, mutant.caughtBy.file), "utf8")).toContain(mutant.caughtBy.test);
});
