import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { expect, test } from "vitest";
import { openStores } from "../../store/index.ts";
import { createRandom } from "../simulation/random.ts";
import { createGateway, type Gateway } from "../support/gateway/gateway.ts";
import { startProcess } from "../support/process.ts";
import {
  loadNow,
  mostInOneSecond,
  percentile,
  readProcess,
  readSaid,
  spread,
  table,
  watchDisk,
} from "./whole-bot-figures.ts";
import { seedClasses, type SeedClass } from "./whole-bot-seed.ts";

/*
 * The real process against the loopback platform with the published limits, each request and each answer taking its time
 * on the way. Classes of thirty start together, each at a random second; everybody is called once a minute.
 */

interface Load {
  readonly name: string;
  readonly runs: number;
  readonly isDirect: boolean;
}

const LOADS: readonly Load[] = [
  { name: "alone to each person", runs: 30, isDirect: true },
  { name: "alone to each person", runs: 900, isDirect: true },
  { name: "alone to each person", runs: 1800, isDirect: true },
  { name: "alone to each person", runs: 2400, isDirect: true },
  { name: "alone to each person", runs: 2550, isDirect: true },
  { name: "alone to each person", runs: 2700, isDirect: true },
  { name: "in class channels", runs: 4000, isDirect: false },
];
/** `LOADS=2700,4000` measures only those. */
const chosen = process.env.LOADS?.split(",").map(Number);
const SEED = Number(process.env.SEED ?? 1);
const SECONDS = Number(process.env.SECONDS ?? 120);
/** What is due as the process starts can't leave ahead of its moment; it is over once everybody has had the next call. */
const WARM_SECONDS = 75;
const A_CLASS = 30;
/** What people outside have reported of the platform's round trips, as the model this is held against assumes them. */
const TRIP = { medianMs: 120, p99Ms: 430, seed: SEED };

const rows: Record<string, string | number>[] = [];

test.each(LOADS.filter(({ runs }) => chosen?.includes(runs) ?? true))(
  "$runs runs, called $name",
  async (load) => {
    const gateway = await createGateway({ trip: TRIP });
    const data = mkdtempSync(join(tmpdir(), "sinkside-discord-"));
    const path = join(data, "sinkside.db");
    const stores = openStores(path);
    const { next } = createRandom(SEED);
    const over = Date.now() + load.runs * 6 + 2000;
    const classes = makeClasses(gateway, load);
    const starts = classes.map(() => over - 60_000 * next());
    seedClasses(stores, classes, (at) => starts[at] ?? over, over);
    stores.close();
    await wait(Math.max(0, over - Date.now()));

    const bot = startProcess(data, {
      DISCORD_TOKEN: gateway.token,
      DISCORD_API_URL: gateway.api,
      LOG_LEVEL: "debug",
    });
    await bot.ready;
    await wait(WARM_SECONDS * 1000);
    const disk = watchDisk(data);
    const from = { at: Date.now(), ...readProcess(bot.child.pid ?? 0) };
    await wait(SECONDS * 1000);
    const to = { at: Date.now(), ...readProcess(bot.child.pid ?? 0) };
    const flushes = disk.stop();
    const said = readSaid(bot).filter(({ time }) => time >= from.at && time < to.at);
    expect(await bot.kill("SIGTERM")).toBe(0);
    const { early, owed } = readStore(path, gateway, from.at, to.at);
    const asked = gateway.requests.filter(({ at }) => at >= from.at && at < to.at);
    const late = said.map(({ deliveredMs }) => Math.max(0, deliveredMs));
    rows.push({
      runs: Math.ceil(load.runs / A_CLASS) * A_CLASS,
      called: load.name,
      "requests/s": (asked.length / SECONDS).toFixed(1),
      "most in 1 s": mostInOneSecond(asked.map(({ at }) => at)),
      "calls/s": (said.length / SECONDS).toFixed(1),
      "delivered late ms p50/p99/max": spread(late),
      "ahead ms p50/p99/max": spread(early.map((ms) => Math.max(0, ms))),
      "429s": gateway.requests.filter(({ status }) => status === 429).length,
      "never said": owed,
      "CPU %": (((to.cpuSeconds - from.cpuSeconds) / (to.at - from.at)) * 100_000).toFixed(0),
      "MB now/most": `${to.nowMb} / ${to.mostMb}`,
      "disk flush ms p50/p99": [0.5, 0.99].map((share) => percentile(flushes, share).toFixed(1)).join(" / "),
      "load average": loadNow(),
    });
    console.log(table(rows));
    for (const { method, path: asked429, at } of gateway.requests.filter(({ status }) => status === 429))
      console.log(`refused as too many, ${at - from.at} ms into the measure: ${method} ${asked429}`);
    await gateway.stop();
    expect(gateway.violations).toEqual([]);
    expect(said.length).toBeGreaterThan(load.runs * (SECONDS / 60) * 0.9);
  },
);

/** Servers, people and channels on the platform, and what the bot's store has to know of them. */
function makeClasses({ world }: Gateway, { runs, isDirect }: Load): SeedClass[] {
  return Array.from({ length: Math.ceil(runs / A_CLASS) }, (_, at) => {
    const { guild, channel } = world.addGuild(`Invented class ${at}`);
    const people = Array.from({ length: A_CLASS }, (__, position) => {
      const user = world.addUser({ name: `Person ${at}.${position}`, isClosed: !isDirect });
      const direct = isDirect ? world.addChannel({ name: "direct", userId: user.id }).id : null;
      return { id: `discord:${user.id}`, direct };
    });
    return { key: `discord:${guild.id}`, channelRef: channel.id, people };
  });
}

/** How far ahead of its moment each call was at the platform, and how many calls of that time nobody got. */
function readStore(path: string, { ledger }: Gateway, from: number, to: number) {
  const stores = openStores(path);
  const cues = stores.db
    .prepare("select key, bundle, due_at, state from outbox where due_at >= ? and due_at < ?")
    .all(from, to) as { key: string; bundle: string | null; due_at: number; state: string }[];
  stores.close();
  const arrived = new Map(ledger.messages.map(({ nonce, at }) => [nonce, at]));
  return {
    early: cues.flatMap(({ key, bundle, due_at: dueAt }) => {
      const at = arrived.get(bundle ?? key);
      return at === undefined ? [] : [dueAt - at];
    }),
    owed: cues.filter(({ key, bundle, state }) => state !== "sent" || !arrived.has(bundle ?? key)).length,
  };
}
