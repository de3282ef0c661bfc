import { fork, type ChildProcess } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Room } from "../../bot/chat/room/options.ts";
import { createRoom } from "../../bot/chat/room/room.ts";
import { drawToken, hashToken } from "../../bot/chat/room/secrets.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { createMemoryLog } from "../support/room.ts";

/* A thousand connected pages on one machine, the store on disk. The pages are another process on the same cores. */

const PAGES = 1000;
const MOST_P99_MS = 250;
const folder = mkdtempSync(join(tmpdir(), "sinkside-bench-"));
let stores: OpenedStores;
let room: Room;
let pages: ChildProcess;
const people: string[] = [];

beforeAll(async () => {
  stores = openStores(join(folder, "bench.db"));
  const { id: classId } = stores.classes.add("room:1", "A thousand", "UTC", false, Date.now());
  const rooms = stores.rooms;
  const cookies = stores.atomically(() =>
    Array.from({ length: PAGES }, (_, index) => {
      const personId = `room:p${index}`;
      const token = drawToken();
      stores.members.see(classId, { id: personId, name: `P ${index}` }, "student", Date.now());
      rooms.addSession({ tokenHash: hashToken(token), classId, personId, device: "bench" }, Date.now());
      people.push(personId);
      return `sinkside=${token}`;
    }),
  );
  room = createRoom({
    host: "127.0.0.1",
    port: 0,
    publicUrl: null,
    stores,
    commands: [],
    log: createMemoryLog(),
    viewOf: () => [],
    renderPicture: async () => Buffer.alloc(0),
    now: Date.now,
  });
  await room.start({ onCommand: async () => {}, onComplete: () => [], onFatal: () => {} });
  pages = fork(join(import.meta.dirname, "open-pages.mjs"));
  pages.send({ url: room.urls[0], cookies });
  const opened = await heard<{ open: number }>();
  expect(opened.open).toBe(PAGES);
}, 60_000);

afterAll(async () => {
  pages?.kill();
  await room?.stop();
  stores?.close();
  rmSync(folder, { recursive: true, force: true });
});

function heard<T>(): Promise<T> {
  return new Promise((resolve) => pages.once("message", (message) => resolve(message as T)));
}

async function measure(what: string, send: () => void): Promise<number> {
  const waiting = heard<{ latencies: number[] }>();
  send();
  const latencies = (await waiting).latencies.sort((a, b) => a - b);
  const at = (share: number): number => latencies[Math.ceil(latencies.length * share) - 1] ?? Number.NaN;
  console.log(`${what}: p50 ${at(0.5)} ms, p99 ${at(0.99)} ms, most ${at(1)} ms`);
  return at(0.99);
}

let key = 0;
/** Says one thing to each of these, as the deliverer does: kept in one transaction, then shown. All count from one instant. */
function say(to: readonly (string | null)[]): void {
  const startedAt = Date.now();
  const kept = stores.atomically(() =>
    to.map((personId) => {
      key += 1;
      return room.post?.({
        key: `bench${key}`,
        classKey: "room:1",
        channelRef: null,
        personId,
        mentions: [],
        runs: [],
        text: String(startedAt),
        actions: [],
        pictures: [],
        attachments: [],
        dueAt: startedAt,
      });
    }),
  );
  for (const each of kept) each?.announce();
}

test("one call to the class reaches a thousand pages", async () => {
  await measure("warming up", () => say([null]));
  expect(await measure("one call to all", () => say([null]))).toBeLessThan(MOST_P99_MS);
}, 30_000);

test("a thousand calls of one instant, one to each page, are kept on disk and heard", async () => {
  const p99 = await measure("a call to each", () => say(people));
  console.log(`memory of the room and its test: ${Math.round(process.memoryUsage().rss / 2 ** 20)} MB`);
  expect(p99).toBeLessThan(MOST_P99_MS);
}, 30_000);
