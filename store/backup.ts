import { closeSync, fsyncSync, openSync, readSync } from "node:fs";
import { copyPages, openDriver, type Db } from "./driver.ts";
import { MIGRATIONS } from "./migrations.ts";
import { StoreError } from "./open.ts";

/* Copies of a store: made while it is in use, and looked into before anybody relies on them. */

/** What a store holds, as an operator would ask. */
export interface Holding {
  readonly classes: readonly string[];
  readonly runs: number;
  readonly openRuns: number;
  readonly rolls: number;
  readonly batches: number;
  /** The newest thing written in it, ms since the epoch; null in an empty one. */
  readonly newestAt: number | null;
}

/** 256 kB. */
const PAGES_AT_ONCE = 64;

/**
 * The same as `copyStore` while calls are made, whose commits wait for the same disk: what is written is flushed piece by
 * piece, since what lies in memory until the end holds every commit up for as long as all of it takes. `rest` is called after
 * each piece, and may block.
 * @throws the driver's error, as where the disk is full.
 */
export function copyBesideCalls(path: string, to: string, rest: () => void): void {
  const db = openDriver(path, { fileMustExist: true, readonly: true, timeout: 5000 });
  let file: number | undefined;
  try {
    copyPages(db, to, PAGES_AT_ONCE, () => {
      fsyncSync((file ??= openSync(to, "r")));
      rest();
    });
  } finally {
    // Not before: the system lets go of a process's locks on a file with the first of its openings that is closed.
    if (file !== undefined) closeSync(file);
    db.close();
  }
  const copy = openDriver(to, { fileMustExist: true });
  // One file by itself, no log beside it.
  copy.pragma("journal_mode = DELETE");
  copy.close();
}

/**
 * Writes a consistent copy to `to`, which must not exist. The process that holds the store goes on meanwhile; the copy
 * is as of one instant.
 * @throws the driver's error, as where the disk is full.
 */
export function copyStore(path: string, to: string): void {
  const db = openDriver(path, { fileMustExist: true, readonly: true, timeout: 5000 });
  try {
    db.prepare("vacuum into ?").run(to);
  } finally {
    db.close();
  }
}

/**
 * Hashes of the people erased from a store, as it remembers them.
 * @throws the driver's error where it can't be read, or is older than such hashes.
 */
export function erasedIn(path: string): string[] {
  const db = openDriver(path, { fileMustExist: true, readonly: true, timeout: 5000 });
  try {
    return db
      .prepare<[], { hash: string }>("select hash from erased_people")
      .all()
      .map(({ hash }) => hash);
  } finally {
    db.close();
  }
}

/**
 * Opens a store for reading only and examines all of it.
 * @throws StoreError where it is damaged, empty, newer than this program or no store at all.
 */
export function inspectStore(path: string): Holding {
  let db: Db;
  try {
    db = openDriver(path, { fileMustExist: true, readonly: true, timeout: 5000 });
  } catch {
    throw new StoreError("ERR_NO_STORE", `There is no store at ${path}, or it can't be read.`);
  }
  try {
    return inspect(db, path);
  } catch (error) {
    if (error instanceof StoreError) throw error;
    throw new StoreError("ERR_DAMAGED", `The file ${path} is damaged, or no store: ${String(error)}.`);
  } finally {
    db.close();
  }
}

function inspect(db: Db, path: string): Holding {
  const faults = db.pragma("integrity_check(3)") as { integrity_check: string }[];
  if (faults[0]?.integrity_check !== "ok") {
    const first = faults[0]?.integrity_check ?? "it could not be examined";
    throw new StoreError("ERR_DAMAGED", `The file ${path} is damaged: ${first}.`);
  }
  const version = db.pragma("user_version", { simple: true }) as number;
  if (version === 0) throw new StoreError("ERR_EMPTY", `The file ${path} holds no store.`);
  if (version > MIGRATIONS.length) {
    throw new StoreError(
      "ERR_NEWER_STORE",
      `The file ${path} was written by a newer Sinkside. Use that one.`,
    );
  }
  if ((db.pragma("foreign_key_check") as unknown[]).length > 0)
    throw new StoreError(
      "ERR_DAMAGED",
      `The file ${path} is damaged: some entries lack what they belong to.`,
    );
  const count = (sql: string): number => (db.prepare(sql).get() as { n: number }).n;
  return {
    classes: (db.prepare("select name from classes order by id").all() as { name: string }[]).map(
      ({ name }) => name,
    ),
    runs: count("select count(*) as n from runs"),
    openRuns: count("select count(*) as n from runs where phase_kind in ('waiting', 'running')"),
    rolls: count("select count(*) as n from rolls"),
    batches: version > 1 ? count("select count(*) as n from batches") : 0,
    newestAt: newestIn(db),
  };
}

function newestIn(db: Db): number | null {
  const row = db
    .prepare(
      `select max(at) as at from (
         select max(started_at) as at from runs union all select max(ended_at) from rolls
         union all select max(decided_at) from outbox union all select max(at) from messages
         union all select max(made_at) from plans union all select max(created_at) from classes)`,
    )
    .get() as { at: number | null };
  return row.at;
}

/** Whether the file is a store at all: false for a new, an emptied, or a half-copied one. Damage is not told here. */
export function isWritten(path: string): boolean {
  try {
    // To open it is to read its whole log, and whoever asks opens it anyway.
    if (versionInFile(path) > 0) return true;
    const db = openDriver(path, { fileMustExist: true, readonly: true, timeout: 5000 });
    try {
      return (db.pragma("user_version", { simple: true }) as number) > 0;
    } finally {
      db.close();
    }
  } catch {
    // Not for this function to judge: opening it will say what is wrong.
    return true;
  }
}

/** The `user_version` as it stood when the log was last moved into the file: at byte 60 of 100 (SQLite's file format, 1.3). */
function versionInFile(path: string): number {
  const file = openSync(path, "r");
  try {
    const header = Buffer.alloc(100);
    return readSync(file, header) === header.length ? header.readUInt32BE(60) : 0;
  } finally {
    closeSync(file);
  }
}
