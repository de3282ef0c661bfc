import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { expect, test } from "vitest";
import { inventDemo } from "../../bot/demo/demo.ts";
import { LATE_FROM_MS } from "../../commands/run/settle.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { aQuickPlan, pourIn } from "../support/developing.ts";
import { startProcess } from "../support/process.ts";
import { countWaiting } from "../support/waiting.ts";
import { chooseSeed, createRandom } from "../simulation/random.ts";

/*
 * The real process on a real file, killed without warning in the middle of a step, over and over. Real time: the plan is
 * short, so that it fits a test.
 */

const KILLS = 20;
const RUNS = 6;
const DEVELOP_SECONDS = 40;
const CYCLE_SECONDS = 4;
/** Before these lives it is away for so long that the whole of a short developer falls into its absence. */
const ABSENT_AFTER = [5, 12];
const SHORT_SECONDS = 6;
/** A message is worded a moment before it is kept; on a busy machine that moment is longer. */
const SLACK_MS = 1000;

/** One person's film, poured in at `now` or a little later, for so long. */
function beginRun(
  stores: OpenedStores,
  classId: number,
  person: string,
  seconds: number,
  now: number,
  afterMs = 0,
) {
  const personId = `room:${person}`;
  stores.members.see(classId, { id: personId, name: `Person ${person}` }, "student", now);
  const plan = aQuickPlan(seconds, CYCLE_SECONDS, { pourOutSeconds: 2 });
  const run = pourIn(stores, { classId, personId, plan, warnSeconds: 1 }, now, now + afterMs);
  return run.id;
}

function beginRuns(data: string): void {
  const stores = openStores(join(data, "sinkside.db"));
  const now = Date.now();
  const demo = inventDemo(stores, "UTC", now);
  if (!demo) throw new Error("no demo class");
  for (let index = 0; index < RUNS; index += 1) {
    beginRun(stores, demo.id, `p${index}`, DEVELOP_SECONDS, now, index * 130);
  }
  stores.close();
}

/**
 * While no process is there to call it, a film goes through its developer: however fast or slow the next one starts, it
 * finds the end of that step late, and every call before it missed. The run's id.
 */
async function stayAway(data: string): Promise<number> {
  const stores = openStores(join(data, "sinkside.db"));
  const classId = stores.classes.list()[0]?.id ?? 0;
  const now = Date.now();
  const id = beginRun(stores, classId, `away${now}`, SHORT_SECONDS, now);
  stores.close();
  await wait(now + SHORT_SECONDS * 1000 + LATE_FROM_MS + 50 - Date.now());
  return id;
}

interface OutboxRow {
  readonly key: string;
  readonly state: string;
  readonly useful_until: number | null;
}

interface CueRow {
  readonly run_id: number;
  readonly key: string;
  readonly due_at: number;
  readonly state: string;
}

test(
  `cues go on over ${KILLS} kills: none lost, none said twice, none early, every late one says so`,
  { timeout: 600_000 },
  async () => {
    const random = createRandom(chooseSeed("KILL_SEED"));
    const data = mkdtempSync(join(tmpdir(), "sinkside-kill-"));
    beginRuns(data);

    const away: number[] = [];
    for (let kill = 0; kill < KILLS; kill += 1) {
      const bot = startProcess(data);
      await bot.ready;
      await wait(random.next() * 700);
      await bot.kill("SIGKILL");
      if (ABSENT_AFTER.includes(kill)) away.push(await stayAway(data));
    }
    const last = startProcess(data);
    await last.ready;
    await untilEnded(data);
    expect(await last.kill("SIGTERM")).toBe(0);

    const stores = openStores(join(data, "sinkside.db"));
    expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
    const cues = stores.db
      .prepare("select run_id, key, due_at, state from cues where kind != 'nudge' order by run_id, due_at")
      .all() as CueRow[];
    const outbox = stores.db.prepare("select key, state, useful_until from outbox").all() as OutboxRow[];
    const messages = stores.db
      .prepare("select key, at, body ->> 'text' as text from messages where key like 'd:%'")
      .all() as {
      key: string;
      at: number;
      text: string;
    }[];
    stores.close();

    // Each agitation, the first one, get-ready, pour-out and the end: nothing waits, nothing was dropped.
    const calls = 1 + (DEVELOP_SECONDS / CYCLE_SECONDS - 1) + 1 + 1 + 1;
    expect(cues).toHaveLength(RUNS * calls + away.length * 4);
    expect(cues.filter(({ state }) => state !== "said" && state !== "merged")).toEqual([]);
    const byKey = new Map(messages.map((message) => [message.key, message]));
    expect(byKey.size).toBe(messages.length);
    const said = cues.filter(({ state }) => state === "said");
    for (const cue of said) {
      const key = `${cue.run_id.toString(36)}.${cue.key}`;
      const message = byKey.get(`d:${key}`);
      if (!message) {
        // Decided, then killed before it was said: only a call the next one had overtaken may be left unsaid, on record.
        const row = outbox.find((each) => each.key === key);
        expect(row?.state, `cue ${key} was lost`).toBe("stale");
        expect(
          messages.some(
            ({ key: other, at }) =>
              other.startsWith(`d:${cue.run_id.toString(36)}.`) && at >= (row?.useful_until ?? 0),
          ),
        ).toBe(true);
        continue;
      }
      const lateMs = message.at - cue.due_at;
      expect(lateMs, "early").toBeGreaterThanOrEqual(0);
      if (lateMs >= LATE_FROM_MS + SLACK_MS) expect(message.text).toMatch(/late.*this was for/s);
      if (lateMs < LATE_FROM_MS) expect(message.text).not.toContain("late**");
    }
    const unsaid =
      said.length - said.filter((cue) => byKey.has(`d:${cue.run_id.toString(36)}.${cue.key}`)).length;
    expect(unsaid).toBeLessThanOrEqual(2 * RUNS);
    const ends = cues.filter(({ key }) => key.includes("n"));
    expect(ends.map(({ state }) => state)).toEqual(Array.from({ length: RUNS + away.length }, () => "said"));
    // Otherwise the test would not have tried what it is for.
    expect(away).toHaveLength(ABSENT_AFTER.length);
    for (const id of away) {
      const states = cues.filter(({ run_id }) => run_id === id).map(({ key, state }) => `${key} ${state}`);
      expect(states).toEqual(["1.0f0 merged", "1.0g0 merged", "1.0p0 merged", "1.0n0 said"]);
      const end = byKey.get(`d:${id.toString(36)}.1.0n0`);
      expect(end?.text).toMatch(/s late\*\*: this was for .* 3 calls before it were missed\./s);
    }
  },
);

async function untilEnded(data: string): Promise<void> {
  const stores = openStores(join(data, "sinkside.db"));
  try {
    for (let tries = 0; tries < 400; tries += 1) {
      const { cues, messages } = countWaiting(stores.db);
      if (cues + messages === 0) return;
      await wait(100);
    }
    throw new Error("the cues did not come to an end");
  } finally {
    stores.close();
  }
}
