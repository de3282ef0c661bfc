import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { setTimeout as wait } from "node:timers/promises";
import Database from "better-sqlite3";
import { expect, test } from "vitest";
import { openStores } from "../../store/index.ts";
import { startProcess } from "../support/process.ts";
import { createRandom } from "../simulation/random.ts";
import { loadNow, percentile, readProcess, readSaid, spread, table, watchDisk } from "./whole-bot-figures.ts";
import { seedClasses, type SeedClass } from "./whole-bot-seed.ts";

/*
 * The real process with many runs in the room at once, each with a call a minute, and nobody's page open. Then it is
 * killed, over and over, and comes back.
 */

const RUNS = Number(process.env.RUNS ?? 10_000);
const SECONDS = Number(process.env.SECONDS ?? 60);
const KILLS = Number(process.env.KILLS ?? 5);
/** Where the store lies; on a file system in memory the figures are without the disk. */
const FOLDER = process.env.FOLDER ?? tmpdir();
const WARM_SECONDS = 10;
const A_CLASS = 30;

test(`${RUNS} runs in the room`, async () => {
  const data = mkdtempSync(join(FOLDER, "sinkside-load-"));
  const path = join(data, "sinkside.db");
  const { next } = createRandom(1);
  const classes = Array.from({ length: Math.ceil(RUNS / A_CLASS) }, (_, at): SeedClass => ({
    key: `room:c${at}`,
    channelRef: null,
    people: Array.from({ length: A_CLASS }, (__, position) => ({
      id: `room:c${at}p${position}`,
      direct: null,
    })),
  }));
  const stores = openStores(path);
  const now = Date.now();
  // What falls due while this is written is over before it begins.
  const over = now + RUNS * 4;
  seedClasses(stores, classes, () => over - 60_000 * next(), over);
  stores.close();
  console.log(`${classes.length * A_CLASS} runs in ${data}`);
  await wait(Math.max(0, over - Date.now()));

  const bot = startProcess(data, { LOG_LEVEL: "debug" });
  await bot.ready;
  await wait(WARM_SECONDS * 1000);
  const disk = watchDisk(data);
  const from = { at: Date.now(), ...readProcess(bot.child.pid ?? 0) };
  await wait(SECONDS * 1000);
  const to = { at: Date.now(), ...readProcess(bot.child.pid ?? 0) };
  const said = readSaid(bot).filter(({ time }) => time >= from.at && time < to.at);
  console.log(
    table([
      {
        runs: classes.length * A_CLASS,
        "calls/s": (said.length / SECONDS).toFixed(1),
        "decided late ms p50/p99/max": spread(said.map(({ decidedMs }) => decidedMs)),
        "kept and said late ms p50/p99/max": spread(said.map(({ deliveredMs }) => deliveredMs)),
        early: said.filter(({ decidedMs }) => decidedMs < 0).length,
        "CPU %": (((to.cpuSeconds - from.cpuSeconds) / (to.at - from.at)) * 100_000).toFixed(0),
        "MB now/most": `${to.nowMb} / ${to.mostMb}`,
        "disk flush ms p50/p99/max": spread(disk.stop()),
        "load average": loadNow(),
      },
    ]),
  );
  await bot.kill("SIGKILL");

  const starts: { first: number; ready: number }[] = [];
  for (let kill = 0; kill < KILLS; kill += 1) {
    await wait(3000);
    starts.push(await comeBack(data, path));
  }
  console.log(
    table([
      {
        kills: KILLS,
        "start of the process to the first call decided, ms: median / most": `${percentile(
          starts.map(({ first }) => first),
          0.5,
        ).toFixed(0)} / ${Math.max(...starts.map(({ first }) => first)).toFixed(0)}`,
        "to the open room": `${percentile(
          starts.map(({ ready }) => ready),
          0.5,
        ).toFixed(0)} / ${Math.max(...starts.map(({ ready }) => ready)).toFixed(0)}`,
        "load average": loadNow(),
      },
    ]),
  );
  expect(said.length).toBeGreaterThan(RUNS * (SECONDS / 60) * 0.9);
});

/** From outside, by the rows: what is committed can be read by another process. */
async function comeBack(data: string, path: string): Promise<{ first: number; ready: number }> {
  const db = new Database(path, { readonly: true });
  const newest = db.prepare<[], { id: number | null }>("select max(id) as id from messages");
  const before = newest.get()?.id ?? 0;
  const startedAt = performance.now();
  const bot = startProcess(data, { LOG_LEVEL: "debug" });
  const ready = bot.ready.then(() => performance.now() - startedAt);
  while ((newest.get()?.id ?? 0) === before) await wait(2);
  const first = performance.now() - startedAt;
  const result = { first, ready: await ready };
  await wait(1000);
  await bot.kill("SIGKILL");
  db.close();
  return result;
}
