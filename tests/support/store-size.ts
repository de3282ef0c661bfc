import type { OpenedStores } from "../../store/index.ts";

/** What a store's file is made of, in bytes: what a school keeps for ever, what is cleared by age, and pages free to be used again. */
export interface StoreSize {
  readonly file: number;
  readonly kept: number;
  readonly passing: number;
  readonly free: number;
}

/** The logs with their index of words and their photos, the bottles with their ledgers, and what a class has set up. */
const KEPT =
  /^(sqlite_autoindex_)?(rolls?(_|$)|prints?(_|$)|papers|enlargers|strips|ledger|batch|shelf|handovers|sheets|tanks|members|classes|roll_values|sqlite_schema)/;

export function sizeOf({ db }: Pick<OpenedStores, "db">): StoreSize {
  const page = db.pragma("page_size", { simple: true }) as number;
  const trees = db.prepare("select name, sum(pgsize) as bytes from dbstat group by name").all() as {
    name: string;
    bytes: number;
  }[];
  const sum = (isWanted: (name: string) => boolean): number =>
    trees.filter(({ name }) => isWanted(name)).reduce((total, { bytes }) => total + bytes, 0);
  return {
    file: page * (db.pragma("page_count", { simple: true }) as number),
    kept: sum((name) => KEPT.test(name)),
    passing: sum((name) => !KEPT.test(name)),
    free: page * (db.pragma("freelist_count", { simple: true }) as number),
  };
}
