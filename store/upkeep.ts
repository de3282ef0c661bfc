import { openDriver, type Db } from "./driver.ts";
import { moveLog, StoreError } from "./open.ts";

/* The store as a file: what it has ever held, who holds it, copies of it, its log, and a lock beside it. */

const isDamage = /^SQLITE_(CORRUPT|NOTADB)/;

/** The process that calls the store's cues. */
export interface Owner {
  readonly pid: number;
  readonly address: string;
  readonly startedAt: number;
}

export interface UpkeepStore {
  /** Numbers that only ever grow, by table: a store that has fewer than it had has lost something. */
  sequences(): Record<string, number>;
  /** Whether anything but the invented demo is in it. */
  holdsOwn(): boolean;
  /** How large all of it is, what lies in the log as well. */
  bytes(): number;
  /** How many rows this process has written so far. */
  written(): number;
  owner(): Omit<Owner, "startedAt"> | undefined;
  own(owner: Owner): void;
  /**
   * What is broken in the store, in the engine's words; undefined where it is whole. It takes some 3 ms for each MB.
   * @throws the driver's error where it could not be looked at.
   */
  damage(): string | undefined;
  /** A consistent copy of all of it, as of one instant, in a new file. */
  copyTo(path: string): void;
  /** Whether a write moves the log into the file once it is long; it does, unless this says that another is about to. */
  moveLog(whenLong: boolean): void;
  /** Moves the log into the file, which can then be moved by itself. */
  intoOneFile(): void;
}

export function createUpkeepStore(db: Db): UpkeepStore {
  const written = db.prepare<[], { n: number }>("select total_changes() as n");
  return {
    bytes: () => pragmaOf(db, "page_count") * pragmaOf(db, "page_size"),
    written: () => written.get()?.n ?? 0,
    sequences() {
      const rows = db.prepare<[], { name: string; seq: number }>("select name, seq from sqlite_sequence");
      return Object.fromEntries(rows.all().map(({ name, seq }) => [name, seq]));
    },
    holdsOwn() {
      const own = db
        .prepare<[], { n: number }>(
          "select (select count(*) from classes where demo = 0) + (select count(*) from runs) as n",
        )
        .get();
      return (own?.n ?? 0) > 0;
    },
    owner: () => db.prepare<[], { pid: number; address: string }>("select pid, address from owner").get(),
    own({ pid, address, startedAt }) {
      db.prepare<[number, string, number]>(
        `insert into owner (only_row, pid, address, started_at) values (1, ?, ?, ?)
         on conflict (only_row) do update set pid = excluded.pid, address = excluded.address, started_at = excluded.started_at`,
      ).run(pid, address, startedAt);
    },
    damage: () => findDamage(db),
    copyTo: (path) => void db.prepare<[string]>("vacuum into ?").run(path),
    moveLog: (whenLong) => moveLog(db, whenLong),
    intoOneFile() {
      db.pragma("wal_checkpoint(TRUNCATE)");
      db.pragma("journal_mode = DELETE");
    },
  };
}

const pragmaOf = (db: Db, name: string): number => db.pragma(name, { simple: true }) as number;

/**
 * Locks a file beside the store until it is let go or the process ends: the lock is the file system's own, held by an open
 * transaction, so that a killed process lets go at once, and nothing has to time out. undefined: somebody else has it.
 * @throws StoreError ERR_LOCK_FILE where the file is no lock.
 */
export function lockFile(path: string): { release(): void } | undefined {
  const file = openDriver(path, { timeout: 0 });
  try {
    file.exec("begin exclusive");
  } catch (error) {
    file.close();
    const { code = "" } = error as { code?: string };
    if (code === "SQLITE_BUSY") return undefined;
    if (!isDamage.test(code)) throw error;
    throw new StoreError(
      "ERR_LOCK_FILE",
      `The lock file ${path} holds something else than a lock. Make sure no other Sinkside uses this folder, remove that file and start again.`,
    );
  }
  return {
    release() {
      file.exec("rollback");
      file.close();
    },
  };
}

/** A second connection that moves what it can of the log into the store without making anybody wait. */
export function openTidying(path: string): { tidy(): void; close(): void } {
  const db = openDriver(path, { fileMustExist: true, timeout: 0 });
  return { tidy: () => void db.pragma("wal_checkpoint(PASSIVE)"), close: () => void db.close() };
}

function findDamage(db: Db): string | undefined {
  try {
    const found = String(db.pragma("quick_check(1)", { simple: true }));
    return found === "ok" ? undefined : found;
  } catch (error) {
    if (isDamage.test((error as { code?: string }).code ?? "")) return String(error);
    throw error;
  }
}

/** The same of a store that others have open, looked at through a connection that only reads. */
export function findDamageAt(path: string): string | undefined {
  const db = openDriver(path, { fileMustExist: true, readonly: true, timeout: 5000 });
  try {
    return findDamage(db);
  } finally {
    db.close();
  }
}
