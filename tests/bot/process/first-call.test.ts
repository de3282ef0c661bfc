import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openStores } from "../../../store/index.ts";
import { aQuickPlan, pourIn } from "../../support/developing.ts";
import { startProcess, type BotProcess } from "../../support/process.ts";

/* What is read before the first call after a start: each file more is a call that comes later. */

const ROOT = join(import.meta.dirname, "..", "..", "..");
const HOOK = join(ROOT, "tests", "support", "loaded-hook.cjs");

let data: string;
let bot: BotProcess | undefined;

beforeEach(() => {
  data = mkdtempSync(join(tmpdir(), "sinkside-first-"));
});
afterEach(async () => {
  if (bot?.child.exitCode === null) await bot.kill();
  rmSync(data, { recursive: true, force: true });
});

test("nothing is read before the first call that it has no use for", async () => {
  const now = Date.now();
  const stores = openStores(join(data, "sinkside.db"));
  const { id: classId } = stores.classes.ensure("room:own", "Invented class", now);
  stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", now);
  // Long in the developer: an agitation is due, and the film has not gone on.
  pourIn(stores, { classId, plan: aQuickPlan(600, 30), warnSeconds: 0 }, now - 60_000, now - 60_000);
  stores.close();

  bot = startProcess(data, { NODE_OPTIONS: `--require ${HOOK}` });
  await bot.ready;
  const read = /^read: (.*)$/m.exec(bot.output())?.[1] ?? "[]";
  const ours = (JSON.parse(read) as string[]).map((path) => relative(ROOT, path));
  const driver = /^node_modules\/(better-sqlite3|bindings|file-uri-to-path)\//;
  expect(ours.filter((path) => path !== relative(ROOT, HOOK) && !driver.test(path))).toEqual([
    "dist/bot/main.js",
    "dist/bot/part-open.js",
    "dist/bot/part-first.js",
    "dist/bot/part-upkeep.js",
  ]);
});
