import type { Stores } from "../../store/index.ts";
import type { Batch } from "../../store/shapes/batch.ts";
import { paceOf, type UseRate } from "./forecast.ts";

const EIGHT_WEEKS_MS = 56 * 24 * 3_600_000;

/** The class's pace with baths of this kind; of a developer, with this product. */
export function paceFor(stores: Pick<Stores, "batches">, batch: Batch, now: number): UseRate | null {
  const same = new Set(
    stores.batches
      .list(batch.classId)
      .filter(
        ({ kind, product }) =>
          kind === batch.kind &&
          (kind !== "developer" || product.toLowerCase() === batch.product.toLowerCase()),
      )
      .map((each) => each.id),
  );
  const uses = stores.batches
    .linesSince(batch.classId, "used", now - EIGHT_WEEKS_MS)
    .flatMap(({ batchId, atMs, body }) =>
      body.kind === "used" && same.has(batchId) ? [{ atMs, areaSqIn: body.areaSqIn }] : [],
    );
  return paceOf(uses, now);
}
