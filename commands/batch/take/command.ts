import { candidatesFor, pendingNeeds } from "../candidates.ts";
import { z } from "zod";
import { defineCommand, UserError } from "../../define.ts";
import { findRun } from "../../run/find.ts";
import { labelOf } from "../batch-words.ts";
import { chooseBatch } from "../choose.ts";
import { batchOption, completeBatch, findBatch } from "../options.ts";
import { changeBatch } from "../rebatch.ts";
import { refusalWords } from "../refusal-words.ts";
import * as words from "./reply.ts";

export const batchTake = defineCommand({
  name: "batch take",
  summary: "Take another bottle for a bath of your run that is not in yet",
  options: () => ({
    batch: batchOption.describe("Which bottle, like B5"),
    run: z.string().min(1).max(12).optional().describe("Which run, like R7; yours if you have only one"),
  }),
  who: "student",
  visibility: "private",
  complete: { batch: completeBatch },
  handle({ batch: text, run: runText }, context) {
    const { stores, now } = context;
    const batch = findBatch(context, text);
    const run = findRun(context, runText, "batch take", { batch: labelOf(batch) });
    const bath = pendingNeeds(stores, run).find(({ need }) => need.kind === batch.kind);
    if (!bath) throw new UserError("ERR_NO_BATH_TO_COME", words.noBathToCome(run.number, batch));
    const candidates = candidatesFor(stores, context.class.id, run.personId, now, run.id);
    const chosen = chooseBatch(bath.need, candidates, batch.number, true);
    if (!chosen.ok) throw new UserError(chosen.fault.code, refusalWords(chosen.fault));
    const plan =
      chosen.value &&
      changeBatch(run.plan, bath.index, chosen.value, bath.need.isTabular, context.class.habits);
    if (!plan) throw new UserError("ERR_PLAN_AGAIN", words.planAgain(batch));
    const changed = { ...run, plan };
    stores.runs.save(changed);
    return words.takenReply(changed, bath.index, labelOf(batch));
  },
});
