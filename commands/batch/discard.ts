import type { Context } from "../define.ts";
import type { Batch } from "../../store/shapes/batch.ts";
import type { Destination } from "../../store/shapes/ledger.ts";
import { enterLine } from "./enter.ts";
import { readState } from "./options.ts";

/** Writes that all of a bottle is thrown away, in the caller's name. */
export function discardWhole(context: Context, batch: Batch, to: Destination, note: string): void {
  const ml = Math.max(0, Math.round(readState(context, batch).volumeMl));
  const { stores, person, now } = context;
  const line = { batchId: batch.id, key: null, runId: null, atMs: now, person, about: null };
  enterLine(stores, batch, { ...line, body: { kind: "discarded", ml, to, isAll: true, note } }, now);
}
