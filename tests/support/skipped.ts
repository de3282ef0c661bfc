import type { Reporter, TestModule, Vitest } from "vitest/node";
import { pathOf, type Need } from "./needs.ts";

/*
 * The last line of a run: how many tests were skipped, for want of what, and how to have it. With EVERY_TEST set, a run that
 * skipped one has failed.
 */

export default class SkippedReporter implements Reporter {
  #isChosen = false;

  onInit({ config }: Vitest): void {
    this.#isChosen = config.testNamePattern !== undefined;
  }

  onTestRunEnd(modules: readonly TestModule[]): void {
    const skipped = modules.flatMap((module) => [...module.children.allTests("skipped")]);
    const said = describeSkipped(
      skipped.map((test) => ({ name: test.fullName, lacks: test.meta().lacks ?? [] })),
      this.#isChosen,
    );
    for (const line of said.lines) console.log(line);
    const isAll = process.env["EVERY_TEST"] === undefined || skipped.length === 0;
    if (!said.isExplained || !isAll) process.exitCode = 1;
  }
}

export interface Skipped {
  readonly name: string;
  readonly lacks: readonly Need[];
}

/** `isChosen`: whoever runs only tests of some name skips the others by their own word. */
export function describeSkipped(
  skipped: readonly Skipped[],
  isChosen = false,
): { lines: string[]; isExplained: boolean } {
  const unexplained = isChosen ? [] : skipped.filter(({ lacks }) => lacks.length === 0);
  const lacks = [...new Set(skipped.flatMap((each) => each.lacks))];
  const packages = lacks.filter((need) => need !== "root's right to mount" && pathOf(need) === undefined);
  const how = packages.length > 0 ? `: sudo apt-get install -y ${packages.join(" ")}` : "";
  const want = lacks.length > 0 ? ` for want of ${lacks.join(", ")}${how}` : "";
  return {
    lines: [
      ...unexplained.map(({ name }) => `SKIPPED without a reason, which fails the run: ${name}`),
      skipped.length === 0 ? "No test was skipped." : `${skipped.length} tests were skipped${want}`,
    ],
    isExplained: unexplained.length === 0,
  };
}
