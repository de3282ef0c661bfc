import { z } from "zod";
import type { Enlarger } from "../../store/shapes/enlarger.ts";
import { enlargerSchema } from "../../store/shapes/enlarger.ts";
import { type Paper, paperSchema } from "../../store/shapes/paper.ts";
import { type Completer, type Context, UserError } from "../define.ts";
import { wholeIn } from "../speech/shaped.ts";
import { makeNumber } from "../speech/wording.ts";
import { refuseUnreadable } from "../unreadable.ts";
import { type Change, parseChange } from "./change.ts";
import * as words from "./print-words.ts";
import type { Parse } from "./stops.ts";

/* Options that the commands of prints share: quantities of the darkroom as people write them, enlargers and papers by number. */

/** A text option read by one of the parsers. Add `.optional()` and `.describe()` last. */
export function readBy<T>(parse: Parse<T>) {
  return z.string().transform((text, context): T => {
    const read = parse(text);
    if (read.ok) return read.value;
    context.addIssue({
      code: "custom",
      message: words.faultWords(read.fault),
      params: { code: read.fault.code },
    });
    return z.NEVER;
  });
}

/** `8 to 11`, or `11` alone where it is known what it was. */
export const changeBy = <T>(parse: Parse<T>) => readBy<Change<T>>(parseChange(parse));

export const enlargerOption = wholeIn(enlargerSchema.shape.number);
export const paperOption = wholeIn(paperSchema.shape.number);

const completeBy =
  (kind: "enlarger" | "paper"): Completer =>
  (typed, { stores, class: { id } }) =>
    (kind === "enlarger" ? stores.enlargers : stores.papers)
      .list(id)
      .map(({ number, name }) => ({
        label: `${makeNumber(kind, number)} ${name}`.slice(0, 100),
        value: `${number}`,
      }))
      .filter(({ label }) => label.toLowerCase().includes(typed.trim().toLowerCase()));
export const completeEnlarger = completeBy("enlarger");
export const completePaper = completeBy("paper");

/** @throws UserError where there is none of that number, or it can't be read. */
export function findEnlarger(context: Context, number: number): Enlarger {
  const { stores, class: school } = context;
  const found = stores.enlargers.find(school.id, number);
  if (found) return found;
  refuseUnreadable(context, "enlarger", number);
  const known = stores.enlargers.list(school.id).map((each) => each.number);
  throw new UserError("ERR_UNKNOWN_ENLARGER", words.unknown("enlarger", number, known));
}

/** @throws UserError where there is none of that number, or it can't be read. */
export function findPaper(context: Context, number: number): Paper {
  const { stores, class: school } = context;
  const found = stores.papers.find(school.id, number);
  if (found) return found;
  refuseUnreadable(context, "paper", number);
  const known = stores.papers.list(school.id).map((each) => each.number);
  throw new UserError("ERR_UNKNOWN_PAPER", words.unknown("paper", number, known));
}

/** The one asked for; where none is, the class's only one; null: nobody can tell. */
export function enlargerFor(context: Context, number: number | undefined): Enlarger | null {
  if (number !== undefined) return findEnlarger(context, number);
  const [only, other] = context.stores.enlargers.list(context.class.id);
  return other ? null : (only ?? null);
}

export const paperFor = (context: Context, number: number | undefined): Paper | null =>
  number === undefined ? null : findPaper(context, number);

/** A timer nobody has told of: most can be set to half a second. Common practice, no source. */
export const USUAL_TIMER_TENTHS = 5;
