import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { expect, test } from "vitest";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { openSchool } from "../support/school-year.ts";

/* A store of some weeks is cleared by one process after another, each killed without warning while it does so and writes. */

const KILLS = 20;
const DAY_MS = 86_400_000;
const CLEAR = join(import.meta.dirname, "..", "support", "clear.mjs");

const count = ({ db }: OpenedStores, what: string): number =>
  (db.prepare(`select count(*) as count from ${what}`).get() as { count: number }).count;

/** Everything that must still be there in the end, to the letter. */
function whatStays({ db }: OpenedStores, before: number): unknown {
  return [
    db.prepare("select * from messages where at >= ? and key not like 'new.%' order by id").all(before),
    db.prepare("select * from plans where made_at >= ? order by id").all(before),
    db.prepare("select * from runs where started_at >= ? order by id").all(before),
    db.prepare("select * from cues where settled_at >= ? or state = 'pending' order by id").all(before),
    db.prepare("select * from outbox where sent_at >= ? order by id").all(before),
    db.prepare("select * from calls where at >= ? order by call_id").all(before),
    // A roll forgets only which run it is of.
    db.prepare("select *, null as run_id from rolls order by id").all(),
    db.prepare("select *, null as run_id from ledger order by id").all(),
    db.prepare("select * from says order by id desc limit 1").all(),
  ];
}

/**
 * Clears until it is killed once it has told of so many portions, or done; the new messages it told of. It goes on while
 * the kill is on its way, which so hits it anywhere.
 */
async function clearUntil(path: string, now: number, before: number, portions: number) {
  const child = spawn(process.execPath, [CLEAR, path, String(now), String(before)], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  const told: string[] = [];
  const lines = createInterface({ input: child.stdout });
  const ended = once(child, "exit");
  lines.on("line", (line) => {
    told.push(line);
    if (told.length === portions) child.kill("SIGKILL");
  });
  await Promise.all([ended, once(lines, "close")]);
  return { told, isKilled: child.signalCode === "SIGKILL" };
}

test(
  `${KILLS} kills while old things are cleared: what stays is there to the letter, the rest is gone`,
  { timeout: 600_000 },
  async () => {
    const path = join(mkdtempSync(join(tmpdir(), "sinkside-clear-")), "sinkside.db");
    const never = { messagesDays: 3650, runsDays: 3650 };
    const school = openSchool(path, { groups: 1, filmsAPeriod: 8, ages: never });
    for (let week = 0; week < 4; week += 1) await school.week();
    const { now } = school.stores.db.prepare("select max(at) as now from messages").get() as { now: number };
    const before = now - 10 * DAY_MS;
    const stays = whatStays(school.stores, before);
    expect(count(school.stores, `messages where at < ${before}`)).toBeGreaterThan(500);
    school.stores.close();

    const told: string[] = [];
    let killed = 0;
    let isThrough = false;
    for (let life = 0; life < KILLS || !isThrough; life += 1) {
      const ended = await clearUntil(path, now, before, life < KILLS ? 1 + ((life * 7) % 10) : Infinity);
      told.push(...ended.told);
      if (ended.isKilled) killed += 1;
      else isThrough = true;
    }

    const stores = openStores(path);
    expect(killed, "kills that hit a process at work").toBe(KILLS);
    expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
    expect(stores.db.pragma("foreign_key_check")).toEqual([]);
    expect(whatStays(stores, before)).toEqual(stays);
    for (const gone of [
      "messages where at",
      "plans where made_at",
      "runs where started_at",
      "calls where at",
    ])
      expect(count(stores, `${gone} < ${before}`), gone).toBe(0);
    for (const key of told) expect(count(stores, `messages where key = '${key}'`), key).toBe(1);
    stores.close();
  },
);
