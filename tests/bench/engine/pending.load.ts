import { execFileSync, fork } from "node:child_process";
import { once } from "node:events";
import { copyFileSync, existsSync, mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Cue } from "../../../store/shapes/cue.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { aRun } from "../../support/make.ts";
import { startProcess } from "../../support/process.ts";
import { loadNow, percentile, readSaid, table } from "../whole-bot-figures.ts";
import { createRandom } from "../../simulation/random.ts";

/*
 * `npm run bench:pending`: what calls that wait cost, and how soon they are taken up again by a new process. A store with so
 * many of them is written and left as a killed process leaves it; then the engine is started on it, several times.
 *   ready     from opening the store until everything is armed, ms
 *   first     from the start of the process until the first of what has fallen due is decided, said and flushed, ms
 *   MB        in memory 3 s later; B each: what one that waits adds to it, and to the file
 *   bot       the same as `first`, of the whole program; ask: an answer to `/help` in a terminal, beside that bot; both for
 *             the stores that differ in what opening them takes
 *   floor     the start of Node itself, doing nothing, ms; in brackets, how many times as long as that
 */

interface Load {
  readonly name: string;
  readonly pending: number;
  /** Calls that were made long ago. */
  readonly past: number;
  /** Megabytes of the log of writes that were not moved into the store yet. */
  readonly walMb: number;
  /** The whole program is started on it as well. */
  readonly isForAll?: true;
}

const LOADS: readonly Load[] = [
  { name: "nothing waits", pending: 0, past: 0, walMb: 0, isForAll: true },
  { name: "100,000 wait", pending: 100_000, past: 0, walMb: 0 },
  { name: "1,000,000 wait", pending: 1_000_000, past: 0, walMb: 0 },
  { name: "100,000 wait, 1,000,000 are over", pending: 100_000, past: 1_000_000, walMb: 0 },
  { name: "the same, with a log of 100 MB", pending: 100_000, past: 1_000_000, walMb: 100, isForAll: true },
];
/** A class's term of films, give or take: so many runs share the calls. */
const RUNS = 1000;
const STARTS = 9;
/** Until what a start leaves for later is done. */
const REST_MS = 1000;
const CLASSES = 30;
const HOUR_MS = 3_600_000;
const ENDINGS = ["", "-wal"];
const DIST = join(import.meta.dirname, "..", "..", "..", "dist");

let folder: string;
const rows: Record<string, string | number>[] = [];
let base: { mb: number; bytes: number } | undefined;

beforeAll(() => void (folder = mkdtempSync(join(process.env.FOLDER ?? tmpdir(), "sinkside-pending-"))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each(LOADS)("$name", async (load) => {
  const { written, bytes, dueAtMs } = write(load);
  const starts: Started[] = [];
  const whole: Whole[] = [];
  const floors: number[] = [];
  for (let at = 0; at < STARTS; at += 1) {
    floors.push(floorMs());
    starts.push(await start(written));
    if (load.isForAll) whole.push(await startAll(written, dueAtMs));
  }
  const floor = percentile(floors, 0.5);
  const besideFloor = (name: keyof Whole): string => {
    const ms = percentile(
      whole.map((each) => each[name]),
      0.5,
    );
    return whole.length === 0 ? "" : `${ms.toFixed(0)} (${(ms / floor).toFixed(1)})`;
  };
  for (const end of ENDINGS) rmSync(`${written}${end}`, { force: true });
  const [ready, first, mb] = (["openMs", "firstMs", "mb"] as const).map((name) =>
    percentile(
      starts.map((each) => each[name]),
      0.5,
    ),
  );
  base ??= { mb: mb ?? 0, bytes };
  const each = (amount: number): string => (load.pending === 0 ? "" : (amount / load.pending).toFixed(0));
  rows.push({
    store: load.name,
    "ready ms": ready ?? "",
    "first ms": first ?? "",
    "bot ms": besideFloor("botMs"),
    "ask ms": besideFloor("askMs"),
    "floor ms": floor,
    MB: (mb ?? 0).toFixed(0),
    "B each in memory": each(((mb ?? 0) - base.mb) * 2 ** 20),
    "B each in the file": load.past > 0 ? "" : each(bytes - base.bytes),
    "load average": loadNow(),
  });
  console.log(table(rows));
  expect(starts).toHaveLength(STARTS);
});

/** A store as a process leaves it that is killed; its size with what waits and nothing else written to it. */
function write({ name, pending, past, walMb }: Load): { written: string; bytes: number; dueAtMs: number } {
  const open = join(folder, "open.db");
  const written = join(folder, `${name}.db`);
  const stores = openStores(open);
  const now = Date.now();
  const [due, ...ids] = makeRuns(stores, now);
  addCues(stores, ids, past, now - 48 * HOUR_MS, "p");
  stores.db.exec("update cues set state = 'said', settled_at = due_at");
  addCues(stores, ids, pending, now + HOUR_MS, "w");
  stores.db.pragma("wal_checkpoint(TRUNCATE)");
  const bytes = statSync(open).size;
  // Something to say at the start, of a kind that is never too late to be of use.
  const dueAtMs = now - HOUR_MS;
  const late: Cue = { key: "1.0p0", kind: "pour-out", step: 0, number: 0, dueAtMs };
  stores.atomically(() => stores.cues.reschedule(due ?? 0, [late], 0, dueAtMs));
  stores.db.pragma("wal_checkpoint(TRUNCATE)");
  stores.db.pragma("wal_autocheckpoint = 0");
  const touch = stores.db.prepare("update runs set number = number");
  const walBytes = (): number => statSync(`${open}-wal`).size;
  while (walBytes() < walMb * 2 ** 20) touch.run();
  for (const end of ENDINGS)
    if (existsSync(`${open}${end}`)) copyFileSync(`${open}${end}`, `${written}${end}`);
  stores.close();
  rmSync(open);
  return { written, bytes, dueAtMs };
}

function makeRuns(stores: OpenedStores, now: number): number[] {
  // A class without passphrases would be given some at the start, which takes its while each.
  const secret = stores.db.prepare(
    "insert or ignore into room_secrets (class_id, kind, value, changed_at) values (?, ?, ?, ?)",
  );
  return stores.atomically(() =>
    Array.from({ length: RUNS }, (_, at) => {
      const classId = stores.classes.ensure(`room:${at % CLASSES}`, "Invented class", now).id;
      for (const kind of ["join", "teacher", "aide"]) secret.run(classId, kind, `${kind}${classId}`, now);
      const personId = `room:p${at}`;
      stores.members.see(classId, { id: personId, name: `Person ${at}` }, "student", now);
      const phase = { kind: "running", step: 0, startedAtMs: now, endsAtMs: now + 100 * HOUR_MS } as const;
      const { id: _id, number: _number, ...draft } = aRun({ classId, personId, phase, startedAtMs: now });
      return stores.runs.add(draft).id;
    }),
  );
}

/** `count` cues at random instants of a day from `from` on, by the store's own hand. */
function addCues(
  { atomically, cues }: OpenedStores,
  runs: readonly number[],
  count: number,
  from: number,
  key: string,
) {
  const { next } = createRandom(count);
  const perRun = Math.ceil(count / runs.length);
  let left = count;
  for (const run of runs) {
    const some = Array.from({ length: Math.min(perRun, left) }, (_, number): Cue => {
      const dueAtMs = from + Math.floor(next() * 24 * HOUR_MS);
      return { key: `1.0${key}${number.toString(36)}`, kind: "agitate", step: 0, number, dueAtMs };
    });
    left -= some.length;
    if (some.length > 0) atomically(() => cues.reschedule(run, some, 0, from));
  }
}

interface Started {
  readonly openMs: number;
  readonly firstMs: number;
  readonly mb: number;
}

function copyOf(written: string): string {
  const data = mkdtempSync(join(folder, "start-"));
  for (const end of ENDINGS)
    if (existsSync(`${written}${end}`)) copyFileSync(`${written}${end}`, join(data, `sinkside.db${end}`));
  return data;
}

interface Whole {
  readonly botMs: number;
  readonly askMs: number;
}

/** The whole program on a copy of it, and a question beside it. The log's first line of a call tells when that was said. */
async function startAll(written: string, dueAtMs: number): Promise<Whole> {
  const data = copyOf(written);
  const startedAt = Date.now();
  const bot = startProcess(data, { LOG_LEVEL: "debug", BACKUP_CRON: "off" });
  await bot.ready;
  await wait(REST_MS);
  const [said] = readSaid(bot);
  if (!said) throw new Error("the bot said nothing");
  const asking = [join(DIST, "bot", "ask.js"), "--class", "room:1", "/help"];
  const askMs = msOf(asking, { ...process.env, SINKSIDE_DATA: data });
  await bot.kill();
  rmSync(data, { recursive: true });
  return { botMs: dueAtMs + said.deliveredMs - startedAt, askMs };
}

/** The engine on a copy of what was written. */
async function start(written: string): Promise<Started> {
  const data = copyOf(written);
  const { id: _id, number: _number, ...run } = aRun({});
  const given = JSON.stringify({ dist: DIST, data, run });
  const startedAt = Date.now();
  const child = fork(join(import.meta.dirname, "pending.mjs"), [given]);
  const ended = once(child, "exit");
  const [said] = (await once(child, "message")) as [{ openMs: number; firstAt?: number; mb: number }];
  child.kill("SIGKILL");
  await ended;
  rmSync(data, { recursive: true });
  if (said.firstAt === undefined) throw new Error("nothing was said");
  return { openMs: said.openMs, firstMs: said.firstAt - startedAt, mb: said.mb };
}

const floorMs = (): number => msOf(["-e", ""], process.env);

function msOf(given: readonly string[], env: NodeJS.ProcessEnv): number {
  const startedAt = performance.now();
  execFileSync(process.execPath, given, { env });
  return Math.round(performance.now() - startedAt);
}
