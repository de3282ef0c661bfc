import { existsSync, statfsSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { collectDefaultMetrics, Counter, Gauge, Histogram, Registry } from "prom-client";
import type { Stores } from "../../store/index.ts";
import type { Owed } from "../../store/owed.ts";
import type { ChatPort } from "../chat/port.ts";

/* Figures for whoever runs the bot, in the Prometheus text format. No names and no ids of people. */

/** From what nobody can tell to what spoils a film. */
const LATENESS_SECONDS = [0.001, 0.002, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10, 30, 60, 300];

export interface Metrics {
  readonly registry: Registry;
  /** A message was said. */
  onSaid(owed: Owed, now: number): void;
  onClockStep(byMs: number): void;
  onBackup(isGood: boolean, now: number): void;
  /** A warning or an error was logged. */
  onLine(level: "warn" | "error"): void;
}

export interface MetricsDeps {
  readonly stores: Stores;
  readonly storePath: string;
  readonly ports: ReadonlyMap<string, ChatPort>;
  readonly now: () => number;
  /** Whole days for which the room's certificate still holds; absent where it has none of its own. */
  readonly certificateDaysLeft?: (() => number) | undefined;
}

export function createMetrics(deps: MetricsDeps): Metrics {
  const { stores, storePath, ports, now, certificateDaysLeft } = deps;
  const registry = new Registry();
  const registers = [registry];
  collectDefaultMetrics({ register: registry });
  const lateness = (stage: string, help: string): Histogram =>
    new Histogram({
      name: `sinkside_cue_${stage}_lateness_seconds`,
      help,
      buckets: LATENESS_SECONDS,
      registers,
    });
  const decided = lateness("decided", "From the moment of a cue until it was decided and recorded");
  const delivered = lateness("delivered", "From the moment of a cue until its chat had taken it");
  const waited = new Histogram({
    name: "sinkside_rate_limit_waited_seconds",
    help: "From when a message was owed and due until it was first tried: what a chat's limits cost",
    buckets: LATENESS_SECONDS,
    registers,
  });
  const steps = new Counter({
    name: "sinkside_clock_steps_total",
    help: "The wall clock was set",
    registers,
  });
  const lines = new Counter({
    name: "sinkside_log_lines_total",
    help: "Warnings and errors in the log",
    labelNames: ["level"],
    registers,
  });
  const backups = new Counter({
    name: "sinkside_backups_total",
    help: "Backups by the clock",
    labelNames: ["outcome"],
    registers,
  });
  const lastBackup = new Gauge({
    name: "sinkside_last_backup_timestamp_seconds",
    help: "When the newest good backup by the clock was made",
    registers,
  });
  const gauge = (name: string, help: string, read: () => number): Gauge =>
    new Gauge({ name, help, registers, collect: collectSafely(read) });

  gauge("sinkside_outbox_depth", "Messages owed and not said yet", () => stores.outbox.depth());
  gauge(
    "sinkside_cues_overdue_seconds",
    "By how much the most overdue cue waits undecided",
    () => Math.max(0, now() - (stores.cues.nextDecideAt() ?? Infinity)) / 1000,
  );
  gauge("sinkside_open_runs", "Runs that are not over", () => stores.figures.openRuns());
  gauge("sinkside_store_bytes", "Size of the store", () => sizeOf(storePath));
  gauge("sinkside_store_log_bytes", "Size of the store's write-ahead log", () => sizeOf(`${storePath}-wal`));
  gauge("sinkside_disk_free_bytes", "Free space beside the store", () => {
    const { bavail, bsize } = statfsSync(dirname(storePath));
    return bavail * bsize;
  });
  if (certificateDaysLeft)
    gauge(
      "sinkside_certificate_days_left",
      "Days for which the certificate still holds",
      certificateDaysLeft,
    );
  createWaits(ports, registers, now);

  return {
    registry,
    onSaid({ runId, dueAt, decidedAt, firstTryAt }, at) {
      // What its chat keeps in this very store is never tried, and never waits.
      if (firstTryAt !== null) waited.observe(Math.max(0, firstTryAt - Math.max(dueAt, decidedAt)) / 1000);
      // Warnings and digests can wait; what a run says can't.
      if (runId === null) return;
      decided.observe(Math.max(0, decidedAt - dueAt) / 1000);
      delivered.observe(Math.max(0, at - dueAt) / 1000);
    },
    onClockStep: () => steps.inc(),
    onBackup(isGood, at) {
      backups.inc({ outcome: isGood ? "good" : "failed" });
      if (isGood) lastBackup.set(at / 1000);
    },
    onLine: (level) => lines.inc({ level }),
  };
}

/** How long a message to a chat would have to wait for the chat's common limit, right now. */
function createWaits(ports: ReadonlyMap<string, ChatPort>, registers: Registry[], now: () => number): void {
  const waits = new Gauge({
    name: "sinkside_rate_limit_wait_seconds",
    help: "How long the next message must wait for a chat's own limit",
    labelNames: ["chat"],
    registers,
    collect() {
      const at = now();
      for (const [chat, { pace }] of ports) {
        if (!pace) continue;
        const freeAt = pace.freeAt(at);
        // Where only an answer can make room: a second, the length of the limit's window.
        waits.set({ chat }, (Number.isFinite(freeAt) ? Math.max(0, freeAt - at) : 1000) / 1000);
      }
    },
  });
}

/** A store that can't be read must not keep the other figures from being told. */
function collectSafely(read: () => number) {
  return function collect(this: Gauge): void {
    try {
      this.set(read());
    } catch {
      this.set(Number.NaN);
    }
  };
}

const sizeOf = (path: string): number => (existsSync(path) ? statSync(path).size : 0);
