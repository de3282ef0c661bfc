import Database from "better-sqlite3";

export type Db = Database.Database;
export type OpenOptions = Pick<Database.Options, "fileMustExist" | "readonly" | "timeout">;

/**
 * All that the driver made. Nothing of it may be freed while the process lives: compiled for Node 24.19 and newer, what the
 * collector frees outside of any JavaScript ends the process (`RemoveEnvironmentCleanupHook`, exit code 134), be it in the
 * middle of a class or at the stop. Of what is closed, only the husk is kept.
 */
const kept = new Set<unknown>();

/**
 * A connection that makes each statement once and keeps it, those of `pragma` as well: the driver itself would make them anew
 * each time and leave them to the collector. Statements have no moods here (`pluck`, `raw`, `bind`) and are not iterated: both
 * would show in whoever else asks for the same one.
 * @throws what the driver throws where the file can't be opened.
 */
export function openDriver(path: string, options: OpenOptions = {}): Db {
  const db = new Database(path, options);
  const statements = new Map<string, Database.Statement>();
  const make = (sql: string): Database.Statement => Database.prototype.prepare.call(db, sql);
  const find = (sql: string): Database.Statement => {
    const statement = statements.get(sql) ?? make(sql);
    statements.set(sql, statement);
    return statement;
  };

  function pragma(words: string, { simple = false }: Database.PragmaOptions = {}): unknown {
    // One that sets something may do so where it is made, so it is made each time.
    const statement = words.includes("=") ? make(`pragma ${words}`) : find(`pragma ${words}`);
    kept.add(statement);
    if (!statement.reader) return void statement.run();
    const rows = statement.all() as Readonly<Record<string, unknown>>[];
    return simple ? Object.values(rows[0] ?? {})[0] : rows;
  }

  kept.add(db).add(statements);
  return Object.assign(db, { prepare: find as Db["prepare"], pragma });
}

/** How much is kept: it must not grow with what is done. */
export const countKept = (): number =>
  [...kept].reduce<number>((sum, each) => sum + (each instanceof Map ? each.size : 1), 0);
