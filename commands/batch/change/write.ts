import { UserError, type Context } from "../../define.ts";
import type { Batch } from "../../../store/shapes/batch.ts";
import type { LedgerLine, LineBody } from "../../../store/shapes/ledger.ts";
import { enterLine } from "../enter.ts";
import { findBatch, readState } from "../options.ts";
import * as words from "./reply.ts";

/* A line of a ledger in somebody's name. */

/** Undefined where the line was there already. */
export function write(context: Context, batch: Batch, body: LineBody): LedgerLine | undefined {
  const line = {
    batchId: batch.id,
    key: null,
    runId: null,
    atMs: context.now,
    person: context.person,
    about: null,
  };
  return enterLine(context.stores, batch, { ...line, body }, context.now);
}

export function standing(context: Context, text: string): Batch {
  const batch = findBatch(context, text);
  if (readState(context, batch).standing === "discarded")
    throw new UserError("ERR_DISCARDED", words.discarded(batch));
  return batch;
}
