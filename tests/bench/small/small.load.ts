import { fork } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { expect, test } from "vitest";
import { drawToken, hashToken } from "../../../bot/chat/room/secrets.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createRandom } from "../../simulation/random.ts";
import { createGateway, type Gateway } from "../../support/gateway/gateway.ts";
import { startProcess } from "../../support/process.ts";
import { openSocket, type OpenPage } from "../../support/room-server.ts";
import {
  loadNow,
  percentile,
  readProcess,
  readSaid,
  spread,
  table,
  watchDisk,
} from "../whole-bot-figures.ts";
import { seedClasses } from "../whole-bot-seed.ts";
import { hold } from "./held.ts";

/*
 * A class on a small computer: the whole bot on a quarter of one core and 512 MB, with thirty films in the room, a page open
 * for each and the teacher's wall, and thirty films on the loopback platform, everybody called once a minute. Meanwhile
 * people type, complete and open the page anew. Beside it, held as tightly in a group of its own, a process that only waits.
 */

const RUNS = 30;
const SHARE = Number(process.env.SHARE ?? 0.25);
const MEMORY_MB = 512;
const SECONDS = Number(process.env.SECONDS ?? 120);
const WARM_SECONDS = Number(process.env.WARM ?? 75);
const TRIP = { medianMs: 120, p99Ms: 430, seed: 1 };
const LINES = ["/help", "/run status", "/mix dilute dilution:1+9 volume:500", "/caution", "/batch status"];

test(`${RUNS} runs in the room and ${RUNS} on Discord, on ${SHARE} of a core`, async () => {
  const held = hold("sinkside-bot", SHARE, MEMORY_MB);
  const heldFloor = hold("sinkside-floor", SHARE, MEMORY_MB);
  if (!held || !heldFloor) return console.log("no control group may be written here: nothing is measured");
  const gateway = await createGateway({ trip: TRIP });
  const data = mkdtempSync(join(tmpdir(), "sinkside-small-"));
  const stores = openStores(join(data, "sinkside.db"));
  const cookies = seed(stores, gateway);
  stores.close();

  const floor = fork(join(import.meta.dirname, "timer.mjs"));
  heldFloor.take(floor.pid ?? 0);
  const startedAt = Date.now();
  const bot = startProcess(data, {
    DISCORD_TOKEN: gateway.token,
    DISCORD_API_URL: gateway.api,
    LOG_LEVEL: "debug",
  });
  held.take(bot.child.pid ?? 0);
  const url = await bot.ready;
  console.log(`open after ${Date.now() - startedAt} ms`);

  const heardLate: number[] = [];
  const pages: OpenPage[] = [];
  for (const cookie of cookies) pages.push(await openPage(url, cookie, heardLate));
  pages[0]?.send({ type: "watch", on: true });
  await wait(WARM_SECONDS * 1000);
  heardLate.length = 0;
  await ask(floor);
  const disk = watchDisk(data);
  const from = { at: Date.now(), ...readProcess(bot.child.pid ?? 0) };
  const waits = await useRoom(url, cookies, pages);
  const to = { at: Date.now(), ...readProcess(bot.child.pid ?? 0) };
  const said = readSaid(bot).filter(({ time }) => time >= from.at && time < to.at);
  const floorLate = await ask(floor);
  console.log(
    table([
      {
        "calls said": said.length,
        "decided late ms p50/p99/max": spread(said.map(({ decidedMs }) => decidedMs)),
        "heard by pages": heardLate.length,
        "late ms": spread(heardLate),
        "floor: a timer, late ms": spread(floorLate),
        "p99 over the floor's": `${(percentile(heardLate, 0.99) - percentile(floorLate, 0.99)).toFixed(0)} ms`,
        "floor: a disk flush ms": spread(disk.stop()),
        "a line answered after ms": spread(waits.lines),
        "an opening's requests ms": spread(waits.openings),
        "CPU of the core": `${(((to.cpuSeconds - from.cpuSeconds) / (to.at - from.at)) * 100_000).toFixed(1)} %`,
        "wanted more": held.told().cut,
        "MB now/most": `${to.nowMb} / ${to.mostMb}`,
        "with its file cache": held.told().mostMb,
        "load average": loadNow(),
      },
    ]),
  );
  pages.forEach(({ socket }) => socket.close());
  expect(await bot.kill("SIGTERM")).toBe(0);
  floor.kill();
  await once(floor, "exit");
  await Promise.all([held.release(), heldFloor.release()]);
  await gateway.stop();
  rmSync(data, { recursive: true, force: true });
  expect(gateway.violations).toEqual([]);
  expect(heardLate.length).toBeGreaterThan(RUNS * (SECONDS / 60) * 0.8);
});

/** The classes as they stand; a cookie for the teacher first, then for each student of the room. */
function seed(stores: OpenedStores, { world }: Gateway): string[] {
  const { guild, channel } = world.addGuild("Invented class");
  const discord = Array.from({ length: RUNS }, (_, at) => {
    const user = world.addUser({ name: `Person ${at}`, isClosed: false });
    const direct = world.addChannel({ name: "direct", userId: user.id }).id;
    return { id: `discord:${user.id}`, direct };
  });
  const room = Array.from({ length: RUNS }, (_, at) => ({ id: `room:p${at}`, direct: null }));
  const now = Date.now();
  const { next } = createRandom(1);
  seedClasses(
    stores,
    [
      { key: "room:small", channelRef: null, people: room },
      { key: `discord:${guild.id}`, channelRef: channel.id, people: discord },
    ],
    () => now - 60_000 * next(),
    now,
  );
  const classId = stores.classes.find("room:small")?.id ?? 0;
  stores.members.see(classId, { id: "room:teacher", name: "Iris" }, "teacher", now);
  return ["room:teacher", ...room.map(({ id }) => id)].map((personId) => {
    const token = drawToken();
    stores.rooms.addSession({ tokenHash: hashToken(token), classId, personId, device: "bench" }, now);
    return `sinkside=${token}`;
  });
}

/** Notes how late each call is that comes while the page is open. */
async function openPage(url: string, cookie: string, late: number[]): Promise<OpenPage> {
  const page = await openSocket(url, cookie);
  page.socket.on("message", (data) => {
    const message = JSON.parse(String(data)) as (typeof page.got)[number];
    if (message.type !== "events" || message.isReset) return;
    for (const { kind, dueAt } of message.events)
      if (kind === "cue" && dueAt !== null) late.push(Date.now() - dueAt);
  });
  page.send({ type: "hello", after: null });
  await page.hears("events");
  return page;
}

/** A class at work: each second a line, a word completed, a ping; every five seconds somebody opens the page. */
async function useRoom(
  url: string,
  cookies: readonly string[],
  pages: readonly OpenPage[],
): Promise<{ lines: number[]; openings: number[] }> {
  const lines: number[] = [];
  const openings: number[] = [];
  const under: Promise<unknown>[] = [];
  const timed = async (into: number[], work: () => Promise<unknown>): Promise<void> => {
    const from = Date.now();
    await work();
    into.push(Date.now() - from);
  };
  for (let second = 0; second < SECONDS; second += 1) {
    const page = pages[second % pages.length];
    if (page) under.push(timed(lines, () => page.says(LINES[second % LINES.length] ?? "/help")));
    pages[0]?.send({ type: "complete", seq: second, name: "plan", option: "film", typed: "l", others: {} });
    for (const each of pages) if (second % 5 === 0) each.send({ type: "ping", sentAt: Date.now() });
    if (second % 5 === 0)
      under.push(timed(openings, () => load(url, cookies[second % cookies.length] ?? "")));
    await wait(1000);
  }
  await Promise.all(under);
  return { lines, openings };
}

/** What a browser asks for that has nothing of the page yet. */
async function load(url: string, cookie: string): Promise<void> {
  const headers = { cookie };
  const document = await (await fetch(url, { headers })).text();
  const paths = [...document.matchAll(/(?:src|href)="(\/assets\/[^"]+\.(?:js|css))"/g)].map(
    ([, path]) => path,
  );
  await Promise.all(
    [...paths, "/api/me", "/api/commands?language=de"].map(async (path) =>
      (await fetch(`${url}${path}`, { headers })).arrayBuffer(),
    ),
  );
}

/** The timer's lateness since it was asked last, ms. */
async function ask(floor: ReturnType<typeof fork>): Promise<number[]> {
  floor.send("told");
  const [late] = (await once(floor, "message")) as [number[]];
  return late;
}
