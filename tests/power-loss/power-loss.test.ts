import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import Database from "better-sqlite3";
import { afterAll, beforeAll, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { chooseSeed, createRandom } from "../simulation/random.ts";
import { Disk } from "./disk.ts";
import { traceRun } from "./trace.ts";

/*
 * The power goes at a random instant: what the kernel was asked to write is replayed up to there, what was not synced is
 * dropped or torn, and the store is opened. CRASH_POINTS makes it long. The setting that is known to lose (NORMAL) is
 * played as well: should it lose nothing, this test would be blind.
 */

const POINTS = Number(process.env["CRASH_POINTS"] ?? 150);
const COMMITS = 250;
const repository = join(import.meta.dirname, "..", "..");

let folder: string;
let build: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sinkside-power-"));
  build = join(folder, "build");
  const vite = join(repository, "node_modules", ".bin", "vite");
  const settings = ["--config", join(repository, ".vite.config.ts"), "--outDir", build];
  // A tree of its own: what is tried is what is in the sources now.
  execFileSync(vite, ["build", ...settings], { stdio: "inherit" });
  symlinkSync(join(repository, "node_modules"), join(build, "node_modules"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Losses {
  /** Crash points after which an acknowledged commit was missing. */
  lost: number;
  damaged: number;
  syncs: number;
}

async function play(synchronous: string, random: ReturnType<typeof createRandom>): Promise<Losses> {
  const home = join(folder, `run${synchronous}`);
  mkdirSync(home);
  const store = join(home, "power.db");
  const workload = join(import.meta.dirname, "workload.mjs");
  const command = [process.execPath, workload, build, store, String(COMMITS), synchronous];
  const acts = await traceRun(command, store, join(home, "trace"));
  expect(acts.filter(({ kind }) => kind === "ack")).toHaveLength(COMMITS + 1);
  const first = acts.findIndex(({ kind }) => kind === "ack");
  const points = Array.from({ length: POINTS }, () => random.whole(first + 1, acts.length)).sort(
    (a, b) => a - b,
  );
  const losses = { lost: 0, damaged: 0, syncs: acts.filter(({ kind }) => kind === "sync").length };
  const disk = new Disk();
  let taken = 0;
  let acknowledged = 0;
  for (const point of points) {
    for (const act of acts.slice(taken, point)) {
      disk.take(act);
      if (act.kind === "ack") acknowledged = act.number;
    }
    taken = point;
    const found = reopen(disk.afterCut(random), join(home, "found"));
    if (found === undefined) losses.damaged += 1;
    else if (found < acknowledged) losses.lost += 1;
  }
  return losses;
}

/** How many commits are there; undefined where the store is damaged. */
function reopen(files: ReadonlyMap<string, Buffer>, home: string): number | undefined {
  rmSync(home, { recursive: true, force: true });
  mkdirSync(home);
  // The shared memory beside the store is made anew by whoever opens it first.
  for (const [path, bytes] of files)
    if (!path.endsWith("-shm")) writeFileSync(join(home, basename(path)), bytes);
  try {
    const db = new Database(join(home, "power.db"));
    try {
      if (db.pragma("integrity_check", { simple: true }) !== "ok") return undefined;
      return (db.prepare("select count(*) as n from outbox").get() as { n: number }).n;
    } finally {
      db.close();
    }
  } catch {
    return undefined;
  }
}

test(
  `the power goes ${POINTS} times: no acknowledged commit is lost, and the store is whole each time`,
  { timeout: 6 * 3600_000, ...needing("strace") },
  async () => {
    const random = createRandom(chooseSeed("POWER_SEED"));
    const full = await play("", random);
    const control = await play("NORMAL", random);
    console.log(`as the bot does it ${JSON.stringify(full)}; NORMAL ${JSON.stringify(control)}`);
    expect(full).toMatchObject({ lost: 0, damaged: 0 });
    expect(full.syncs).toBeGreaterThan(COMMITS);
    // Otherwise the test could not see a loss.
    expect(control.lost).toBeGreaterThan(POINTS / 4);
  },
);
