import { mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openStores } from "../../../store/index.ts";
import { aQuickPlan, pourIn } from "../../support/developing.ts";
import { needing, pathOf } from "../../support/needs.ts";
import { startProcess, type BotProcess } from "../../support/process.ts";

/*
 * The built process under a wall clock that is set while film is in the tank: Debian's libfaketime changes what the process
 * reads as the date, and leaves its monotonic clock and everybody else's alone.
 */

const CYCLE_MS = 2000;
const DEVELOP_SECONDS = 20;

let data: string;
let offset: string;
let bot: BotProcess | undefined;

beforeEach(() => {
  data = mkdtempSync(join(tmpdir(), "sinkside-clock-"));
  offset = join(data, "offset");
  setClock(0);
});
afterEach(async () => {
  if (bot?.child.exitCode === null) await bot.kill();
  rmSync(data, { recursive: true, force: true });
});

/** At once: a process that reads a file half written ends. */
function setClock(seconds: number): void {
  writeFileSync(`${offset}.part`, `${seconds < 0 ? "" : "+"}${seconds}`);
  renameSync(`${offset}.part`, offset);
}

/** Twenty seconds in the developer, called every two; when it is poured, by a clock nobody sets. */
function beginRun(): number {
  const now = Date.now();
  const pouredAtMs = performance.now() + 3000;
  const stores = openStores(join(data, "sinkside.db"));
  const { id: classId } = stores.classes.ensure("room:own", "Invented class", now);
  stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", now);
  const plan = aQuickPlan(DEVELOP_SECONDS, CYCLE_MS / 1000);
  pourIn(stores, { classId, plan, warnSeconds: 0 }, now, now + 3000);
  stores.close();
  // Both clocks were read one after the other, and the first shows whole milliseconds.
  return pouredAtMs - 2;
}

interface Heard {
  readonly key: string;
  readonly text: string;
  /** By a clock nobody sets. */
  readonly atMs: number;
}

/** Listens at the store, as a page would, until the end of the step is called; sets the clock on the way. */
async function listen(steps: readonly { readonly afterCalls: number; readonly seconds: number }[]) {
  const stores = openStores(join(data, "sinkside.db"));
  const read = stores.db.prepare<[], { key: string; text: string }>(
    "select key, body ->> 'text' as text from messages where key like 'd:%' order by id",
  );
  const heard: Heard[] = [];
  const left = [...steps];
  const until = performance.now() + (DEVELOP_SECONDS + 20) * 1000;
  while (performance.now() < until && !heard.some(({ key }) => key.includes("n"))) {
    for (const row of read.all().slice(heard.length)) heard.push({ ...row, atMs: performance.now() });
    if (left[0] && heard.length >= left[0].afterCalls) setClock(left.shift()?.seconds ?? 0);
    await wait(10);
  }
  stores.close();
  return heard;
}

describe("with libfaketime", needing("libfaketime"), () => {
  test.each([
    ["set forward by an hour", [{ afterCalls: 3, seconds: 3600 }]],
    ["set back by an hour", [{ afterCalls: 3, seconds: -3600 }]],
    [
      "set to and fro",
      [
        { afterCalls: 2, seconds: 2 },
        { afterCalls: 4, seconds: -2 },
        { afterCalls: 6, seconds: 315_360_000 },
      ],
    ],
  ])("a clock %s changes no call: each comes once, and when the film needs it", async (_, steps) => {
    const pouredAtMs = beginRun();
    bot = startProcess(data, {
      BACKUP_CRON: "off",
      LD_PRELOAD: pathOf("libfaketime") ?? "",
      FAKETIME_TIMESTAMP_FILE: offset,
      FAKETIME_NO_CACHE: "1",
      FAKETIME_DONT_FAKE_MONOTONIC: "1",
    });
    await bot.ready;
    const heard = await listen(steps);
    expect(bot.child.exitCode, bot.output()).toBeNull();
    const calls = heard.filter(({ key }) => /[fa]\d+$/.test(key));
    expect(calls).toHaveLength(1 + DEVELOP_SECONDS / (CYCLE_MS / 1000) - 1);
    expect(new Set(heard.map(({ key }) => key)).size).toBe(heard.length);
    expect(heard.filter(({ text }) => /late\*\*|missed/.test(text))).toEqual([]);
    for (const [index, { atMs }] of calls.entries()) {
      // Never before its time. After it by as much as the machine is busy; the bot itself calls none of them late, as above.
      expect(atMs - pouredAtMs, `call ${index}`).toBeGreaterThanOrEqual(index * CYCLE_MS);
    }
    expect((heard.at(-1)?.atMs ?? 0) - pouredAtMs).toBeGreaterThanOrEqual(DEVELOP_SECONDS * 1000);
  });
});
