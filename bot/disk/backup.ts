import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from "node:fs";
import { join } from "node:path";
import { joinAnd, countOf } from "../../commands/speech/wording.ts";
import { copyBesideCalls, inspectStore, type Holding } from "../../store/backup.ts";
import { StoreError } from "../../store/open.ts";
import { rotateAsides } from "./asides.ts";
import { listBackups } from "./guard.ts";

export interface Backup {
  readonly path: string;
  readonly bytes: number;
  readonly holding: Holding;
  /** Older ones that were removed. */
  readonly removed: readonly string[];
}

/** No backup is under way for longer. */
const LONGEST_MS = 60 * 60_000;
/** The rest of the time the disk is left to those who are called. */
const DISK_SHARE = 1 / 4;

/**
 * Copies the store while it is in use, opens the copy and examines all of it, and only then gives it its name; then
 * removes the oldest beyond `keep`. What fails leaves no half of a backup, and removes nothing.
 * @throws StoreError where there is no store, it is damaged, or there is no room.
 */
export function makeBackup(storePath: string, folder: string, keep: number, now: number): Backup {
  if (!existsSync(storePath) || statSync(storePath).size === 0)
    throw new StoreError("ERR_NO_STORE", `There is no store at ${storePath}: nothing was backed up.`);
  mkdirSync(folder, { recursive: true });
  const stamp = new Date(now).toISOString().replaceAll(/[:.]/g, "-");
  const path = join(folder, `sinkside-${stamp}.db`);
  const part = `${path}.part`;
  for (const name of listHalves(folder, now)) rmSync(join(folder, name), { force: true });
  try {
    copyBesideCalls(storePath, part, createRest());
    const holding = inspectStore(part);
    flush(part);
    renameSync(part, path);
    flush(folder);
    rotateAsides(storePath, now);
    const removed = listBackups(folder).slice(Math.max(1, keep));
    for (const name of removed) rmSync(join(folder, name));
    return { path, bytes: statSync(path).size, holding, removed };
  } catch (error) {
    rmSync(part, { force: true });
    throw explain(error, storePath, folder);
  }
}

/** Blocks after each stretch of work, so that it takes its share of the time and no more. */
function createRest(): () => void {
  const asleep = new Int32Array(new SharedArrayBuffer(4));
  let from = performance.now();
  return () => {
    Atomics.wait(asleep, 0, 0, (performance.now() - from) * (1 / DISK_SHARE - 1));
    from = performance.now();
  };
}

/** What backups that were broken off have left behind. */
function listHalves(folder: string, now: number): string[] {
  return readdirSync(folder)
    .filter((name) => /^sinkside-[\dTZ-]+\.db\.part/.test(name))
    .filter((name) => statSync(join(folder, name)).mtimeMs < now - LONGEST_MS);
}

/** Until this returns, a power cut may undo what was written. */
export function flush(path: string): void {
  const file = openSync(path, "r");
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

function explain(error: unknown, storePath: string, folder: string): Error {
  const { code = "", message = String(error) } = error as { code?: string; message?: string };
  if (error instanceof StoreError && code !== "ERR_DAMAGED") return error;
  if (code === "SQLITE_FULL" || code.startsWith("SQLITE_IOERR") || code === "ENOSPC")
    return new StoreError(
      code,
      `There is no room for a backup in ${folder}. Nothing was removed. Free some space.`,
    );
  // Pages are copied as they are: it shows where the copy is looked into.
  if (code.startsWith("SQLITE_CORRUPT") || code === "SQLITE_NOTADB" || code === "ERR_DAMAGED")
    return new StoreError(
      code,
      `The store at ${storePath} is damaged: it was not backed up. Older backups are kept.`,
    );
  return new StoreError(code, `The store at ${storePath} could not be backed up to ${folder}: ${message}.`);
}

/** `2 classes (…), 14 runs, 31 rolls, 6 batches, up to 2026-01-15 18:04 UTC`. */
export function describeHolding({ classes, runs, rolls, batches, newestAt }: Holding): string {
  const names = classes.length > 0 ? ` (${joinAnd(classes)})` : "";
  const upTo =
    newestAt === null ? "" : `, up to ${new Date(newestAt).toISOString().slice(0, 16).replace("T", " ")} UTC`;
  return `${countOf(classes.length, "class", "classes")}${names}, ${countOf(runs, "run")}, ${countOf(rolls, "roll")}, ${countOf(batches, "batch", "batches")}${upTo}`;
}

export function formatBytes(bytes: number): string {
  return bytes < 1024 * 1024 ? `${Math.ceil(bytes / 1024)} kB` : `${(bytes / 1024 / 1024).toFixed(1)} MB`;
}

/** Beside the store, where the settings name no other place. */
export function backupFolderOf(config: {
  SINKSIDE_DATA: string;
  BACKUP_FOLDER?: string | undefined;
}): string {
  return config.BACKUP_FOLDER ?? join(config.SINKSIDE_DATA, "backups");
}

export const storePathOf = (config: { SINKSIDE_DATA: string }): string =>
  join(config.SINKSIDE_DATA, "sinkside.db");
