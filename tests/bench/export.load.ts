import { closeSync, copyFileSync, fsyncSync, mkdtempSync, openSync, rmSync, writeSync } from "node:fs";
import { get, type IncomingMessage } from "node:http";
import { once } from "node:events";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { setTimeout as wait } from "node:timers/promises";
import Database from "better-sqlite3";
import { expect, test } from "vitest";
import { COOKIE } from "../../bot/chat/room/cookie.ts";
import { hashToken } from "../../bot/chat/room/secrets.ts";
import { openStores } from "../../store/index.ts";
import { openManyRolls } from "../support/many-rolls.ts";
import { startProcess } from "../support/process.ts";
import { openSocket } from "../support/room-server.ts";
import { createRandom } from "../simulation/random.ts";
import { loadNow, readProcess, readSaid, spread, table, watchDisk } from "./whole-bot-figures.ts";
import { seedClasses } from "./whole-bot-seed.ts";

/*
 * A teacher takes a log of 1,000,000 rolls from the page while many runs are called: how long that takes beside a floor (the
 * rows of the same table, read one by one by the driver alone and written to a file as they are), the most memory the process
 * ever has, and how late calls are before and beside it, beside the floor of one small commit ten times a second by the driver
 * alone on the same disk. The goals: under 200 MB, calls at most 20 ms late. One fetch breaks off first; the next has
 * everything. The bot's first backup, which comes a minute after its start, falls into a fetch of a million.
 * ROLLS and RUNS set other sizes, FOLDER another disk.
 */

const COUNT = Number(process.env["ROLLS"] ?? 1_000_000);
const RUNS = Number(process.env["RUNS"] ?? 600);
const QUIET_SECONDS = Number(process.env["QUIET"] ?? 20);
const TOKEN = "taken-by-the-bench-only-0123456789";

test(`a log of ${COUNT} rolls is taken while ${RUNS} runs are called`, async () => {
  const data = mkdtempSync(join(process.env["FOLDER"] ?? tmpdir(), "sinkside-export-"));
  const path = join(data, "sinkside.db");
  const { stores: many, classId } = openManyRolls(COUNT);
  const made = many.db.name;
  many.close();
  copyFileSync(made, path);
  reachDisk(path);
  const floorSeconds = readAlone(path, join(data, "floor.txt"));

  const over = Date.now() + 5000 + RUNS * 4;
  seed(path, classId, over);
  await wait(Math.max(0, over - Date.now()));
  const bot = startProcess(data, { LOG_LEVEL: "debug" });
  const url = await bot.ready;
  const pid = bot.child.pid ?? 0;
  await wait(5000);
  const late = (from: number, to: number): string =>
    spread(
      readSaid(bot)
        .filter(({ time }) => time >= from && time < to)
        .map(({ decidedMs }) => decidedMs),
    );
  const quietAt = Date.now();
  const quietDisk = watchDisk(data);
  await wait(QUIET_SECONDS * 1000);
  const diskBefore = spread(quietDisk.stop());
  const before = readProcess(pid);

  const cookie = `${COOKIE}=${TOKEN}`;
  const page = await openSocket(url, cookie);
  page.send({ type: "hello", after: null });
  const askedAt = performance.now();
  await page.says("roll export");
  const answeredMs = performance.now() - askedAt;
  const { events } = await page.hears("events", (each) => each.events.some(({ files }) => files.length > 0));
  const href = events.flatMap(({ files }) => files)[0]?.href ?? "";
  const broken = await take(url + href, cookie, 20_000_000);

  const disk = watchDisk(data);
  const startedAt = Date.now();
  const whole = await take(url + href, cookie);
  const endedAt = Date.now();
  const diskBeside = spread(disk.stop());
  const after = readProcess(pid);
  page.socket.close();
  await bot.kill("SIGKILL");
  rmSync(data, { recursive: true });

  const seconds = (endedAt - startedAt) / 1000;
  console.log(
    table([
      {
        rolls: COUNT,
        runs: RUNS,
        MB: (whole.bytes / 1e6).toFixed(0),
        "export s": seconds.toFixed(1),
        "floor s": floorSeconds.toFixed(1),
        ratio: (seconds / floorSeconds).toFixed(1),
        "asked for, ms": answeredMs.toFixed(0),
        "first byte, ms": whole.firstMs.toFixed(0),
        "peak MB before / in all": `${before.mostMb} / ${after.mostMb}`,
        "calls late ms p50/p99/max: before": late(quietAt, quietAt + QUIET_SECONDS * 1000),
        "beside it": late(startedAt, endedAt),
        "disk ms p50/p99/max: before": diskBefore,
        "disk beside it": diskBeside,
        "CPU % beside it": (((after.cpuSeconds - before.cpuSeconds) / seconds) * 100).toFixed(0),
        "load average": loadNow(),
      },
    ]),
  );
  expect(broken.bytes).toBeLessThan(whole.bytes);
  expect(whole.lines).toBe(COUNT + 1);
  expect(after.mostMb).toBeLessThan(200);
});

/** What is still to be written of the copy would hold up every commit for as long as it takes. */
function reachDisk(path: string): void {
  const file = openSync(path, "r+");
  fsyncSync(file);
  closeSync(file);
}

/** Seconds that the driver takes to read every roll and write it to a file. */
function readAlone(path: string, to: string): number {
  const db = new Database(path, { readonly: true });
  const file = openSync(to, "w");
  const startedAt = performance.now();
  let text = "";
  for (const row of db.prepare("select * from rolls order by id desc").raw().iterate()) {
    text += `${(row as unknown[]).join(",")}\n`;
    if (text.length < 65_536) continue;
    writeSync(file, text);
    text = "";
  }
  writeSync(file, text);
  const seconds = (performance.now() - startedAt) / 1000;
  closeSync(file);
  db.close();
  rmSync(to);
  return seconds;
}

/** Runs of other classes, each with a call a minute, and a teacher who is signed in. */
function seed(path: string, classId: number, over: number): void {
  const stores = openStores(path);
  const { next } = createRandom(1);
  const classes = Array.from({ length: Math.ceil(RUNS / 30) }, (_, at) => ({
    key: `room:c${at}`,
    channelRef: null,
    people: Array.from({ length: 30 }, (__, position) => ({ id: `room:c${at}p${position}`, direct: null })),
  }));
  seedClasses(stores, classes, () => over - 60_000 * next(), over);
  for (const kind of ["join", "teacher", "aide"] as const) stores.rooms.setSecret(classId, kind, kind, over);
  stores.members.see(classId, { id: "room:iris", name: "Iris" }, "teacher", over);
  stores.rooms.addSession(
    { classId, personId: "room:iris", tokenHash: hashToken(TOKEN), device: "bench" },
    over,
  );
  stores.close();
}

/** Fetches a file, or its first bytes. */
async function take(
  url: string,
  cookie: string,
  mostBytes = Infinity,
): Promise<{ bytes: number; lines: number; firstMs: number }> {
  const startedAt = performance.now();
  const [response] = (await once(get(url, { headers: { cookie } }), "response")) as [IncomingMessage];
  let [bytes, lines, firstMs] = [0, 0, 0];
  for await (const chunk of response as AsyncIterable<Buffer>) {
    firstMs ||= performance.now() - startedAt;
    bytes += chunk.length;
    for (let at = chunk.indexOf(10); at >= 0; at = chunk.indexOf(10, at + 1)) lines += 1;
    if (bytes > mostBytes) break;
  }
  return { bytes, lines, firstMs };
}
