import { z } from "zod";
import { defineCommand, UserError, type Context } from "../../define.ts";
import { DESTINATIONS } from "../../../store/shapes/ledger.ts";
import type { Batch } from "../../../store/shapes/batch.ts";
import type { FixPair } from "../../../store/shapes/school.ts";
import { redirectSecond, rescueRuns } from "../redirect.ts";
import { checkWay } from "../check-way.ts";
import { batchOption, completeBatchOf, findBatch, noteOption, readState } from "../options.ts";
import { discardWhole } from "../discard.ts";
import { pairOf, rotated, withPair } from "../pairs.ts";
import * as words from "./reply.ts";

const complete = completeBatchOf("fixer");

/** @throws UserError where it is no fixer that film may go into. */
function readyFixer(context: Context, text: string): Batch {
  const batch = findBatch(context, text);
  if (batch.kind !== "fixer" || batch.usage === "once")
    throw new UserError("ERR_NOT_A_FIXER", words.notAFixer(batch));
  const state = readState(context, batch);
  if (state.standing !== "ready") throw new UserError("ERR_BATCH_WORN", words.notReady(batch, state));
  return batch;
}

function savePair(context: Context, pair: FixPair): void {
  const { stores, class: school, now } = context;
  const fixPairs = withPair(school.habits.fixPairs, pair);
  stores.classes.setHabits(school.id, { ...school.habits, fixBaths: 2, fixPairs });
  rescueRuns(stores, school.id, now);
}

export const batchPair = defineCommand({
  name: "batch pair",
  summary: "Fix in two baths: which bottle is the first and which the second",
  options: z.object({
    first: batchOption.describe("The bottle film clears in, like B3"),
    second: batchOption.describe("The bottle film finishes in, like B4: the fresher one"),
  }),
  who: "aide",
  visibility: "class",
  complete: { first: complete, second: complete },
  handle({ first: firstText, second: secondText }, context) {
    const [first, second] = [readyFixer(context, firstText), readyFixer(context, secondText)];
    if (first.id === second.id) throw new UserError("ERR_SAME_BATH", words.sameBath(first));
    savePair(context, { first: first.number, second: second.number, rotations: 0 });
    return words.pairedReply(first, second, context.class.habits);
  },
});

export const batchRotate = defineCommand({
  name: "batch rotate",
  summary: "Two fixing baths: the first is dropped, the second moves up, a fresh one is second",
  options: z.object({
    fresh: batchOption.describe("The freshly mixed bottle, like B5"),
    first: batchOption.optional().describe("The first bath to drop, where there are several pairs"),
    to: z.enum(DESTINATIONS).default("silver").describe("Where the old one goes: silver or supplier"),
    note: noteOption.describe("A note"),
  }),
  who: "aide",
  visibility: "class",
  complete: { fresh: complete, first: complete },
  handle({ fresh: freshText, first: firstText, to, note }, context) {
    const { fixRotations, fixPairs } = context.class.habits;
    const pair = findPair(context, fixPairs, firstText);
    const fresh = readyFixer(context, freshText);
    if (pairOf(fixPairs, fresh.number)) throw new UserError("ERR_SAME_BATH", words.inPair(fresh));
    const next = rotated(pair, fresh.number, fixRotations);
    if (!next) throw new UserError("ERR_BOTH_NEW", words.bothNew(pair, fixRotations));
    const old = context.stores.batches.find(context.class.id, pair.first);
    // The pair first: what is said of a dropped bath must know which one stands in its place.
    savePair(context, next);
    const state = old && readState(context, old);
    if (old && state && state.standing !== "discarded") {
      checkWay(old, to);
      discardWhole(context, old, to, note);
    }
    const second = context.stores.batches.find(context.class.id, next.first);
    if (second) redirectSecond(context.stores, second, context.now);
    return words.rotatedReply(pair, next, fixRotations, to);
  },
});

function findPair(context: Context, pairs: readonly FixPair[], text: string | undefined): FixPair {
  if (text !== undefined) {
    const pair = pairOf(pairs, findBatch(context, text).number);
    if (pair) return pair;
  } else if (pairs.length === 1 && pairs[0]) return pairs[0];
  throw new UserError("ERR_NO_PAIR", words.noPair(pairs));
}
