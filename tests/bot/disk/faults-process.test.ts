import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { drawToken, hashToken } from "../../../bot/chat/room/secrets.ts";
import { openStores } from "../../../store/index.ts";
import { beginRun, prepare, refuses, STORE } from "../../support/faults.ts";
import { openSocket } from "../../support/room-server.ts";
import { startProcess, type BotProcess } from "../../support/process.ts";
import { needing } from "../../support/needs.ts";
import { makeDisk, type SmallDisk } from "../../support/tmpfs.ts";

/* The built process on disks that fill, lock and rot: a clear sentence and the right exit, or a pause; nothing lost. */

const HELD = 75;
const bots: BotProcess[] = [];

function start(data: string, env: Readonly<Record<string, string>> = {}): BotProcess {
  const bot = startProcess(data, { BACKUP_CRON: "off", ...env });
  bots.push(bot);
  return bot;
}

afterEach(async () => {
  for (const bot of bots.splice(0)) if (bot.child.exitCode === null) await bot.kill();
});

describe("on a healthy disk", () => {
  let data: string;
  let path: string;
  beforeEach(() => {
    data = mkdtempSync(join(tmpdir(), "sinkside-faults-"));
    path = join(data, "sinkside.db");
  });
  afterEach(() => rmSync(data, { recursive: true, force: true }));

  test("a second process names the first and ends; the first goes on", async () => {
    const first = start(data);
    const address = await first.ready;
    await refuses(start(data), HELD, new RegExp(`held by process ${first.child.pid}.*SINKSIDE_DATA`, "s"));
    expect((await fetch(address)).status).toBe(200);
    expect(await first.kill("SIGTERM")).toBe(0);
  });

  test.each<[string, () => void, RegExp]>([
    ["emptied", () => truncateSync(path), /is empty, though it was in use until .*npm run restore/s],
    ["deleted", () => rmSync(path), /is missing, though it was in use until .*npm run restore/s],
    [
      "zeroed at its head",
      () => writeFileSync(path, readFileSync(path).fill(0, 0, 4096)),
      /damaged.*restore the newest backup/s,
    ],
    [
      "damaged inside",
      () => writeFileSync(path, readFileSync(path).fill(0x55, 8192, 65_536)),
      /damaged.*(npm run restore|newest backup)/s,
    ],
    [
      "written by a newer program",
      () => {
        const stores = openStores(path);
        stores.db.pragma("user_version = 9999");
        stores.close();
      },
      /written by a newer Sinkside/,
    ],
  ])("a store that was %s is refused, and left as it is", async (_, spoil, sentence) => {
    prepare(data);
    spoil();
    await refuses(start(data), STORE, sentence);
  });
});

describe("on a small disk of its own", needing("root's right to mount"), () => {
  let disk: SmallDisk;
  beforeEach(() => void (disk = makeDisk(40)));
  afterEach(() => disk.remove());

  test("that may only be read: it says so and ends", async () => {
    prepare(disk.path);
    disk.lock();
    await refuses(start(disk.path), STORE, /can't be opened for writing.*the disk/s);
  });

  test("that is quite full: it starts on its reserve; without one it says so and ends, and loses nothing", async () => {
    prepare(disk.path);
    const first = start(disk.path);
    await first.ready;
    expect(await first.kill("SIGTERM")).toBe(0);
    disk.fill();
    const second = start(disk.path);
    await second.ready;
    expect(second.output()).toContain("the reserve beside the store was let go");
    await second.kill("SIGTERM");
    disk.fill();
    await refuses(start(disk.path), STORE, /full or failing. Free some space/);
    disk.free();
    const last = start(disk.path);
    await last.ready;
    await last.kill("SIGTERM");
    const stores = openStores(join(disk.path, "sinkside.db"));
    expect(stores.classes.list().map(({ name }) => name)).toEqual(["Evening class"]);
    stores.close();
  });

  test(
    "that fills while film is in the tank: nothing is said that can't be recorded; then it is, and says what was missed",
    { timeout: 600_000 },
    async () => {
      const token = drawToken();
      let dueAts: number[] = [];
      prepare(disk.path, (stores, classId) => {
        beginRun(stores, classId);
        const session = { tokenHash: hashToken(token), classId, personId: "room:mina", device: "Device" };
        stores.rooms.addSession(session, Date.now());
        dueAts = stores.cues.pending(1).map(({ dueAtMs }) => dueAtMs);
      });
      const bot = start(disk.path);
      const url = await bot.ready;
      const page = await openSocket(url, `sinkside=${token}`);
      page.send({ type: "hello", after: null });
      const said = (): { key: string; text: string }[] => {
        const stores = openStores(join(disk.path, "sinkside.db"));
        const rows = stores.db
          .prepare("select key, body ->> 'text' as text from messages where key like 'd:%' order by id")
          .all() as { key: string; text: string }[];
        stores.close();
        return rows;
      };
      await until(() => said().length >= 2);
      // The second time also what the reserve gave back.
      for (let round = 0; round < 3; round += 1) {
        emptyLog(disk.path);
        disk.fill();
        await wait(1000);
      }
      const before = Number(/"time":(\d+)[^\n]*could not be settled/.exec(bot.output())?.[1]);
      expect(before).toBeGreaterThan(0);
      await wait(3000);
      expect(bot.child.exitCode, bot.output().slice(-3000)).toBeNull();
      // A page that is there is told, and from which moment on it has to call by itself; so is one that comes now.
      const late = await openSocket(url, `sinkside=${token}`);
      late.send({ type: "hello", after: null, language: "de" });
      const isTold = ({ since }: { since: number | null }): boolean => since !== null;
      for (const { hears } of [page, late]) {
        const { since } = await hears("trouble", isTold);
        expect(dueAts.some((dueAt) => dueAt > (since ?? 0) && dueAt <= Date.now())).toBe(true);
      }
      expect((await fetch(`${url}/api/me`, { headers: { cookie: `sinkside=${token}` } })).status).toBe(200);
      disk.free();
      await page.hears("trouble", ({ since }) => since === null);
      await until(() => said().some(({ key }) => key.includes("n")), 40_000);
      // One clear sentence each time it fills, none each second, and one where it is over.
      const told = bot
        .output()
        .match(/could not be settled: the disk of the store is full.*free some space/g);
      expect([1, 2, 3]).toContain(told?.length);
      expect(bot.output()).toContain("the disk can be written again");
      expect(await bot.kill("SIGTERM")).toBe(0);
      const rows = said();
      expect(rows.some(({ text }) => /late\*\*: this was for|missed/.test(text))).toBe(true);
      expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length);
      const stores = openStores(join(disk.path, "sinkside.db"));
      expect(stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
      const cues = stores.db.prepare("select state from cues where kind != 'nudge'").all() as {
        state: string;
      }[];
      expect(cues.filter(({ state }) => state !== "said" && state !== "merged")).toEqual([]);
      stores.close();
    },
  );
});

/**
 * The store's log keeps the size it once had, and what fits into that is recorded on a full disk as well. Emptied, it has to
 * grow with the next thing that is written.
 */
function emptyLog(data: string): void {
  const stores = openStores(join(data, "sinkside.db"));
  stores.db.pragma("wal_checkpoint(TRUNCATE)");
  stores.close();
}

async function until(isSo: () => boolean, ms = 20_000): Promise<void> {
  for (let waited = 0; waited < ms; waited += 100) {
    if (isSo()) return;
    await wait(100);
  }
  throw new Error(`never came: ${String(isSo)}`);
}
