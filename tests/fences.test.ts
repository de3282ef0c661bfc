import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

/* What the linter's import fences can't see. */

const root = join(import.meta.dirname, "..");

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name));
}

const holding = (files: readonly string[], pattern: RegExp): string[] =>
  files.filter((file) => pattern.test(readFileSync(join(root, file), "utf8")));

test("no command and no store module reads the clock", () => {
  expect(holding([...sources("commands"), ...sources("store")], /new Date\(\)/)).toEqual([]);
});

test("the process's environment is read where a process begins, and nowhere else", () => {
  // The last one only hands it on to the processes it starts.
  const allowed = ["bot/main.ts", "bot/ask.ts", "bot/backup.ts", "bot/restore.ts", "bot/shard/others.ts"];
  expect(holding(sources("bot"), /process\.env/).filter((file) => !allowed.includes(file))).toEqual([]);
});

test("no test of pure files sleeps", () => {
  expect(holding(sources("tests/commands"), /setTimeout|setInterval/)).toEqual([]);
});

test("every sentence of a command is worded in its reply file, not in its handler", () => {
  const handlers = sources("commands").filter((file) => file.endsWith("command.ts"));
  expect(holding(handlers, /new UserError\("ERR_[A-Z_]+",\s*["`]/)).toEqual([]);
});

test("only the store knows its driver and its SQL", () => {
  const above = [...sources("bot"), ...sources("commands")];
  expect(holding(above, /from "better-sqlite3"|stores\.db\b|\.(prepare|pragma)\(/)).toEqual([]);
});

test("one file makes the driver's objects, and keeps them: what the collector frees may end the process", () => {
  const ours = sources("store");
  expect(holding(ours, /from "better-sqlite3"/)).toEqual([join("store", "driver.ts")]);
  expect(holding(ours, /\.(iterate|pluck|expand|safeIntegers|bind)\(|\bdb\.backup\(/)).toEqual([]);
});
