import { fork } from "node:child_process";
import { once } from "node:events";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { aPlan, aRun, aStep, EACH_MINUTE } from "../../support/make.ts";
import { readServer, startPostgres, startRedis, type Service } from "./services.ts";

/* Who runs, and one of them at one task. */

export interface Contestant {
  readonly name: string;
  readonly file: "ours.mjs" | "peers.mjs";
  /** The packages it is made of, with the versions these settings are for. */
  readonly peers?: readonly string[];
  readonly server?: "redis" | "postgres";
  /** Whether its timers outlive the process. */
  readonly isDurable: boolean;
  /** Whether its handler does the work of a cue, and does not only note the instant. */
  readonly works?: boolean;
}

const ALONE: readonly Contestant[] = [
  { name: "plainTimeouts", file: "peers.mjs", isDurable: false },
  { name: "sinkside", file: "ours.mjs", isDurable: true },
  { name: "nodeSchedule", file: "peers.mjs", peers: ["node-schedule@2.1.1"], isDurable: false },
  { name: "croner", file: "peers.mjs", peers: ["croner@11.0.1"], isDurable: false },
  {
    name: "bullmq",
    file: "peers.mjs",
    peers: ["bullmq@6.7.0", "ioredis@5.8.2"],
    server: "redis",
    isDurable: true,
  },
  { name: "pgBoss", file: "peers.mjs", peers: ["pg-boss@10.4.2"], server: "postgres", isDurable: true },
  {
    name: "graphileWorker",
    file: "peers.mjs",
    peers: ["graphile-worker@0.17.3"],
    server: "postgres",
    isDurable: true,
  },
];

/** Those whose timers are kept once more, at work. */
export const FIELD: readonly Contestant[] = [
  ...ALONE,
  ...ALONE.flatMap((each) => (each.isDurable && each.peers ? [{ ...each, works: true }] : [])),
];

export interface Figures {
  readonly armMs: number;
  /** All were armed before the first was due. */
  readonly isArmed: boolean;
  readonly fired: number;
  readonly early: number;
  readonly late: readonly [p50: number | null, p99: number | null, max: number | null];
  readonly more: { readonly decided?: readonly number[] };
  /** While they fired. */
  readonly cpuSeconds: number;
  readonly blockedMs: number;
  readonly mostMb: number;
}

export type Result =
  | { readonly kind: "measured"; readonly own: Figures; readonly server: ReturnType<typeof readServer> }
  | { readonly kind: "failed"; readonly why: string };

export interface Task {
  readonly count: number;
  readonly windowMs: number;
}

/** Time to arm: the slowest queue takes 0.04 ms for each, and a run for it to work on 0.1 ms. */
const ALLOWANCE_MS = 1000;
const ALLOWANCE_EACH_MS = 0.3;
const LATE_START_MS = 15_000;
/** Who has not fired by then is not waited for. */
const PATIENCE_MS = 60_000;
const MOST_HEAP_MB = 2048;
const DIST = join(import.meta.dirname, "..", "..", "..", "dist");

export async function measure(who: Contestant, task: Task, folder: string): Promise<Result> {
  const service = await startServer(who, folder);
  if (service?.kind === "missing") return { kind: "failed", why: `${who.server} missing: ${service.why}` };
  const child = start(who, { ...task, mode: "measure" }, folder, service);
  try {
    const startsBy = allowanceOf(task) + LATE_START_MS;
    const starts = await hear<{ starts: true }>(child, startsBy);
    if (!starts) return { kind: "failed", why: child.exitCode === null ? "not armed in time" : "it ended" };
    const before = service ? readServer(service.pid) : { cpuSeconds: 0, mostMb: 0 };
    const own = await hear<Figures>(child, task.windowMs + PATIENCE_MS + LATE_START_MS);
    if (!own) return { kind: "failed", why: "it did not come to an end" };
    const after = service ? readServer(service.pid) : before;
    return {
      kind: "measured",
      own,
      server: { cpuSeconds: after.cpuSeconds - before.cpuSeconds, mostMb: after.mostMb },
    };
  } finally {
    await end(child);
    await service?.stop();
  }
}

/**
 * Milliseconds from the start of a new process to its first timer, after the one that armed them was killed and some have
 * fallen due; undefined where it never came.
 */
export async function recover(who: Contestant, task: Task, folder: string): Promise<number | undefined> {
  const service = await startServer(who, folder);
  if (service?.kind === "missing") return undefined;
  const first = start(who, { ...task, mode: "leave" }, folder, service);
  try {
    const due = wait(allowanceOf(task) + task.windowMs / 2);
    await hear(first, allowanceOf(task) + LATE_START_MS);
    await end(first);
    await due;
    const startedAt = Date.now();
    const second = start(who, { ...task, mode: "resume" }, folder, service);
    const fired = await hear<{ firstAt: number }>(second, PATIENCE_MS);
    await end(second);
    return fired && fired.firstAt - startedAt;
  } finally {
    await service?.stop();
  }
}

const allowanceOf = ({ count }: Task): number => Math.ceil(ALLOWANCE_MS + count * ALLOWANCE_EACH_MS);

type Mode = "measure" | "leave" | "resume";

function start(
  { name, file, works = false }: Contestant,
  task: Task & { readonly mode: Mode },
  folder: string,
  service: Extract<Service, { kind: "up" }> | undefined,
) {
  const data = join(folder, "data");
  mkdirSync(data, { recursive: true });
  const { id: _id, number: _number, ...run } = aRun({ plan: PLAN });
  const given = {
    ...task,
    name,
    works,
    file: join(import.meta.dirname, file),
    allowanceMs: allowanceOf(task),
    patienceMs: PATIENCE_MS,
    peers: join(folder, "..", name),
    data,
    dist: DIST,
    run,
    redisPort: service?.port,
    databaseUrl: `postgres://bench@127.0.0.1:${service?.port}/postgres`,
  };
  return fork(join(import.meta.dirname, "contestant.mjs"), [JSON.stringify(given)], {
    execArgv: [`--max-old-space-size=${MOST_HEAP_MB}`],
    stdio: ["ignore", "ignore", process.env.SHOW ? "inherit" : "ignore", "ipc"],
  });
}

/** Agitated so seldom that the one call under test is the only one for as long as it takes. */
const PLAN = aPlan({
  steps: [
    aStep({ kind: "develop", seconds: 7200, agitation: { ...EACH_MINUTE, cycleSeconds: 3600 } }),
    aStep({ kind: "rinse", ordinal: 1 }),
  ],
});

async function startServer({ server }: Contestant, folder: string) {
  if (!server) return undefined;
  return server === "redis" ? startRedis(join(folder, "redis")) : startPostgres(join(folder, "postgres"));
}

/** The next word of a child; undefined where it ends or says nothing for so long. */
async function hear<T>(child: ReturnType<typeof fork>, ms: number): Promise<T | undefined> {
  const quiet = new AbortController();
  const { signal } = quiet;
  try {
    return await Promise.race([
      once(child, "message", { signal }).then(([message]) => message as T),
      once(child, "exit", { signal }).then(() => undefined),
      wait(ms, undefined, { signal }),
    ]);
  } finally {
    quiet.abort();
  }
}

async function end(child: ReturnType<typeof fork>): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = once(child, "exit");
  child.kill("SIGKILL");
  await ended;
}
