import { execFile } from "node:child_process";
import { builtPath } from "../process/built.ts";
import type { Log } from "../process/log.ts";
import { onWallClock } from "../rounds/wall-timer.ts";

export interface BackupSchedule {
  /** One that is being made is broken off: what is there of it is removed by the next. */
  stop(): Promise<void>;
}

export interface BackupScheduleDeps {
  /** As cron writes it, on the wall clock of `zone`; undefined: none are made. */
  readonly cron: string | undefined;
  readonly zone: string;
  readonly log: Log;
  readonly onMade: (isGood: boolean) => void;
  /** One was due while the bot was down: it is made soon after the start. */
  readonly isMissed?: boolean;
  /** Makes one; it rejects with the sentence where that failed. */
  readonly make?: (signal: AbortSignal) => Promise<string>;
}

const MOST_MS = 30 * 60_000;
const SOON_MS = 60_000;

/**
 * Backs the store up by the clock. A process of its own does it, so that no cue waits for the disk. One that fails is told
 * in the log, and the bot goes on.
 */
export function scheduleBackups(deps: BackupScheduleDeps): BackupSchedule {
  const { cron, zone, log, onMade, make = makeApart } = deps;
  const ending = new AbortController();
  let underWay: Promise<void> | undefined;
  const attempt = async (): Promise<void> => {
    try {
      log.info({ said: await make(ending.signal) }, "backed up");
      onMade(true);
    } catch (error) {
      if (ending.signal.aborted) return;
      log.error({ err: error }, "the backup failed; older ones are kept");
      onMade(false);
    }
  };
  function run(): Promise<void> {
    underWay ??= attempt().finally(() => (underWay = undefined));
    return underWay;
  }
  const soon =
    cron !== undefined && deps.isMissed ? setTimeout(() => void run(), SOON_MS).unref() : undefined;
  const timer = cron === undefined ? undefined : onWallClock(cron, zone, () => void run());
  return {
    async stop() {
      clearTimeout(soon);
      timer?.stop();
      ending.abort();
      await underWay;
    },
  };
}

function makeApart(signal: AbortSignal): Promise<string> {
  return new Promise((resolve, reject) => {
    const limits = { timeout: MOST_MS, signal };
    execFile(process.execPath, [builtPath("backup.js")], limits, (error, stdout, stderr) => {
      if (error) reject(new Error(stderr.trim() || error.message));
      else resolve(stdout.trim());
    });
  });
}
