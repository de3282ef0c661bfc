import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

export interface AxeResults {
  readonly violations: readonly {
    readonly id: string;
    readonly impact: string | null;
    readonly nodes: readonly { readonly target: readonly string[]; readonly failureSummary?: string }[];
  }[];
}

/** Runs in the browser: checks WCAG 2.2 A and AA. */
export const RUN_AXE = `axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] })`;

/** What axe-core finds serious or critical on the page as it is now, in words. */
export async function findBarriers(page: Page): Promise<string[]> {
  await page.evaluate(source);
  return listBarriers((await page.evaluate(RUN_AXE)) as AxeResults);
}

export function listBarriers({ violations }: AxeResults): string[] {
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} at ${target.join(" ")}: ${failureSummary ?? ""}`),
    );
}
