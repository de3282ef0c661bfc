import { existsSync, readdirSync, statSync } from "node:fs";
import { isWritten } from "../../store/backup.ts";
import { openStores, type OpenedStores, type Stores } from "../../store/index.ts";
import { StoreError } from "../../store/open.ts";
import { dropBallast } from "./ballast.ts";
import { listLosses, markerPath, readMarker } from "./marker.ts";
import type { Log } from "../process/log.ts";

/* What stands between the class's record and a disk that fails, fills, or is tidied up by somebody. */

/** Examined before anything else, whoever waits: it takes some 20 ms. */
const SMALL_BYTES = 8 * 1024 * 1024;
/** Examined before anything else where nobody is to be called so soon: it takes some 200 ms. */
const MEDIUM_BYTES = 64 * 1024 * 1024;
const SOON_MS = 5000;

const onFull = /^SQLITE_(FULL|IOERR)/;

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
    const isExamined = mustExamine(stores, now);
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
function mustExamine(stores: Stores, now: number): boolean {
  const size = stores.upkeep.bytes();
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
