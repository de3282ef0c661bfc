import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { loadNow, table } from "../whole-bot-figures.ts";
import { FIELD, measure, recover, type Contestant, type Result, type Task } from "./field.ts";
import { installPeers } from "./services.ts";

/*
 * The engine beside a floor and other people's timers, all in one run. Each contestant has a process of its own, which arms
 * so many timers at random instants of a window. What the columns mean:
 *   late      from the moment of a timer until its handler was called; with the bot: until it was decided, said and flushed
 *   x floor   the 99th percentile as a multiple of plain `setTimeout`'s in the same task
 *   arm       to arm all of them, ms; in queues and in the bot: until all are kept
 *   CPU       seconds while they fired, own process + server, and µs of both for each timer
 *   MB        most memory in use, own process + server
 *   blocked   the longest the event loop was held up, ms
 *   + step    its handler does the work of a cue as well (see work.mjs), as the bot does in each of its rows
 *   recovery  from the start of a new process, after a kill, to the first of those that have fallen due
 */

const counts = (process.env.COUNTS ?? "1000,10000,100000").split(",").map(Number);
const windows = (process.env.WINDOWS ?? "30,1").split(",").map((seconds) => Number(seconds) * 1000);
const chosen = process.env.ENGINES?.split(",");
const field = FIELD.filter(({ name }) => chosen?.includes(name) ?? true);
const RECOVERED: Task = { count: 10_000, windowMs: 10_000 };

let folder: string;
const missing = new Set<string>();
const rows: Record<string, string | number>[] = [];
const floors = new Map<string, number>();

beforeAll(() => {
  folder = mkdtempSync(join(process.env.FOLDER ?? tmpdir(), "sinkside-engine-"));
  // PostgreSQL runs as somebody else, and has to get to its own place in here.
  chmodSync(folder, 0o755);
  for (const { name, peers, works } of field)
    if (peers && !works && !installPeers(join(folder, name), peers)) missing.add(name);
}, 600_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }), 60_000);

const tasks = windows.flatMap((windowMs) => counts.map((count) => ({ count, windowMs })));

test.each(tasks)("$count timers in $windowMs ms", async (task) => {
  let own: Result | undefined;
  for (const who of field) {
    const result = missing.has(who.name) ? NOT_INSTALLED : await measure(who, task, newFolder());
    rows.push(toRow(who, task, result));
    console.log(table(rows.slice(-1)));
    if (who.name === "sinkside") own = result;
  }
  console.log(table(rows));
  if (own) expect(own).toMatchObject({ own: { fired: task.count, early: 0 } });
});

test("recovery", async () => {
  const found: Record<string, string | number>[] = [];
  for (const who of field.filter(({ works }) => !works)) {
    const ms =
      who.isDurable && !missing.has(who.name) ? await recover(who, RECOVERED, newFolder()) : undefined;
    const lost = who.isDurable ? "never came" : "all are lost";
    found.push({
      contestant: who.name,
      pending: RECOVERED.count,
      "recovery ms": missing.has(who.name) ? NOT_INSTALLED.why : (ms ?? lost),
      "load average": loadNow(),
    });
  }
  console.log(table(found));
});

const NOT_INSTALLED = { kind: "failed", why: "missing: it could not be installed" } as const;

function newFolder(): string {
  const path = mkdtempSync(join(folder, "task-"));
  chmodSync(path, 0o755);
  return path;
}

function toRow(
  { name, works }: Contestant,
  { count, windowMs }: Task,
  result: Result,
): Record<string, string | number> {
  const row = { contestant: works ? `${name} + step` : name, timers: count, "in s": windowMs / 1000 };
  if (result.kind === "failed")
    return { ...row, "late ms p50/p99/max": result.why, "load average": loadNow() };
  const { own, server } = result;
  const cell = `${count}/${windowMs}`;
  const p99 = own.late[1] ?? Number.NaN;
  if (name === "plainTimeouts") floors.set(cell, Math.max(1, p99));
  const floor = floors.get(cell);
  return {
    ...row,
    "late ms p50/p99/max": `${own.late.join(" / ")}${own.isArmed ? "" : ", armed late"}`,
    "x floor": floor === undefined ? "" : (p99 / floor).toFixed(1),
    "decided ms": own.more.decided?.join(" / ") ?? "",
    fired: own.fired,
    early: own.early,
    "arm ms": Math.round(own.armMs),
    "CPU s": `${own.cpuSeconds.toFixed(2)} + ${server.cpuSeconds.toFixed(2)}`,
    "µs each": Math.round(((own.cpuSeconds + server.cpuSeconds) * 1e6) / Math.max(1, own.fired)),
    MB: `${Math.round(own.mostMb)} + ${Math.round(server.mostMb)}`,
    "blocked ms": Math.round(own.blockedMs),
    "load average": loadNow(),
  };
}
