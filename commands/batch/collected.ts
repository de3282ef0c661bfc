import type { Stores } from "../../store/index.ts";
import { isFixer } from "../../store/shapes/batch.ts";
import { addCollected, collectedFrom, NOTHING } from "./silver.ts";
import type { Collected } from "../../store/shapes/shelf.ts";

/** What lies in the collecting vessel: all that went in, less what was handed over. */
export function collectedNow(stores: Pick<Stores, "batches" | "handovers">, classId: number): Collected {
  const into = stores.batches
    .list(classId)
    .filter(({ kind }) => isFixer(kind))
    .reduce((sum, batch) => addCollected(sum, collectedFrom(batch, stores.batches.lines(batch.id))), NOTHING);
  const out = stores.handovers.list(classId).reduce((sum, each) => addCollected(sum, each), NOTHING);
  return {
    ml: into.ml - out.ml,
    lowMg: Math.max(0, into.lowMg - out.lowMg),
    highMg: Math.max(0, into.highMg - out.highMg),
    measuredMl: Math.max(0, into.measuredMl - out.measuredMl),
  };
}
