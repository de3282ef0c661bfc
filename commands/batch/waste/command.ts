import { z } from "zod";
import { defineCommand, UserError } from "../../define.ts";
import { noteOption, readDayOption } from "../options.ts";
import { volumeOption } from "../../speech/quantity.ts";
import { collectedNow } from "../collected.ts";
import * as words from "./reply.ts";

export const batchWaste = defineCommand({
  name: "batch waste",
  summary: "Used fixer collected, the silver it carries, and what was handed over",
  options: () => ({}),
  who: "student",
  visibility: "private",
  handle: (_, context) =>
    words.wasteReply(
      collectedNow(context.stores, context.class.id),
      context.stores.handovers.list(context.class.id),
    ),
});

export const batchHandover = defineCommand({
  name: "batch handover",
  summary: "Note that the collected fixer was handed over, to whom and when",
  options: () => ({
    to: z.string().trim().min(1).max(100).describe("Who took it: the county's collection, a refiner"),
    ml: volumeOption.optional().describe("How much, if not all of it, like 5 l"),
    date: z.string().max(20).optional().describe("When, if not today: 2026-05-31"),
    note: noteOption.describe("Receipt number, or a note"),
  }),
  who: "teacher",
  visibility: "private",
  handle({ to, ml, date, note }, context) {
    const atMs = readDayOption(context, date) ?? context.now;
    if (atMs > context.now) throw new UserError("ERR_NOT_YET", words.notYet());
    const collected = collectedNow(context.stores, context.class.id);
    if (collected.ml <= 0) throw new UserError("ERR_NOTHING_COLLECTED", words.nothingCollected());
    if (ml !== undefined && ml > collected.ml)
      throw new UserError("ERR_NOT_SO_MUCH", words.notSoMuch(collected.ml));
    const share = (ml ?? collected.ml) / collected.ml;
    const handed = {
      ml: ml ?? collected.ml,
      lowMg: Math.round(collected.lowMg * share),
      highMg: Math.round(collected.highMg * share),
      measuredMl: Math.round(collected.measuredMl * share),
    };
    context.stores.handovers.add(context.class.id, { ...handed, to, note }, context.person, atMs);
    return words.handedReply(handed, to, atMs, collectedNow(context.stores, context.class.id).ml);
  },
});
