import Database from "better-sqlite3";

export type Db = Database.Database;
export type OpenOptions = Pick<Database.Options, "fileMustExist" | "readonly" | "timeout">;

/**
 * All that the driver made. Nothing of it may be freed while the process lives: compiled for Node 24.19 and newer, what the
 * collector frees outside of any JavaScript ends the process (`RemoveEnvironmentCleanupHook`, exit code 134), be it in the
 * middle of a class or at the stop. Of what is closed, only the husk is kept.
 */
const kept = new Set<unknown>();

/** What is asked of a statement here. It has no moods (`pluck`, `bind`): they would show in whoever else asks for the same. */
type Uses = Pick<Database.Statement, "get" | "all" | "run">;

export interface LateStatement extends Uses {
  /** Makes it now, if it is not made yet. */
  make(): Database.Statement;
  /** One of its own that gives each row as a list. */
  raw(): LateStatement;
}

/** The store has some three hundred, and a first call needs a tenth of them: to make all takes longer than the call. */
function createLate(make: () => Database.Statement, raw: () => LateStatement): LateStatement {
  let made: Database.Statement | undefined;
  const use = (): Database.Statement => (made ??= make());
  return {
    make: use,
    raw,
    get: (...given) => use().get(...given),
    all: (...given) => use().all(...given),
    run: (...given) => use().run(...given),
  };
}

/** A connection of ours. */
export interface OpenedDb extends Db {
  /** Every statement that was asked for so far. */
  statements(): Iterable<LateStatement>;
}

/**
 * A connection that makes each statement once, when it is first used, and keeps it, those of `pragma` as well: the driver itself
 * would make them anew each time and leave them to the collector.
 * @throws what the driver throws where the file can't be opened.
 */
export function openDriver(path: string, options: OpenOptions = {}): OpenedDb {
  const db = new Database(path, options);
  const statements = new Map<string, LateStatement>();
  const make = (sql: string): Database.Statement => Database.prototype.prepare.call(db, sql);
  const find = (sql: string, isRaw = false): LateStatement => {
    const name = isRaw ? `${sql} as lists` : sql;
    const makeIt = () => (isRaw ? make(sql).raw() : make(sql));
    const statement = statements.get(name) ?? createLate(makeIt, () => find(sql, true));
    statements.set(name, statement);
    return statement;
  };

  function pragma(words: string, { simple = false }: Database.PragmaOptions = {}): unknown {
    // One that sets something may do so where it is made, so it is made each time.
    const statement = words.includes("=") ? make(`pragma ${words}`) : find(`pragma ${words}`).make();
    kept.add(statement);
    if (!statement.reader) return void statement.run();
    const rows = statement.all() as Readonly<Record<string, unknown>>[];
    return simple ? Object.values(rows[0] ?? {})[0] : rows;
  }

  kept.add(db).add(statements);
  return Object.assign(db, {
    prepare: find as unknown as Db["prepare"],
    pragma,
    statements: () => statements.values(),
  });
}

/** The driver's own handle of a copy that is being made: `Database.backup` waits for turns of a loop, and lets go of it. */
interface Copying {
  transfer(pages: number): { readonly remainingPages: number };
  close(): void;
}

interface Native {
  backup(db: Db, attached: "main", to: string, isNew: true): Copying;
}

/**
 * Copies all pages of a connection, as they are in one instant, to a file that must not exist; `pace` is called after so many.
 * @throws the driver's error where one of the files can't be read or written; no file is left then.
 */
export function copyPages(db: Db, to: string, pages: number, pace: () => void): void {
  const [key] = Object.getOwnPropertySymbols(db);
  const native = key && (db as unknown as Readonly<Record<symbol, Native>>)[key];
  if (!native) throw new TypeError("the driver has no handle of its own");
  // One snapshot for all of it: else it begins anew whenever somebody writes.
  db.exec("begin");
  try {
    db.pragma("schema_version");
    const copying = native.backup(db, "main", to, true);
    kept.add(copying);
    try {
      while (copying.transfer(pages).remainingPages > 0) pace();
    } finally {
      copying.close();
    }
  } finally {
    db.exec("commit");
  }
}

/** How much is kept: it must not grow with what is done. */
export const countKept = (): number =>
  [...kept].reduce<number>((sum, each) => sum + (each instanceof Map ? each.size : 1), 0);
