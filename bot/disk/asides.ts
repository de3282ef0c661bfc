import { readdirSync, rmSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/* Stores that a restore has put out of the way. They hold what people may have erased since: they don't stay for good. */

const MOST_KEPT = 2;
const LONGEST_MS = 30 * 24 * 3600_000;

/** `sinkside.db.before-2026-01-15T18-00-00-000Z`, and what lies beside it. */
const ASIDE = /\.before-(\d{4}-\d\d-\d\d)T(\d\d)-(\d\d)-(\d\d)-(\d{3})Z(-wal|-shm)?$/;

/** Removes all but the newest, and those too old; how many stores. */
export function rotateAsides(storePath: string, now: number): number {
  const folder = dirname(storePath);
  const own = `${basename(storePath)}.before-`;
  const files = readdirSync(folder).flatMap((name) => {
    const [, day, hour, minute, second, ms] = ASIDE.exec(name) ?? [];
    if (!name.startsWith(own) || day === undefined) return [];
    return [{ name, at: Date.parse(`${day}T${hour}:${minute}:${second}.${ms}Z`) }];
  });
  const moments = [...new Set(files.map(({ at }) => at))].sort((a, b) => b - a);
  const gone = new Set(moments.filter((at, index) => index >= MOST_KEPT || at < now - LONGEST_MS));
  for (const { name, at } of files) if (gone.has(at)) rmSync(join(folder, name), { force: true });
  return gone.size;
}
