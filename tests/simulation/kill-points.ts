import Database from "better-sqlite3";

/*
 * Ends a simulated process between any two statements it puts to its store, inside a transaction as well as between two.
 * What a killed process still tries to do comes to nothing.
 */

export class Killed extends Error {
  constructor() {
    super("the process is gone");
    this.name = "Killed";
  }
}

type Db = Database.Database;
type Call = (this: Database.Statement, ...given: unknown[]) => unknown;
const NAMES = ["run", "get", "all"] as const;

export interface KillPoints {
  /** From now on every statement put to this store calls `before` first, which may throw. */
  watch(db: Db, before: () => void): void;
  uninstall(): void;
}

export function installKillPoints(): KillPoints {
  const watched = new WeakMap<Db, () => void>();
  const probe = new Database(":memory:");
  const prototype = Object.getPrototypeOf(probe.prepare("select 1")) as Record<string, Call>;
  probe.close();
  const real = NAMES.map((name) => [name, prototype[name] as Call] as const);
  for (const [name, call] of real) {
    prototype[name] = function watchedCall(...given) {
      watched.get(this.database)?.();
      return call.apply(this, given);
    };
  }
  return {
    watch: (db, before) => void watched.set(db, before),
    uninstall() {
      for (const [name, call] of real) prototype[name] = call;
    },
  };
}
