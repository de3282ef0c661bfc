import { existsSync, mkdirSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { openStores } from "../../store/index.ts";
import { StoreError } from "../../store/open.ts";
import type { ShardStore } from "../../store/shards.ts";
import { dataOf, ownerOf, type Shard } from "./shard.ts";

/** Whoever looks for a store that is gone from its place finds it under this name. */
const ASIDE = (): string => `before-${new Date().toISOString().replaceAll(/[:.]/g, "-")}`;

/**
 * Gives each of `count` processes the store of its classes. Called by the first process before any cue: `own` is its own
 * store. To go from m to n processes, n a multiple of m, store i is copied for i + m, i + 2m …, and then each drops what
 * is another's. A class's old store lets it go last, so that a crash at any point leaves it whole; it is then done again.
 * @throws StoreError ERR_SHARDS for any other change of number.
 */
export function splitStores(data: string, own: ShardStore, count: number): void {
  const before = own.count();
  if (before === count) return;
  if (count % before !== 0) throw countFault(before, count);
  // The first store last: its number says how far this has come.
  for (let from = before - 1; from >= 0; from -= 1) {
    const opened = from === 0 ? undefined : openStores(pathOf(data, from));
    try {
      splitOne(data, opened?.shards ?? own, { id: from, count: before }, count);
    } finally {
      opened?.close();
    }
  }
}

/**
 * A process that is not the first must find the store made for it.
 * @throws StoreError ERR_SHARDS.
 */
export function checkShard(own: ShardStore, { count }: Shard): void {
  const kept = own.count();
  if (kept !== count) throw countFault(kept, count);
}

function splitOne(data: string, own: ShardStore, from: Shard, count: number): void {
  if (own.count() === count) return;
  for (let to = from.id + from.count; to < count; to += from.count) {
    const path = pathOf(data, to);
    mkdirSync(dataOf(data, to), { recursive: true });
    const part = `${path}.part`;
    for (const side of ["", "-wal", "-shm"]) rmSync(part + side, { force: true });
    own.copyTo(part);
    const copy = openStores(part);
    copy.shards.dropOthers((key) => ownerOf(key, count) === to, count);
    copy.upkeep.intoOneFile();
    copy.close();
    // Never over what may be the only copy of something.
    const aside = ASIDE();
    for (const side of ["", "-wal", "-shm"])
      if (existsSync(path + side)) renameSync(path + side, `${path}.${aside}${side}`);
    renameSync(part, path);
  }
  own.dropOthers((key) => ownerOf(key, count) === from.id, count);
}

const pathOf = (data: string, id: number): string => join(dataOf(data, id), "sinkside.db");

function countFault(before: number, count: number): StoreError {
  return new StoreError(
    "ERR_SHARDS",
    `The classes are spread over ${before} ${before === 1 ? "process" : "processes"}, and DISCORD_SHARDS is ${count}. Set it to ${before}, or to a multiple of it to spread them further.`,
  );
}
