import { z } from "zod";
import { defineCommand } from "../../define.ts";
import { forecastOf } from "../forecast.ts";
import { batchOption, completeBatch, findBatch, readState } from "../options.ts";
import { paceFor } from "../pace.ts";
import { gaugesPicture } from "../picture.ts";
import { withLeftOut } from "../../unreadable.ts";
import { traceOf } from "../trace.ts";
import * as words from "./reply.ts";

const PAGE_SIZE = 12;

export const batchStatus = defineCommand({
  name: "batch status",
  summary: "Every bottle: what is left, how old, how fast it clears, how long it will last",
  options: () => ({ batch: batchOption.optional().describe("Only this bottle, like B3") }),
  who: "student",
  visibility: "private",
  rest: "batch",
  complete: { batch: completeBatch },
  handle({ batch: text }, context) {
    const batches =
      text === undefined ? context.stores.batches.standing(context.class.id) : [findBatch(context, text)];
    const shown = batches.map((batch) => {
      const state = readState(context, batch);
      return {
        batch,
        state,
        forecast: forecastOf(state, paceFor(context.stores, batch, context.now), context.now),
      };
    });
    const traces = batches.map((batch) =>
      traceOf(batch, context.stores.batches.lines(batch.id), context.now),
    );
    const pictures = shown.length > 0 ? [gaugesPicture(traces, context.now)] : [];
    const only = text === undefined ? undefined : shown[0];
    if (only) return { ...words.oneReply(only, paceFor(context.stores, only.batch, context.now)), pictures };
    return withLeftOut(context, ["batch"], { ...words.allReply(shown, context.now), pictures });
  },
});

export const batchLedger = defineCommand({
  name: "batch ledger",
  summary: "Every line of one bottle: mixed, used, tested, topped up, discarded, corrected",
  options: () => ({
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
