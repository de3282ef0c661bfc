import { keepRun } from "../../commands/run/keep.ts";
import { copyFileSync, existsSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { advance } from "../../commands/run/machine.ts";
import { inspectStore, type Holding } from "../../store/backup.ts";
import { openStores, type Stores } from "../../store/index.ts";
import { StoreError } from "../../store/open.ts";
import { lockFile } from "../../store/upkeep.ts";
import { flush } from "./backup.ts";
import { writeMarker } from "./marker.ts";

export interface Restored {
  readonly holding: Holding;
  /** Runs that were under way in the backup, ended in the log. */
  readonly stopped: number;
  /** Messages the backup still owed, which are not said any more. */
  readonly unsaid: number;
  /** Where the store that was there is now; null where there was none. */
  readonly aside: string | null;
}

/** A backup younger than this may be of the class that is going on: its runs go on. */
const STILL_GOING_MS = 10 * 60_000;

/**
 * Puts a backup in the place of the store. The file that was there is moved aside, never removed.
 * @throws StoreError where the backup is damaged, a bot is using the store, or a healthy store is there and
 * `replaces` is false.
 */
export function putBack(backup: string, storePath: string, replaces: boolean, now: number): Restored {
  const holding = inspectStore(backup);
  refuseInUse(storePath);
  const present = presentStore(storePath);
  if (present && !replaces)
    throw new StoreError(
      "ERR_STORE_THERE",
      `There is a healthy store at ${storePath} with ${present.runs} runs and ${present.rolls} rolls. To put the backup in its place, add --replace: it is moved aside, not removed.`,
    );
  const part = `${storePath}.part`;
  rmSync(part, { force: true });
  copyFileSync(backup, part);
  const { stopped, unsaid } = settleOld(part, (holding.newestAt ?? 0) < now - STILL_GOING_MS, now);
  flush(part);
  const aside = moveAside(storePath, now);
  renameSync(part, storePath);
  flush(dirname(storePath));
  return { holding, stopped, unsaid, aside };
}

/** The same lock the bot holds: it is let go at once, since this process only looks. */
function refuseInUse(storePath: string): void {
  const lock = lockFile(`${storePath}.lock`);
  if (!lock)
    throw new StoreError(
      "ERR_STORE_HELD",
      `A bot is using the store at ${storePath}. Stop it first; nothing was changed.`,
    );
  lock.release();
}

/** undefined where what is there can't be used anyway, or holds nothing. */
function presentStore(storePath: string): Holding | undefined {
  try {
    const present = inspectStore(storePath);
    return present.runs + present.rolls + present.batches > 0 ? present : undefined;
  } catch {
    return undefined;
  }
}

function moveAside(storePath: string, now: number): string | null {
  const stamp = new Date(now).toISOString().replaceAll(/[:.]/g, "-");
  const aside = `${storePath}.before-${stamp}`;
  // Its log goes along: without it the newest entries would be lost, and with another store it would be poison.
  const there = ["", "-wal", "-shm"].filter((side) => existsSync(storePath + side));
  for (const side of there) renameSync(storePath + side, aside + side);
  return there.includes("") ? aside : null;
}

/**
 * What a backup has under way is long over: films are out of their tanks, messages were said. Its runs are ended in the
 * log, and nothing it owed is said again.
 */
function settleOld(path: string, isOld: boolean, now: number): { stopped: number; unsaid: number } {
  const stores = openStores(path);
  try {
    const counts = isOld
      ? stores.atomically(() => ({ unsaid: dropOwed(stores, now), stopped: stopRuns(stores, now) }))
      : { stopped: 0, unsaid: 0 };
    writeMarker(path.replace(/\.part$/, ""), stores.upkeep, now);
    stores.upkeep.intoOneFile();
    return counts;
  } finally {
    stores.close();
  }
}

function stopRuns(stores: Stores, now: number): number {
  const open = stores.classes.list().flatMap(({ id }) => stores.runs.open(id));
  for (const run of open) {
    const ended = advance(run, { kind: "stop", reason: "the store was restored from a backup", atMs: now });
    if (ended.ok) keepRun(stores, ended.value, now);
  }
  return open.length;
}

const dropOwed = (stores: Stores, now: number): number =>
  stores.outbox.dropAll("the store was restored from a backup", now);
