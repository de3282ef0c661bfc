import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { MUTANTS, type Mutant } from "./mutants.ts";

/* `npm run mutate`: plants each bug in a copy of the program and runs the test that must fail. Some minutes. */

const root = join(import.meta.dirname, "..", "..");
const PARTS = [
  "bot",
  "commands",
  "store",
  "tests",
  "package.json",
  "tsconfig.json",
  ".vite.config.ts",
  ".oxlintrc.json",
];
let copy: string;

interface Report {
  readonly testResults: readonly {
    readonly name: string;
    readonly message: string;
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[];
  }[];
}

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), "sinkside-mutants-"));
  for (const part of PARTS) cpSync(join(root, part), join(copy, part), { recursive: true });
  // What is looked at by a process of its own is the built program's.
  for (const part of ["node_modules", "dist"]) symlinkSync(join(root, part), join(copy, part));
  writeFileSync(
    join(copy, "mutants.config.mjs"),
    "export default { test: { include: ['tests/**/*.test.ts'], testTimeout: 60000 } };\n",
  );
});
afterAll(() => rmSync(copy, { recursive: true, force: true }));

/** Names of the tests that failed in a file; a file that could not even be loaded fails as a whole. */
function listFailures(file: string): string[] {
  const output = join(copy, "report.json");
  const run = spawnSync(
    join(copy, "node_modules", ".bin", "vitest"),
    ["run", "--config", "mutants.config.mjs", file, "--reporter=json", `--outputFile=${output}`],
    { cwd: copy, encoding: "utf8", env: { ...process.env, NODE_OPTIONS: "" } },
  );
  const report = JSON.parse(readFileSync(output, "utf8")) as Report;
  rmSync(output);
  const results = report.testResults.flatMap(({ assertionResults }) => assertionResults);
  if (results.length === 0) throw new Error(`nothing ran in ${file}: ${run.stdout}${run.stderr}`);
  return results.filter(({ status }) => status === "failed").map(({ fullName }) => fullName);
}

const files = [...new Set(MUTANTS.map(({ caughtBy }) => caughtBy.file))];

test.each(files)("%s passes where nothing is planted", (file) => {
  expect(listFailures(file)).toEqual([]);
});

test.each(MUTANTS)("$name: caught by $caughtBy.file", ({ file, find, replace, caughtBy }: Mutant) => {
  const path = join(copy, file);
  const source = readFileSync(path, "utf8");
  expect(source.split(find), "the place to plant it is gone").toHaveLength(2);
  writeFileSync(
    path,
    source.replace(find, () => replace),
  );
  try {
    const failures = listFailures(caughtBy.file);
    expect(failures.filter((name) => name.includes(caughtBy.test))).not.toEqual([]);
  } finally {
    writeFileSync(path, source);
  }
});
