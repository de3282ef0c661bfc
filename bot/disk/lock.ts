import Database from "better-sqlite3";
import { StoreError, type Db } from "../../store/open.ts";

export interface Owner {
  readonly pid: number;
  readonly address: string;
  readonly startedAt: number;
}

export interface Lock {
  release(): void;
}

/**
 * Makes this process the one that owns the store's cues. The lock is the file system's own, held by an open
 * transaction on a file beside the store: a killed process lets go at once, and nothing has to time out.
 * Others may still read and write the store; they call no cues.
 * @throws StoreError ERR_STORE_HELD where another process has it, naming that process.
 */
export function takeLock(storePath: string, db: Db, owner: Owner): Lock {
  const file = new Database(`${storePath}.lock`, { timeout: 0 });
  try {
    file.exec("begin exclusive");
  } catch (error) {
    file.close();
    if ((error as { code?: string }).code !== "SQLITE_BUSY") throw error;
    const holder = db.prepare<[], { pid: number; address: string }>("select pid, address from owner").get();
    const who = holder ? `process ${holder.pid}, whose room is at ${holder.address}` : "another process";
    throw new StoreError(
      "ERR_STORE_HELD",
      `The store at ${storePath} is held by ${who}. Use that one, stop it first, or set SINKSIDE_DATA to another folder.`,
    );
  }
  try {
    db.prepare<[number, string, number]>(
      `insert into owner (only_row, pid, address, started_at) values (1, ?, ?, ?)
       on conflict (only_row) do update set pid = excluded.pid, address = excluded.address, started_at = excluded.started_at`,
    ).run(owner.pid, owner.address, owner.startedAt);
  } catch (error) {
    file.close();
    throw error;
  }
  return {
    release() {
      file.exec("rollback");
      file.close();
    },
  };
}
