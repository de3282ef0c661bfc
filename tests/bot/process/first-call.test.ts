import { copyFileSync, mkdirSync, mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { type OpenedStores, openStores } from "../../../store/index.ts";
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

/** A film long in the developer: an agitation is due, and it has not gone on. */
function putFilm(stores: OpenedStores): void {
  const now = Date.now();
  const { id: classId } = stores.classes.ensure("room:own", "Invented class", now);
  stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", now);
  pourIn(stores, { classId, plan: aQuickPlan(600, 30), warnSeconds: 0 }, now - 60_000, now - 60_000);
}

/** What the hook says under a name. */
async function startHooked(folder: string): Promise<(name: string) => unknown> {
  bot = startProcess(folder, { NODE_OPTIONS: `--require ${HOOK}` });
  await bot.ready;
  const said = bot.output();
  return (name) => JSON.parse(new RegExp(`^${name}: (.*)$`, "m").exec(said)?.[1] ?? "null");
}

test("nothing is read before the first call that it has no use for", async () => {
  const stores = openStores(join(data, "sinkside.db"));
  putFilm(stores);
  stores.close();

  const told = await startHooked(data);
  const ours = (told("read") as string[]).map((path) => relative(ROOT, path));
  expect(ours.filter((path) => path !== relative(ROOT, HOOK)).sort()).toEqual([
    "dist/bot/main.js",
    "dist/bot/part-driver.js",
    "dist/bot/part-first.js",
    "dist/bot/part-rolldown-runtime.js",
    "node_modules/better-sqlite3/build/Release/better_sqlite3.node",
  ]);
});

test("a long log is neither moved nor looked through before the first call, and moved after it", async () => {
  const path = join(data, "sinkside.db");
  const stores = openStores(path);
  putFilm(stores);
  stores.db.pragma("wal_checkpoint(TRUNCATE)");
  stores.db.pragma("wal_autocheckpoint = 0");
  // More than whoever writes leaves in the log.
  stores.db.exec("create table filler (content blob)");
  const fill = stores.db.prepare("insert into filler (content) values (zeroblob(1000000))");
  stores.atomically(() => Array.from({ length: 70 }, () => fill.run()));
  // As it lies when the power goes: closed in good order it would be one file.
  const left = join(data, "left");
  mkdirSync(left);
  for (const end of ["", "-wal"]) copyFileSync(path + end, join(left, `sinkside.db${end}`));
  stores.close();
  const { size } = statSync(join(left, "sinkside.db"));
  expect(size).toBeLessThan(8_000_000);

  const told = await startHooked(left);
  expect(told("store")).toEqual({ size, isExamined: false });
  const inFile = (): number => statSync(join(left, "sinkside.db")).size;
  await expect.poll(inFile).toBeGreaterThan(70_000_000);
});
