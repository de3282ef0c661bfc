import { existsSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { isWritten } from "../../store/backup.ts";
import { openStores, type OpenedStores, type Stores } from "../../store/index.ts";
import { StoreError } from "../../store/open.ts";
import { dropBallast, keepBallast } from "./ballast.ts";
import { examineBeside, type Examined } from "./damage.ts";
import { listLosses, markerPath, readMarker, writeMarker } from "./marker.ts";
import type { Log } from "../process/log.ts";

/* What stands between the class's record and a disk that fails, fills, or is tidied up by somebody. */

/** Examined before anything else, whoever waits: it takes some 20 ms. */
const SMALL_BYTES = 8 * 1024 * 1024;
/** Examined before anything else where nobody is to be called so soon: it takes some 200 ms. */
const MEDIUM_BYTES = 64 * 1024 * 1024;
const SOON_MS = 5000;
const LOOK_MS = 60_000;

const onFull = /^SQLITE_(FULL|IOERR)/;
const onDamage = /^SQLITE_(CORRUPT|NOTADB)/;

/**
 * A store that had something in it and is gone or empty is not replaced by a new one.
 * @throws StoreError ERR_STORE_GONE.
 */
export function refuseEmptied(path: string, backupFolder: string): void {
  const size = existsSync(path) ? statSync(path).size : -1;
  if (size > 0 && isWritten(path)) return;
  const marker = readMarker(path);
  const backups = listBackups(backupFolder).length;
  if (!(marker?.held ?? backups > 0)) return;
  const what = size < 0 ? "is missing" : "is empty";
  const when = marker ? `, though it was in use until ${new Date(marker.at).toISOString()}` : "";
  const anew = marker ? `delete ${markerPath(path)} first` : `move the backups out of ${backupFolder} first`;
  throw new StoreError(
    "ERR_STORE_GONE",
    `The store at ${path} ${what}${when}. Put the file back (with its -wal file), or bring back a backup: npm run restore. To begin anew on purpose, ${anew}.`,
  );
}

/** Files of backups, the newest first. */
export function listBackups(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => /^sinkside-[\dTZ-]+\.db$/.test(name))
    .sort()
    .reverse();
}

export interface Opened {
  readonly stores: OpenedStores;
  /** False where somebody waits to be called, and looking at every page would take long: then it is done beside the calls. */
  readonly isExamined: boolean;
}

/**
 * Opens the store after looking whether it is what it was. On a disk that is full it lets its reserve go and tries again.
 * @throws StoreError where it is gone, damaged, newer, or can't be used.
 */
export function openGuarded(path: string, backupFolder: string, log: Log, now: number): Opened {
  refuseEmptied(path, backupFolder);
  const stores = withReserve(path, log, () => openStores(path));
  try {
    const isExamined = mustExamine(path, stores, now);
    if (isExamined) refuseDamaged(path, stores);
    const marker = readMarker(path);
    const losses = marker ? listLosses(marker, stores.upkeep) : [];
    if (losses.length > 0)
      log.error(
        { losses, knownAt: marker?.at },
        "the store has lost its newest entries; a backup may have them",
      );
    return { stores, isExamined };
  } catch (error) {
    stores.close();
    throw error;
  }
}

/** Before the first call. A damaged store had better not be written at all; but a film that is not called is spoilt. */
function mustExamine(path: string, stores: Stores, now: number): boolean {
  const { size } = statSync(path);
  if (size < SMALL_BYTES) return true;
  return size < MEDIUM_BYTES && (nextCallAt(stores) ?? Infinity) > now + SOON_MS;
}

function nextCallAt({ cues }: Stores): number | undefined {
  try {
    return cues.nextDecideAt();
  } catch {
    // Something is broken: then it is to be examined now.
    return undefined;
  }
}

/** Does what must be written at the start; where the disk is full, once more without the reserve beside the store. */
export function withReserve<T>(path: string, log: Log, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const { code } = error as { code?: string };
    if (!onFull.test(code ?? "") || !dropBallast(path)) throw error;
    log.error({ code }, "the disk is full; the reserve beside the store was let go");
    return work();
  }
}

function refuseDamaged(path: string, { upkeep }: Stores): void {
  let found: string | undefined;
  try {
    found = upkeep.damage();
  } catch (error) {
    found = String(error);
  }
  if (found === undefined) return;
  throw new StoreError(
    "SQLITE_CORRUPT",
    `The store at ${path} is damaged (${found}). Nothing was changed. Bring back a backup: npm run restore.`,
  );
}

export interface Guard {
  /** Looks at once; else it does so every minute. */
  look(now: number): void;
  /** A fault of the disk has come up: makes room, or ends the process where the store is damaged. */
  notice(error: unknown): void;
  stop(now: number): void;
}

export interface GuardDeps {
  readonly path: string;
  readonly stores: Stores;
  readonly log: Log;
  readonly now: () => number;
  /** Whether every page of it was looked at; else it is now. */
  readonly isExamined: boolean;
  /** The process must end, with this sentence. */
  readonly onFatal: (sentence: string) => void;
}

/** Watches the store while it is in use. */
export function watchStore({ path, stores, log, now, isExamined, onFatal }: GuardDeps): Guard {
  const { ino, dev } = statSync(path);
  let isOver = false;
  const timer = setInterval(() => look(now()), LOOK_MS).unref();
  const stopExamining = isExamined ? () => {} : examineBeside(path, onExamined);

  function onExamined(examined: Examined): void {
    if (isOver) return;
    if (examined.kind === "damaged") endDamaged(examined.found);
    if (examined.kind === "unknown") log.warn({ detail: examined.detail }, "the store could not be examined");
  }

  function endDamaged(found: string): void {
    end(`The store at ${path} is damaged (${found}). Bring back a backup: npm run restore.`);
  }

  function isReplaced(): boolean {
    const here = existsSync(path) ? statSync(path) : undefined;
    return here?.ino !== ino || here.dev !== dev;
  }

  function look(at: number): void {
    if (isOver) return;
    try {
      if (isReplaced()) return rescue();
      if (statSync(path).size === 0) return end(`The store at ${path} was emptied while it was in use.`);
      writeMarker(path, stores.upkeep, at);
      keepBallast(path);
    } catch (error) {
      log.error({ err: error }, "the store could not be looked after");
      notice(error);
    }
  }

  /** What is open is still whole, though its name is gone: it gets one again. */
  function rescue(): void {
    const isFree = !existsSync(path);
    const target = isFree ? path : `${path}.rescued`;
    const part = `${target}.part`;
    try {
      rmSync(part, { force: true });
      stores.upkeep.copyTo(part);
      for (const side of ["-wal", "-shm"]) rmSync(target + side, { force: true });
      renameSync(part, target);
      end(
        isFree
          ? `The store at ${path} was deleted while it was in use. All of it was written back; start again.`
          : `The store at ${path} was replaced while it was in use. What was in use is kept at ${target}: npm run restore -- ${target}`,
      );
    } catch (error) {
      log.error({ err: error }, "the store's file is gone, and could not be written back");
      end(
        `The store at ${path} was deleted while it was in use, and could not be written back: ${String(error)}`,
      );
    }
  }

  function end(sentence: string): void {
    isOver = true;
    clearInterval(timer);
    stopExamining();
    log.error({}, sentence);
    onFatal(sentence);
  }

  function notice(error: unknown): void {
    const code = (error as { code?: string } | undefined)?.code ?? "";
    if (isOver) return;
    if (onDamage.test(code)) endDamaged(code);
    else if (onFull.test(code) && dropBallast(path))
      log.error({ code }, "the disk is full; the reserve beside the store was let go. Free some space now");
  }

  look(now());
  return {
    look,
    notice,
    stop(at) {
      clearInterval(timer);
      stopExamining();
      if (isOver) return;
      isOver = true;
      try {
        writeMarker(path, stores.upkeep, at);
      } catch (error) {
        log.warn({ err: error }, "the file that knows the store could not be written");
      }
    },
  };
}

/** The same log, with each warning and error shown to `onLine` as well. */
export function tapLog(log: Log, onLine: (level: "warn" | "error", fault: unknown) => void): Log {
  return {
    debug: (fields, message) => log.debug(fields, message),
    info: (fields, message) => log.info(fields, message),
    warn(fields, message) {
      log.warn(fields, message);
      onLine("warn", fields["err"]);
    },
    error(fields, message) {
      log.error(fields, message);
      onLine("error", fields["err"]);
    },
  };
}
