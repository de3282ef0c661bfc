import { closeSync, fsyncSync, openSync, readFileSync, renameSync, writeSync } from "node:fs";
import { z } from "zod";
import { readSequences } from "../../store/backup.ts";
import type { Db } from "../../store/open.ts";

/* A small file beside the store that knows what was in it: without it an emptied store looks like a new one. */

const markerSchema = z.object({
  at: z.int(),
  /** Highest numbers given, by table. */
  sequences: z.record(z.string(), z.int()),
  /** Whether anything but the invented demo was in it. */
  held: z.boolean(),
});
export type Marker = z.output<typeof markerSchema>;

export const markerPath = (storePath: string): string => `${storePath}.known`;

/** undefined where there is none that can be read. */
export function readMarker(storePath: string): Marker | undefined {
  try {
    const parsed = markerSchema.safeParse(JSON.parse(readFileSync(markerPath(storePath), "utf8")));
    return parsed.success ? parsed.data : undefined;
  } catch {
    return undefined;
  }
}

/** Writes it so that a crash leaves the old one or the new one. It never runs ahead of what is safe in the store. */
export function writeMarker(storePath: string, db: Db, now: number): Marker {
  const sequences = readSequences(db);
  const { n: own } = db
    .prepare("select (select count(*) from classes where demo = 0) + (select count(*) from runs) as n")
    .get() as { n: number };
  const marker = { at: Math.round(now), sequences, held: own > 0 || (sequences["rolls"] ?? 0) > 0 };
  const part = `${markerPath(storePath)}.part`;
  const file = openSync(part, "w");
  try {
    writeSync(file, `${JSON.stringify(marker)}\n`);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(part, markerPath(storePath));
  return marker;
}

/** Tables whose numbers have gone back, with how many entries each has lost. */
export function listLosses(marker: Marker, db: Db): { table: string; lost: number }[] {
  const now = readSequences(db);
  return Object.entries(marker.sequences).flatMap(([table, seq]) => {
    const lost = seq - (now[table] ?? 0);
    return lost > 0 ? [{ table, lost }] : [];
  });
}
