import { statSync } from "node:fs";
import { join } from "node:path";
import { validate } from "node-cron";
import type { Stores } from "../../store/index.ts";
import { backupFolderOf } from "../disk/backup.ts";
import { scheduleBackups } from "../disk/backup-schedule.ts";
import type { ChatPort } from "../chat/port.ts";
import type { Clock } from "../process/clock.ts";
import { type Config, zoneOf } from "../process/config.ts";
import { listBackups } from "../disk/guard.ts";
import { checkHealth, serveHealth, type Health } from "./health.ts";
import type { Log } from "../process/log.ts";
import type { Metrics } from "./metrics.ts";

/* What the operator needs beside the chats; opened after the cues have begun. */

export interface Operations {
  /** undefined where nobody asks for figures. */
  readonly metrics: Metrics | undefined;
  stop(): Promise<void>;
}

export interface OperationsDeps {
  readonly config: Config;
  readonly stores: Stores;
  readonly storePath: string;
  readonly clock: Clock;
  readonly log: Log;
  readonly ports: ReadonlyMap<string, ChatPort>;
  /** Whole days for which the room's certificate still holds; absent where it has none of its own. */
  readonly certificateDaysLeft?: (() => number) | undefined;
  /** Chats that are off, and why. */
  lostChats(): Readonly<Record<string, string>>;
  /** Chats so slow that calls come late there, in seconds a message. */
  slowChats(): Readonly<Record<string, number>>;
}

/** A setting that turns out wrong only when it is used. */
export class SettingError extends Error {
  readonly code = "ERR_SETTING";
}

const DAY_MS = 24 * 60 * 60_000;

export async function openOperations(deps: OperationsDeps): Promise<Operations> {
  const { config, clock, log } = deps;
  const now = (): number => clock.now();
  const { BACKUP_CRON, METRICS_PORT } = config;
  if (BACKUP_CRON !== "off" && !validate(BACKUP_CRON))
    throw new SettingError(`BACKUP_CRON: "${BACKUP_CRON}" names no time; write it like "30 3 * * *", or off`);
  const served = METRICS_PORT === undefined ? undefined : await serve(METRICS_PORT, deps);
  const metrics = served?.metrics;
  const backups = scheduleBackups({
    cron: BACKUP_CRON === "off" ? undefined : BACKUP_CRON,
    zone: zoneOf(config),
    log,
    isMissed: isBackupMissed(backupFolderOf(config), now()),
    onMade: (isGood) => metrics?.onBackup(isGood, now()),
  });
  return {
    metrics,
    async stop() {
      await Promise.all([served?.server.stop(), backups.stop()]);
    },
  };
}

/** Loaded only where it is wanted: it takes longer to load than the cues take to begin. */
async function serve(port: number, deps: OperationsDeps) {
  const { stores, clock, log, certificateDaysLeft, lostChats, slowChats } = deps;
  const { createMetrics } = await import("./metrics.ts");
  const now = (): number => clock.now();
  const metrics = createMetrics({ ...deps, now });
  try {
    const check = (): Health =>
      checkHealth(stores, now(), certificateDaysLeft?.() ?? null, lostChats(), slowChats());
    const server = await serveHealth(port, metrics.registry, check);
    log.info({ url: server.url }, "figures and health are served");
    return { metrics, server };
  } catch (error) {
    if ((error as { code?: string }).code !== "EADDRINUSE") throw error;
    throw new SettingError(
      `Port ${port} is in use. Stop what uses it, or set METRICS_PORT to another number.`,
    );
  }
}

function isBackupMissed(folder: string, now: number): boolean {
  const [newest] = listBackups(folder);
  return newest === undefined || now - statSync(join(folder, newest)).mtimeMs > DAY_MS;
}
