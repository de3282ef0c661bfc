import { readFileSync } from "node:fs";
import { loadavg } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import Database from "better-sqlite3";
import type { BotProcess } from "../support/process.ts";

/* What is measured beside a load, and how it is shown. */

export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** p50 / p99 / max, rounded. */
export function spread(values: readonly number[]): string {
  return [0.5, 0.99, 1].map((share) => round(percentile(values, share))).join(" / ");
}

const round = (value: number): number =>
  Math.abs(value) < 10 ? Math.round(value * 10) / 10 : Math.round(value);

/** CPU seconds of a process so far (user and system), and its memory now and at its most, in MB. Linux only. */
export function readProcess(pid: number): { cpuSeconds: number; nowMb: number; mostMb: number } {
  const after = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1]?.split(" ") ?? [];
  const status = readFileSync(`/proc/${pid}/status`, "utf8");
  const mb = (name: string): number => Number(new RegExp(`${name}:\\s+(\\d+)`).exec(status)?.[1]) / 1024;
  return {
    cpuSeconds: (Number(after[11]) + Number(after[12])) / 100,
    nowMb: Math.round(mb("VmRSS")),
    mostMb: Math.round(mb("VmHWM")),
  };
}

export interface SaidLine {
  readonly key: string;
  /** Both from the moment it was for; negative: ahead of it. */
  readonly decidedMs: number;
  /** Written after the commit that keeps it as said. */
  readonly deliveredMs: number;
  readonly time: number;
}

/** What the bot's own log tells of each message, at level `info`. */
export function readSaid(bot: BotProcess): SaidLine[] {
  return bot
    .output()
    .split("\n")
    .filter((line) => line.includes('"msg":"said"'))
    .map((line) => JSON.parse(line) as SaidLine);
}

/** Flushes of the disk `folder` is on, while a load runs: one small commit ten times a second, as durable as the store's own. */
export function watchDisk(folder: string): { stop(): number[] } {
  const db = new Database(join(folder, "floor.db"));
  db.pragma("journal_mode = WAL");
  db.pragma("synchronous = FULL");
  db.exec("create table if not exists t (a integer)");
  const insert = db.prepare("insert into t values (1)");
  const times: number[] = [];
  const timer = setInterval(() => {
    const startedAt = performance.now();
    insert.run();
    times.push(performance.now() - startedAt);
  }, 100);
  return {
    stop() {
      clearInterval(timer);
      db.close();
      return times;
    },
  };
}

export function loadNow(): string {
  return loadavg()[0]?.toFixed(1) ?? "?";
}

/** A table as text, its columns as wide as they need. */
export function table(rows: readonly Readonly<Record<string, string | number>>[]): string {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const lines = [names, ...rows.map((row) => names.map((name) => String(row[name] ?? "")))];
  const widths = names.map((_, at) => Math.max(...lines.map((line) => line[at]?.length ?? 0)));
  return lines
    .map((line) => `| ${line.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join(" | ")} |`)
    .join("\n");
}

/** The most of these instants (ms) that lie within one second. */
export function mostInOneSecond(instants: readonly number[]): number {
  const sorted = [...instants].sort((a, b) => a - b);
  let first = 0;
  return sorted.reduce((most, at, last) => {
    while ((sorted[first] ?? at) <= at - 1000) first += 1;
    return Math.max(most, last - first + 1);
  }, 0);
}
