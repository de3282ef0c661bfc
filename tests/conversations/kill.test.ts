import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { expect, test, vi } from "vitest";
import { drawToken, hashToken } from "../../bot/chat/room/secrets.ts";
import { inventDemo } from "../../bot/demo/demo.ts";
import { LATE_FROM_MS } from "../../commands/run/settle.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { aQuickPlan, pourIn } from "../support/developing.ts";
import { startProcess } from "../support/process.ts";
import { countWaiting } from "../support/waiting.ts";
import { chooseSeed, createRandom } from "../simulation/random.ts";
import { freePort, listen, type Seat } from "./kill-client.ts";
import { callsOf, type Film } from "./kill-films.ts";
import { judge } from "./kill-verdict.ts";

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
const WARN_SECONDS = 1;
const POUR_OUT_SECONDS = 2;

/** One person's film, poured in at `now` or a little later, for so long; what is owed for it is worked out from the plan. */
function beginRun(
  stores: OpenedStores,
  classId: number,
  person: string,
  seconds: number,
  now: number,
  afterMs = 0,
): Film {
  const personId = `room:${person}`;
  stores.members.see(classId, { id: personId, name: `Person ${person}` }, "student", now);
  const plan = aQuickPlan(seconds, CYCLE_SECONDS, { pourOutSeconds: POUR_OUT_SECONDS });
  const pouredAt = now + afterMs;
  const run = pourIn(stores, { classId, personId, plan, warnSeconds: WARN_SECONDS }, now, pouredAt);
  const token = drawToken();
  stores.rooms.addSession({ tokenHash: hashToken(token), classId, personId, device: "Device" }, now);
  const calls = callsOf({
    pouredAt,
    seconds,
    cycleSeconds: CYCLE_SECONDS,
    warnSeconds: WARN_SECONDS,
    pourOutSeconds: POUR_OUT_SECONDS,
  });
  return { kind: "film", runId: run.id, personId, token, calls };
}

function beginRuns(data: string): Film[] {
  const stores = openStores(join(data, "sinkside.db"));
  const now = Date.now();
  const demo = inventDemo(stores, "UTC", now);
  if (!demo) throw new Error("no demo class");
  const films = Array.from({ length: RUNS }, (_, index) =>
    beginRun(stores, demo.id, `p${index}`, DEVELOP_SECONDS, now, index * 130),
  );
  stores.close();
  return films;
}

/**
 * While no process is there to call it, a film goes through its developer: however fast or slow the next one starts, it
 * finds the end of that step late, and every call before it missed.
 */
async function stayAway(data: string): Promise<Film> {
  const stores = openStores(join(data, "sinkside.db"));
  const classId = stores.classes.list()[0]?.id ?? 0;
  const now = Date.now();
  const film = beginRun(stores, classId, `away${now}`, SHORT_SECONDS, now);
  stores.close();
  await wait(now + SHORT_SECONDS * 1000 + LATE_FROM_MS + 50 - Date.now());
  return film;
}

const seatOf = ({ personId, token, calls }: Film): Seat => ({
  personId,
  token,
  endsAt: () => calls.at(-1)?.dueAt ?? 0,
});

test(
  `cues go on over ${KILLS} kills: none lost, none said twice, none early, every late one says so`,
  { timeout: 900_000 },
  async () => {
    const random = createRandom(chooseSeed("KILL_SEED"));
    const data = mkdtempSync(join(tmpdir(), "sinkside-kill-"));
    const port = await freePort();
    const films = beginRuns(data);
    // Each person's own page, outside: its record has the last word.
    const pages = [listen(port, films.map(seatOf))];

    const away: Film[] = [];
    for (let kill = 0; kill < KILLS; kill += 1) {
      const bot = startProcess(data, { ROOM_PORT: String(port) });
      await bot.ready;
      await wait(random.next() * 700);
      await bot.kill("SIGKILL");
      if (!ABSENT_AFTER.includes(kill)) continue;
      const film = await stayAway(data);
      away.push(film);
      pages.push(listen(port, [seatOf(film)]));
    }
    const last = startProcess(data, { ROOM_PORT: String(port) });
    await last.ready;
    await vi.waitUntil(() => pages.every((each) => each.haveAll()) && isOver(data), {
      timeout: 300_000,
      interval: 100,
    });
    expect(await last.kill("SIGTERM")).toBe(0);
    for (const each of pages) each.stop();

    const outside = new Map(pages.flatMap(({ heard }) => [...heard]));
    const all = [...films, ...away];
    // Nothing lost, doubled or early; what was missed is counted by the next one heard, and what is late says so.
    const { heard, missed, calls } = judge(data, all, outside);
    expect(heard + missed).toBe(calls);
    expect(outside.size).toBe(RUNS + ABSENT_AFTER.length);
    // Otherwise the test would not have tried what it is for.
    expect(away).toHaveLength(ABSENT_AFTER.length);
    for (const { personId } of away)
      expect(outside.get(personId)?.[0]?.text).toMatch(
        /s late\*\*: this was for .* 3 calls before it were missed\./s,
      );
  },
);

function isOver(data: string): boolean {
  const stores = openStores(join(data, "sinkside.db"));
  try {
    const { cues, messages } = countWaiting(stores.db);
    return cues + messages === 0;
  } finally {
    stores.close();
  }
}
