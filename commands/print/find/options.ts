import { EVERY_PRINT, type PrintFilter } from "../../../store/shapes/print.ts";
import { type Context, UserError } from "../../define.ts";
import { parseNumber } from "../../speech/wording.ts";
import { parseDays } from "../../roll/dates.ts";
import { NO_DAY } from "../../roll/day-words.ts";
import * as words from "../find-words.ts";

/* From what a person typed to a filter of the log of prints. */

export interface FindInput {
  readonly words: string;
  readonly person?: string | undefined;
  readonly roll?: string | undefined;
  readonly frame?: string | undefined;
  readonly rating?: number | undefined;
  readonly fault?: "yes" | undefined;
  readonly when?: string | undefined;
}

/** @throws UserError for days, a roll or a person that can't be read. */
export function readFilter(input: FindInput, context: Context): PrintFilter {
  const { stores, class: school, now } = context;
  const days = input.when === undefined ? undefined : parseDays(input.when, school.zone, now);
  if (days && !days.ok) throw new UserError(days.fault.code, NO_DAY(days.fault.typed));
  const member = input.person === undefined ? undefined : stores.members.findByName(school.id, input.person);
  const roll = input.roll === undefined ? undefined : parseNumber("roll", input.roll);
  if (input.roll !== undefined && roll === undefined)
    throw new UserError("ERR_UNKNOWN_ROLL", words.noSuchRoll(input.roll));
  return {
    ...EVERY_PRINT,
    // Somebody who has left is found by the name their prints bear.
    words: [input.words, ...(member ? [] : [input.person ?? ""])].filter((each) => each.trim() !== ""),
    personId: member?.personId ?? null,
    roll: roll ?? null,
    frame: input.frame ?? null,
    rating: input.rating ?? null,
    isFaulty: input.fault === "yes",
    fromMs: days?.value.fromMs ?? null,
    untilMs: days?.value.untilMs ?? null,
  };
}
