import { get } from "node:http";
import { afterEach, beforeEach, expect, test } from "vitest";
import { createPace } from "../../../bot/chat/pace.ts";
import { checkHealth, serveHealth, type HealthServer } from "../../../bot/watch/health.ts";
import { createMetrics, type Metrics } from "../../../bot/watch/metrics.ts";
import { inventDemo } from "../../../bot/demo/demo.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createFakeClock } from "../../support/clock.ts";
import { START } from "../../support/make.ts";

let stores: OpenedStores;
let metrics: Metrics;
let server: HealthServer;
const pace = createPace({ perSecond: 1, channelCount: 5, channelWindowMs: 5000 });
const clock = createFakeClock();

beforeEach(async () => {
  stores = openStores(":memory:");
  inventDemo(stores, "UTC", START);
  const port = {
    chat: "discord",
    start: async () => {},
    stop: async () => {},
    send: async () => ({ kind: "sent", ref: "" }) as const,
    pace,
  };
  metrics = createMetrics({
    stores,
    storePath: "/nowhere/sinkside.db",
    ports: new Map([["discord", port]]),
    now: clock.now,
  });
  server = await serveHealth(0, metrics.registry, () => checkHealth(stores, clock.now()));
});
afterEach(async () => {
  await server.stop();
  stores.close();
});

async function read(): Promise<Map<string, number>> {
  const text = await (await fetch(`${server.url}/metrics`)).text();
  // The text format: a name with its labels, a space, a number. Source: Prometheus, "Exposition formats".
  const lines = text.split("\n").filter((line) => line !== "" && !line.startsWith("#"));
  return new Map(
    lines.map((line) => {
      const match = /^([a-zA-Z_:][a-zA-Z0-9_:]*(?:\{.*\})?) (\S+)$/.exec(line);
      if (!match) throw new Error(`no line of the text format: ${line}`);
      return [match[1] ?? "", Number(match[2])];
    }),
  );
}

function owe(key: string, runId: number | null = null) {
  stores.outbox.owe({
    key,
    classId: 1,
    personId: null,
    runId,
    priority: 0,
    dueAt: START,
    decidedAt: START + 3,
    usefulUntil: null,
    body: { text: "Pour out now.", actions: [], mentions: [] },
  });
  const owed = stores.outbox.findByKey(key);
  if (!owed) throw new Error("not owed");
  return owed;
}

test("lateness is told in two parts, and a warning that could wait is not counted", async () => {
  const cue = { ...owe("a"), runId: 7 };
  metrics.onSaid(cue, START + 240);
  metrics.onSaid(owe("b"), START + 60_000);
  const figures = await read();
  expect(figures.get('sinkside_cue_decided_lateness_seconds_bucket{le="0.002"}')).toBe(0);
  expect(figures.get('sinkside_cue_decided_lateness_seconds_bucket{le="0.005"}')).toBe(1);
  expect(figures.get("sinkside_cue_delivered_lateness_seconds_sum")).toBeCloseTo(0.24);
  expect(figures.get("sinkside_cue_delivered_lateness_seconds_count")).toBe(1);
});

test("what a chat's limits cost a message is told, from when it might have left to its first try", async () => {
  metrics.onSaid({ ...owe("a"), runId: 7, firstTryAt: START + 203 }, START + 240);
  metrics.onSaid({ ...owe("b"), runId: 7, firstTryAt: null }, START + 5);
  const figures = await read();
  expect(figures.get("sinkside_rate_limit_waited_seconds_sum")).toBeCloseTo(0.2);
  expect(figures.get("sinkside_rate_limit_waited_seconds_count")).toBe(1);
});

test("what is owed, what waits for a chat's limit, what was logged and backed up is told", async () => {
  owe("a");
  owe("b");
  pace.take("somewhere", clock.now());
  metrics.onLine("error");
  metrics.onClockStep(3600);
  metrics.onBackup(true, START);
  const figures = await read();
  expect(figures.get("sinkside_outbox_depth")).toBe(2);
  expect(figures.get('sinkside_rate_limit_wait_seconds{chat="discord"}')).toBeCloseTo(1, 0);
  expect(figures.get('sinkside_log_lines_total{level="error"}')).toBe(1);
  expect(figures.get("sinkside_clock_steps_total")).toBe(1);
  expect(figures.get("sinkside_last_backup_timestamp_seconds")).toBe(START / 1000);
  expect(figures.get("process_resident_memory_bytes")).toBeGreaterThan(1_000_000);
});

test("a store that can't be read silences neither the other figures nor health", async () => {
  stores.close();
  const figures = await read();
  expect(figures.get("sinkside_outbox_depth")).toBeNaN();
  expect(figures.get("sinkside_clock_steps_total")).toBe(0);
  const answer = await fetch(`${server.url}/health`);
  expect([answer.status, await answer.json()]).toEqual([503, expect.objectContaining({ status: "failing" })]);
  stores = openStores(":memory:");
});

test("health is bad where a cue waits undecided, and only told where a chat is behind", async () => {
  const status = async (): Promise<unknown[]> => {
    const answer = await fetch(`${server.url}/health`);
    return [answer.status, ((await answer.json()) as { status: string }).status];
  };
  expect(await status()).toEqual([200, "ok"]);
  owe("a");
  clock.advance(61);
  expect(await status()).toEqual([200, "behind"]);
  stores.db
    .prepare(
      `insert into runs (class_id, number, person_id, body, phase, started_at) values (1, 1, 'room:mina', '{}', '{"kind":"running"}', ?)`,
    )
    .run(START);
  const insert = stores.db.prepare(
    `insert into cues (id, run_id, key, kind, step, number, due_at, decide_at, made_at) values (1, 1, 'k', 'agitate', 0, 1, ?, ?, ?)`,
  );
  insert.run(clock.now() - 4000, clock.now() - 4000, START);
  expect(await status()).toEqual([200, "behind"]);
  clock.advance(2);
  expect(await status()).toEqual([503, "late"]);
  clock.back(63);
});

test("a name that leads here from another site is answered with nothing", async () => {
  const { port } = new URL(server.url);
  const ask = (host: string): Promise<number | undefined> =>
    new Promise((resolve, reject) => {
      const request = get({ port, host: "127.0.0.1", path: "/metrics", headers: { host } }, (answer) => {
        answer.resume();
        resolve(answer.statusCode);
      });
      request.on("error", reject);
    });
  expect(await ask(`rebound.example:${port}`)).toBe(421);
  expect(await ask("127.0.0.1.example")).toBe(421);
  expect(await ask(`localhost:${port}`)).toBe(200);
});

test("it is served on loopback only, and only read", async () => {
  expect(server.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
  expect((await fetch(`${server.url}/metrics`, { method: "POST" })).status).toBe(405);
  expect((await fetch(`${server.url}/`)).status).toBe(404);
  expect((await fetch(`${server.url}/metrics`)).headers.get("content-type")).toMatch(
    /^text\/plain; version=0\.0\.4/,
  );
});
