import { z } from "zod";
import { refuseUnreadable } from "../unreadable.ts";
import { UserError, type Completer, type Context, type Suggestion } from "../define.ts";
import { textIn } from "../speech/shaped.ts";
import { parseNumber } from "../speech/wording.ts";
import { BATCH_KINDS, type Batch, type BatchKind } from "../../store/shapes/batch.ts";
import { LINE_PARTS } from "../../store/shapes/ledger.ts";
import { labelOf, stateLine, unknownBatch } from "./batch-words.ts";
import { parseDay } from "./dates.ts";
import { figureFaultWords } from "./figures.ts";
import { stateOf, type BatchState } from "./state.ts";

/* Options that several commands of this folder share. */

export const batchOption = z.string().trim().min(1).max(12);
export const noteOption = textIn(LINE_PARTS.note, 0).default("");
/** Why; shorter than a word explains nothing. */
export const reasonOption = textIn(LINE_PARTS.reason, 3);

/** The bottles on the shelf, each with its state. */
export const completeBatch: Completer = (typed, context) => offer(typed, context, BATCH_KINDS);

/** Those of one kind. */
export const completeBatchOf =
  (kind: BatchKind): Completer =>
  (typed, context) =>
    offer(typed, context, [kind]);

const offer = (typed: string, context: Context, kinds: readonly BatchKind[]): readonly Suggestion[] =>
  context.stores.batches
    .standing(context.class.id)
    .filter(({ kind }) => kinds.includes(kind))
    .map((batch) => ({
      label: stateLine(batch, readState(context, batch)).slice(0, 100),
      value: labelOf(batch),
    }))
    .filter(({ label }) => label.toLowerCase().includes(typed.toLowerCase()));

export function findBatch(context: Context, text: string): Batch {
  const number = parseNumber("batch", text);
  const batch = number === undefined ? undefined : context.stores.batches.find(context.class.id, number);
  if (batch) return batch;
  refuseUnreadable(context, "batch", number);
  throw new UserError("ERR_UNKNOWN_BATCH", unknownBatch(text));
}

export function readState({ stores, now }: Context, batch: Batch): BatchState {
  return stateOf(batch, stores.batches.lines(batch.id), now);
}

/** The first instant of a day; undefined where none is named. */
export function readDayOption(context: Context, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const read = parseDay(text, context.class.zone, context.now);
  if (!read.ok) throw new UserError(read.fault.code, figureFaultWords(read.fault));
  return read.value;
}
