import { z } from "zod";
import { defineCommand, UserError, type Completer, type Context } from "../../define.ts";
import { DESTINATIONS } from "../../../store/shapes/ledger.ts";
import { isFixer, isForPaper, type Batch, type BatchKind } from "../../../store/shapes/batch.ts";
import type { FixPair } from "../../../store/shapes/school.ts";
import { redirectSecond, rescueRuns } from "../redirect.ts";
import { checkWay } from "../check-way.ts";
import { batchOption, completeBatchOf, findBatch, noteOption, readState } from "../options.ts";
import { discardWhole } from "../discard.ts";
import { pairOf, rotated, withPair } from "../pairs.ts";
import * as words from "./reply.ts";

const complete: Completer = (typed, context, others) => [
  ...completeBatchOf("fixer")(typed, context, others),
  ...completeBatchOf("paper-fixer")(typed, context, others),
];

/** @throws UserError where it is no fixer that is fit for use. */
function readyFixer(context: Context, text: string): Batch {
  const batch = findBatch(context, text);
  if (!isFixer(batch.kind) || batch.usage === "once")
    throw new UserError("ERR_NOT_A_FIXER", words.notAFixer(batch));
  const state = readState(context, batch);
  if (state.standing !== "ready") throw new UserError("ERR_BATCH_WORN", words.notReady(batch, state));
  return batch;
}

function savePair(context: Context, pair: FixPair, kind: BatchKind): void {
  const { stores, class: school, now } = context;
  const fixPairs = withPair(school.habits.fixPairs, pair);
  // How many baths prints go through is each line of trays' own.
  const fixBaths = isForPaper(kind) ? school.habits.fixBaths : 2;
  stores.classes.setHabits(school.id, { ...school.habits, fixBaths, fixPairs });
  rescueRuns(stores, school.id, now);
}

export const batchPair = defineCommand({
  name: "batch pair",
  summary: "Fix in two baths: which bottle is the first and which the second",
  options: () => ({
    first: batchOption.describe("The bottle film clears in, like B3"),
    second: batchOption.describe("The bottle film finishes in, like B4: the fresher one"),
  }),
  who: "aide",
  visibility: "class",
  complete: { first: complete, second: complete },
  handle({ first: firstText, second: secondText }, context) {
    const [first, second] = [readyFixer(context, firstText), readyFixer(context, secondText)];
    if (first.id === second.id) throw new UserError("ERR_SAME_BATH", words.sameBath(first));
    if (first.kind !== second.kind) throw new UserError("ERR_WRONG_BATCH", words.filmAndPaper(first, second));
    savePair(context, { first: first.number, second: second.number, rotations: 0 }, first.kind);
    return words.pairedReply(first, second, context.class.habits);
  },
});

export const batchRotate = defineCommand({
  name: "batch rotate",
  summary: "Two fixing baths: the first is dropped, the second moves up, a fresh one is second",
  options: () => ({
    fresh: batchOption.describe("The freshly mixed bottle, like B5"),
    first: batchOption.optional().describe("The first bath to drop, where there are several pairs"),
    to: z.enum(DESTINATIONS).default("silver").describe("Where the old one goes"),
    note: noteOption.describe("A note"),
  }),
  who: "aide",
  visibility: "class",
  complete: { fresh: complete, first: complete },
  handle({ fresh: freshText, first: firstText, to, note }, context) {
    const { fixRotations, fixPairs } = context.class.habits;
    const fresh = readyFixer(context, freshText);
    const pair = findPair(context, fixPairs, firstText, fresh.kind);
    if (pairOf(fixPairs, fresh.number)) throw new UserError("ERR_SAME_BATH", words.inPair(fresh));
    const next = rotated(pair, fresh.number, fixRotations);
    if (!next) throw new UserError("ERR_BOTH_NEW", words.bothNew(pair, fixRotations));
    const old = context.stores.batches.find(context.class.id, pair.first);
    // The pair first: what is said of a dropped bath must know which one stands in its place.
    savePair(context, next, fresh.kind);
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

/** Of those for film, or those for paper: whichever the fresh bottle is for. */
function findPair(
  context: Context,
  all: readonly FixPair[],
  text: string | undefined,
  kind: BatchKind,
): FixPair {
  const pairs = all.filter(
    ({ first }) => context.stores.batches.find(context.class.id, first)?.kind === kind,
  );
  if (text !== undefined) {
    const pair = pairOf(pairs, findBatch(context, text).number);
    if (pair) return pair;
  } else if (pairs.length === 1 && pairs[0]) return pairs[0];
  throw new UserError("ERR_NO_PAIR", words.noPair(pairs));
}
