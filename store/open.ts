import { openDriver, type Db, type OpenedDb } from "./driver.ts";
import { MIGRATIONS } from "./migrations.ts";

export type { Db };

/** A store that cannot be used; the sentence says what is wrong and what to do. */
export class StoreError extends Error {
  readonly code: string;
  constructor(code: string, sentence: string) {
    super(sentence);
    this.name = "StoreError";
    this.code = code;
  }
}

/**
 * Opens the database file (`:memory:` for tests) and brings it up to date.
 * FULL, since WAL alone may lose the last commits when the power goes.
 * @throws StoreError where the file is newer than the program, damaged, or can't be opened.
 */
export function openDb(path: string): OpenedDb {
  let db: OpenedDb;
  try {
    db = openDriver(path);
    db.pragma("journal_mode = WAL");
  } catch (error) {
    throw explainOpening(path, error);
  }
  db.pragma("synchronous = FULL");
  db.pragma("foreign_keys = ON");
  // What is deleted is overwritten: erased means gone, also from free pages.
  db.pragma("secure_delete = ON");
  db.pragma("busy_timeout = 5000");
  // What a savepoint would take back is kept in memory, not in a file beside: it is as much as one portion of work writes.
  db.pragma("temp_store = MEMORY");
  moveLog(db, true);
  try {
    migrate(db, MIGRATIONS);
  } catch (error) {
    db.close();
    throw explainOpening(path, error);
  }
  return db;
}

/**
 * Whether whoever writes moves the log into the database once it is long. It takes a while in which no cue is called: the bot
 * has a thread for it, and does it itself only where that does not keep up.
 */
export function moveLog(db: Db, whenLong: boolean): void {
  db.pragma(`wal_autocheckpoint = ${whenLong ? 16_000 : 0}`);
}

/**
 * Applies what is missing, each entry in one transaction with its version number: a failing one leaves neither
 * table nor number, and a second call does no harm.
 */
export function migrate(db: Db, migrations: readonly string[]): void {
  const readVersion = (): number => db.pragma("user_version", { simple: true }) as number;
  if (readVersion() > migrations.length) {
    throw new StoreError(
      "ERR_NEWER_STORE",
      `The store was written by a newer Sinkside (version ${readVersion()}, this one knows ${migrations.length}). Start the newer program, or restore a backup made by this one.`,
    );
  }
  for (let index = readVersion(); index < migrations.length; index += 1) {
    db.transaction(() => {
      // Read again inside: another process may have been faster.
      if (readVersion() !== index) return;
      db.exec(migrations[index] ?? "");
      db.pragma(`user_version = ${index + 1}`);
    }).immediate();
  }
}

function explainOpening(path: string, error: unknown): Error {
  if (error instanceof StoreError) return error;
  const code = (error as { code?: string }).code ?? "";
  const say = (sentence: string): StoreError => new StoreError(code, sentence);
  if (code === "SQLITE_NOTADB" || code.startsWith("SQLITE_CORRUPT")) {
    return say(`The store at ${path} is damaged. Move the file aside and restore the newest backup.`);
  }
  // The driver tells a missing folder by a TypeError of its own, without a code.
  const isMissing = error instanceof TypeError;
  if (isMissing || code.startsWith("SQLITE_CANTOPEN") || code.startsWith("SQLITE_READONLY")) {
    return say(
      `The store at ${path} can't be opened for writing. Check the folder, its rights and the disk.`,
    );
  }
  if (code === "SQLITE_FULL" || code.startsWith("SQLITE_IOERR")) {
    return say(`The disk of the store at ${path} is full or failing. Free some space and start again.`);
  }
  if (code === "SQLITE_BUSY")
    return say(`The store at ${path} is held by another program. Close it and start again.`);
  return error instanceof Error ? error : new Error(String(error));
}

/** A fault of the disk, not of a row: what can't be recorded must not be said. */
export function isStorageFault(error: unknown): boolean {
  const code = (error as { code?: string }).code ?? "";
  return /^SQLITE_(FULL|IOERR|READONLY|CORRUPT|NOTADB|BUSY|CANTOPEN)/.test(code);
}
