import { type Completer, type Context, UserError } from "../../define.ts";
import type { ValueKind } from "../../../store/rolls.ts";
import { makeNumber, parseNumber } from "../../speech/wording.ts";
import { type Days, parseDays } from "../dates.ts";
import { NO_DAY } from "../day-words.ts";
import * as words from "./reply.ts";
import { readFault, sayFault } from "../look-words.ts";
import { nearest, pickNearest } from "../nearest.ts";
import { EVERY_ROLL, type RollFilter } from "../../../store/shapes/roll.ts";
import { splitWords } from "../../../store/rolls-match.ts";
import { queryOf } from "../query.ts";

/* From what a person typed to a filter: a slip of the finger is put right and said, what can't be meant is refused. */

/** More values than this no class has; a slip is looked for among the most used. */
const MOST_VALUES = 500;
/** Any fault at all. */
const ANY = /^(any|some|yes)$/i;

export interface FindInput {
  readonly words: string;
  readonly person?: string | undefined;
  readonly film?: string | undefined;
  readonly developer?: string | undefined;
  readonly batch?: string | undefined;
  readonly tank?: number | undefined;
  readonly when?: string | undefined;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  readonly fault?: string | undefined;
  readonly rating?: number | undefined;
  readonly outcome?: "finished" | "stopped" | undefined;
  readonly late?: "yes" | undefined;
}

export interface ReadFilter {
  readonly filter: RollFilter;
  /** What was taken for something else than it says: `film: Lantren` for `Lantern 400`. */
  readonly taken: readonly { readonly typed: string; readonly value: string }[];
}

export const completeValue =
  (kind: ValueKind): Completer =>
  (typed, context) =>
    nearest(typed, valuesOf(context, kind), 25).map((value) => ({ label: value.slice(0, 100), value }));

/** By its name in any language; shown in the reader's. */
export const completeFault: Completer = (typed, context) => {
  const values = valuesOf(context, "fault");
  const known = nearest(readFault(typed), values, 25);
  const own = nearest(
    typed,
    values.map(({ value, uses }) => ({ value: sayFault(value), uses })),
    25,
  ).map(readFault);
  return [...new Set([...known, ...own])]
    .slice(0, 25)
    .map((value) => ({ label: sayFault(value).slice(0, 100), value }));
};

/** By label or by what is in it: `B3`, `3`, `pier`. */
export const completeBatch: Completer = (typed, { stores, class: { id } }) =>
  stores.batches
    .list(id)
    .map(({ number, product }) => ({
      label: `${makeNumber("batch", number)} ${product}`.slice(0, 100),
      value: makeNumber("batch", number),
    }))
    .filter(({ label }) => label.toLowerCase().includes(typed.trim().toLowerCase()));

function valuesOf({ stores, class: { id } }: Context, kind: ValueKind) {
  return stores.rolls.values(id, kind, MOST_VALUES);
}

export function readFilter(input: FindInput, context: Context): ReadFilter {
  const taken: { typed: string; value: string }[] = [];
  const pick = (kind: ValueKind, typed: string | undefined): string | null => {
    if (typed === undefined) return null;
    const values = valuesOf(context, kind);
    const value = pickNearest(typed, values);
    if (value === undefined)
      throw new UserError("ERR_UNKNOWN_VALUE", words.unknownValue(kind, typed, nearest(typed, values, 3)));
    if (value.toLowerCase() !== typed.toLowerCase()) taken.push({ typed, value });
    return value;
  };
  const filter: RollFilter = {
    ...EVERY_ROLL,
    ...queryOf(input.words),
    person: personOf(input.person, context, pick),
    film: pick("film", input.film),
    developer: pick("developer", input.developer),
    batch: input.batch === undefined ? null : labelOf(input.batch),
    tank: input.tank ?? null,
    rating: input.rating ?? null,
    outcome: input.outcome ?? null,
    fault: input.fault === undefined ? null : ANY.test(input.fault) ? [] : splitWords(readFault(input.fault)),
    late: input.late === "yes" ? true : null,
    ...rangeOf(input, context),
  };
  return { filter, taken };
}

/** Members first: they may have no roll yet. Names of those who have left are found in the log. */
function personOf(
  typed: string | undefined,
  { stores, class: { id } }: Context,
  pick: (kind: ValueKind, typed: string) => string | null,
): RollFilter["person"] {
  if (typed === undefined) return null;
  const member = stores.members.findByName(id, typed);
  if (member) return { id: member.personId, name: member.name };
  const name = pick("person", typed) ?? typed;
  return { id: stores.members.findByName(id, name)?.personId ?? null, name };
}

/** `3` and `b3` are B3; a label of another making is taken as it is. */
function labelOf(typed: string): string {
  const number = parseNumber("batch", typed);
  return number === undefined ? (splitWords(typed)[0] ?? typed) : `B${number}`;
}

function rangeOf({ when, from, to }: FindInput, context: Context): Pick<RollFilter, "fromMs" | "untilMs"> {
  const read = (typed: string | undefined): Days | undefined => {
    if (typed === undefined) return undefined;
    const days = parseDays(typed, context.class.zone, context.now);
    if (!days.ok) throw new UserError(days.fault.code, NO_DAY(days.fault.typed));
    return days.value;
  };
  const all = read(when);
  const first = read(from);
  const last = read(to);
  const fromMs = Math.max(all?.fromMs ?? -Infinity, first?.fromMs ?? -Infinity);
  const untilMs = Math.min(all?.untilMs ?? Infinity, last?.untilMs ?? Infinity);
  if (fromMs >= untilMs) throw new UserError("ERR_DAYS_ORDER", words.daysOrder());
  return {
    fromMs: Number.isFinite(fromMs) ? fromMs : null,
    untilMs: Number.isFinite(untilMs) ? untilMs : null,
  };
}
