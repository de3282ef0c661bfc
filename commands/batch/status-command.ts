import { z } from "zod";
import { defineCommand, type Context } from "../define.ts";
import type { Batch } from "./batch.ts";
import { forecastOf, paceOf, type Pace } from "./forecast.ts";
import { batchOption, completeBatch, findBatch, readState } from "./options.ts";
import { gaugesPicture } from "./picture.ts";
import { traceOf } from "./trace.ts";
import * as words from "./status-reply.ts";

const PAGE_SIZE = 12;
const EIGHT_WEEKS_MS = 56 * 24 * 3_600_000;

export const batchStatus = defineCommand({
  name: "batch status",
  summary: "Every bottle: what is left, how old, how fast it clears, how long it will last",
  options: z.object({ batch: batchOption.optional().describe("Only this bottle, like B3") }),
  who: "student",
  visibility: "private",
  rest: "batch",
  complete: { batch: completeBatch },
  handle({ batch: text }, context) {
    const batches =
      text === undefined ? context.stores.batches.standing(context.class.id) : [findBatch(context, text)];
    const shown = batches.map((batch) => {
      const state = readState(context, batch);
      return { batch, state, forecast: forecastOf(state, paceFor(context, batch), context.now) };
    });
    const traces = batches.map((batch) =>
      traceOf(batch, context.stores.batches.lines(batch.id), context.now),
    );
    const pictures = shown.length > 0 ? [gaugesPicture(traces, context.now)] : [];
    const only = text === undefined ? undefined : shown[0];
    if (only) return { ...words.oneReply(only, paceFor(context, only.batch)), pictures };
    return { ...words.allReply(shown, context.now), pictures };
  },
});

/** The class's pace with baths of this kind; of a developer, with this product. */
function paceFor({ stores, class: { id }, now }: Context, batch: Batch): Pace | null {
  const same = new Set(
    stores.batches
      .list(id)
      .filter(
        ({ kind, product }) =>
          kind === batch.kind &&
          (kind !== "developer" || product.toLowerCase() === batch.product.toLowerCase()),
      )
      .map((each) => each.id),
  );
  const uses = stores.batches
    .linesSince(id, "used", now - EIGHT_WEEKS_MS)
    .flatMap(({ batchId, atMs, body }) =>
      body.kind === "used" && same.has(batchId) ? [{ atMs, areaSqIn: body.areaSqIn }] : [],
    );
  return paceOf(uses, now);
}

export const batchLedger = defineCommand({
  name: "batch ledger",
  summary: "Every line of one bottle: mixed, used, tested, topped up, discarded, corrected",
  options: z.object({
    batch: batchOption.describe("Which bottle, like B3"),
    page: z.coerce.number().int().min(1).max(999).optional().describe("Page; the newest if left out"),
  }),
  who: "student",
  visibility: "private",
  rest: "batch",
  complete: { batch: completeBatch },
  handle({ batch: text, page }, context) {
    const batch = findBatch(context, text);
    const lines = context.stores.batches.lines(batch.id);
    const pages = Math.max(1, Math.ceil(lines.length / PAGE_SIZE));
    const shown = Math.min(page ?? pages, pages);
    return words.ledgerReply(batch, readState(context, batch), lines, shown, PAGE_SIZE);
  },
});
