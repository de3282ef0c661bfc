import { closeSync, fsyncSync, openSync, readFileSync, renameSync, writeSync } from "node:fs";
import { z } from "zod";
import type { Stores } from "../../store/index.ts";
import type { UpkeepStore } from "../../store/upkeep.ts";

/* A small file beside the store that knows what was in it: without it an emptied store looks like a new one. */

const markerSchema = z.object({
  at: z.int(),
  /** Highest numbers given, by table. */
  sequences: z.record(z.string(), z.int()),
  /** Whether anything but the invented demo was in it. */
  held: z.boolean(),
  /** Hashes of people who were erased: where the store itself is lost, a backup must not bring them back unasked either. */
  erased: z.array(z.string()).default([]),
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
export function writeMarker(
  storePath: string,
  { upkeep, erasures }: Pick<Stores, "upkeep" | "erasures">,
  now: number,
): Marker {
  const sequences = upkeep.sequences();
  const held = upkeep.holdsOwn() || (sequences["rolls"] ?? 0) > 0;
  const marker = { at: Math.round(now), sequences, held, erased: erasures.people() };
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
export function listLosses(marker: Marker, upkeep: UpkeepStore): { table: string; lost: number }[] {
  const now = upkeep.sequences();
  return Object.entries(marker.sequences).flatMap(([table, seq]) => {
    const lost = seq - (now[table] ?? 0);
    return lost > 0 ? [{ table, lost }] : [];
  });
}
