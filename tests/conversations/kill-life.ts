import { spawn } from "node:child_process";
import { once } from "node:events";
import { copyFileSync, existsSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import Database from "better-sqlite3";
import type { Random } from "../simulation/random.ts";

/* One life of the built process, from its spawn to a kill -9 from outside or at a place inside its work. */

/** Another build of the program may be tried, for one with a planted fault. */
const MAIN = process.env["KILL_MAIN"] ?? join(import.meta.dirname, "..", "..", "dist", "bot", "main.js");
const HOOK = join(import.meta.dirname, "..", "support", "kill-hook.mjs");
/** On an idle machine the process is ready so soon after its spawn; all these are longer where it takes longer. */
const USUAL_START_MS = 450;
/** A life that has not come to its place by then is ended from outside. */
const PATIENCE_MS = 900;
/** The log is moved into the store in a quiet moment, by a thread that has to start first. */
const QUIET_PATIENCE_MS = 2400;
const LONGEST_MS = 700;

/**
 * The places of the hook, with how often half a second of life passes each, of itself and more for each film: the n-th
 * passing is drawn up to that; and with how often each is drawn beside the others.
 */
const PLACES = {
  statement: { least: 45, perFilm: 0.5, weight: 2 },
  "before-begin": { least: 6, perFilm: 0.02, weight: 2 },
  "after-begin": { least: 6, perFilm: 0.02, weight: 2 },
  "before-commit": { least: 6, perFilm: 0.02, weight: 2 },
  "after-commit": { least: 6, perFilm: 0.02, weight: 2 },
  inside: { least: 10, perFilm: 2, weight: 4 },
  file: { least: 10, perFilm: 0, weight: 1 },
  lock: { least: 4, perFilm: 0, weight: 1 },
  "before-checkpoint": { least: 1, perFilm: 0, weight: 1 },
  "after-checkpoint": { least: 1, perFilm: 0, weight: 1 },
} as const;
export type Place = keyof typeof PLACES;
/** Until the schema of a store is made, a first life puts some so many statements to it. */
const FIRST_STATEMENTS = 75;

export interface Death {
  /** Absent: killed from outside `afterMs` after the spawn. */
  readonly point?: { readonly place: Place; readonly nth: number };
  readonly afterMs: number;
}

/** Where a process lives. */
export interface Home {
  /** Folder of its store. */
  readonly data: string;
  readonly port: number;
}

export interface Life {
  readonly death: Death;
  /** The place at which it ended itself; "outside" else. */
  readonly endedAt: Place | "outside";
}

/** Half of the deaths at any moment, the other half at a place; small numbers are as likely as large ones. */
export function drawDeath(random: Random, films: number, slowness: number): Death {
  if (random.chance(0.5)) return { afterMs: random.next() * LONGEST_MS * slowness };
  const names = Object.keys(PLACES) as Place[];
  const place = random.pick(names.flatMap((name) => Array.from({ length: PLACES[name].weight }, () => name)));
  const { least, perFilm } = PLACES[place];
  const nth = Math.floor(Math.exp(random.next() * Math.log(least + perFilm * films + 1)));
  const patienceMs = place.endsWith("checkpoint") ? QUIET_PATIENCE_MS : PATIENCE_MS;
  return { point: { place, nth }, afterMs: patienceMs * slowness };
}

/** In the midst of making the schema. */
export function drawFirstDeath(random: Random, slowness: number): Death {
  return {
    point: { place: "statement", nth: random.whole(1, FIRST_STATEMENTS) },
    afterMs: PATIENCE_MS * slowness,
  };
}

/** How many times longer than usual the process takes to be ready now: 1 or more. */
export async function measureSlowness(home: Home): Promise<number> {
  const { child, ready } = begin(home, undefined);
  const begun = performance.now();
  await ready;
  const tookMs = performance.now() - begun;
  child.kill("SIGKILL");
  await once(child, "close");
  return Math.max(1, tookMs / USUAL_START_MS);
}

/**
 * Starts the process and waits for its death.
 * @throws where it ends otherwise, or complains of a fault before.
 */
export async function live(home: Home, death: Death): Promise<Life> {
  const { child, complaints } = begin(home, death.point);
  let isFromOutside = false;
  const kill = setTimeout(() => {
    isFromOutside = true;
    child.kill("SIGKILL");
  }, death.afterMs);
  const [code, signal] = (await once(child, "close")) as [number | null, NodeJS.Signals | null];
  clearTimeout(kill);
  if (signal !== "SIGKILL") throw new Error(`ended by itself with ${code ?? signal}: ${complaints()}`);
  if (isComplaint(complaints())) throw new Error(`complains: ${complaints()}`);
  return { death, endedAt: isFromOutside || !death.point ? "outside" : death.point.place };
}

/** The last life goes on until `isDone`, asked ten times a second, then is told to stop. */
export async function liveOn(home: Home, isDone: () => boolean, atMostMs: number): Promise<void> {
  const { child, complaints, ready } = begin(home, undefined);
  const closed = once(child, "close") as Promise<[number | null, NodeJS.Signals | null]>;
  const until = performance.now() + atMostMs;
  while (!isDone() && performance.now() < until && child.exitCode === null) {
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  // Told to stop before it listens, it would just die.
  await Promise.race([ready, closed]);
  child.kill("SIGTERM");
  const [code, signal] = await closed;
  if (code !== 0) throw new Error(`the last life ended with ${code ?? signal}: ${complaints()}`);
  if (isComplaint(complaints())) throw new Error(`complains: ${complaints()}`);
}

function begin({ data, port }: Home, point: Death["point"]) {
  const { DISCORD_TOKEN: _token, ...inherited } = process.env;
  const settings = { SINKSIDE_DATA: data, ROOM_PORT: String(port), LOG_LEVEL: "warn", BACKUP_CRON: "off" };
  const hooked = point ? { KILL_POINT: `${point.place}:${point.nth}` } : {};
  const child = spawn(process.execPath, [...(point ? ["--import", HOOK] : []), MAIN], {
    env: { ...inherited, ...settings, ...hooked },
    stdio: ["ignore", "pipe", "pipe"],
  });
  // Its first word on this stream is that it is ready.
  const ready = once(child.stdout, "data");
  ready.catch(() => {});
  child.stdout.resume();
  let output = "";
  child.stderr.on("data", (chunk: Buffer) => (output += chunk.toString()));
  return { child, ready, complaints: () => output };
}

/** An error or worse, in the numbers of the log. */
function isComplaint(output: string): boolean {
  return /"level":(50|60)/.test(output);
}

export interface Look {
  readonly said: number;
  readonly settled: number;
}

/**
 * What a killed process has left, looked at in a copy: opening the store itself would tidy away the log that the next life
 * has to find its way through.
 * @throws where the engine finds the store damaged.
 */
export function lookAt(data: string): Look {
  const copy = join(data, "copy");
  rmSync(copy, { recursive: true, force: true });
  mkdirSync(copy);
  for (const name of ["sinkside.db", "sinkside.db-wal", "sinkside.db-journal"]) {
    if (existsSync(join(data, name))) copyFileSync(join(data, name), join(copy, name));
  }
  const db = new Database(join(copy, "sinkside.db"));
  try {
    const found = db.pragma("integrity_check", { simple: true });
    if (found !== "ok") throw new Error(`the store is damaged: ${String(found)}`);
    const broken = db.pragma("foreign_key_check") as unknown[];
    if (broken.length > 0) throw new Error(`rows that belong to nothing: ${JSON.stringify(broken[0])}`);
    const isMade = db.prepare("select 1 from sqlite_schema where name = 'outbox'").get() !== undefined;
    if (!isMade) return { said: 0, settled: 0 };
    return db
      .prepare(
        `select (select count(*) from messages where key is not null) as said,
           (select count(*) from cues where state in ('said', 'merged')) as settled`,
      )
      .get() as Look;
  } finally {
    db.close();
  }
}
