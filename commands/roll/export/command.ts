import { z } from "zod";
import { LOG_FORMATS } from "../../../store/shapes/log-file.ts";
import { whoMay } from "../../who.ts";
import { defineCommand, UserError } from "../../define.ts";
import { givenOf, makeLine } from "../../speech/line.ts";
import { parseNumber } from "../../speech/wording.ts";
import { completeValue, readFilter } from "../find/options.ts";
import * as words from "./reply.ts";

/** Counting more would keep calls waiting. */
const MOST_COUNTED = 10_000;

export const rollExport = defineCommand({
  name: "roll export",
  summary: "The log as a file, CSV or JSON: everything a roll has but its photo",
  options: () => ({
    as: z.enum(LOG_FORMATS).default("csv").describe("What kind of file"),
    words: z.string().max(200).default("").describe("Only rolls with these words"),
    person: z.string().trim().min(1).max(60).optional().describe("Only this person's"),
    film: z.string().trim().min(1).max(60).optional().describe("Only this film"),
    developer: z.string().trim().min(1).max(60).optional().describe("Only this developer"),
    when: z.string().trim().min(1).max(20).optional().describe("2026-03-01, 2026-03, last week, 3 weeks"),
    from: z.string().trim().min(1).max(20).optional().describe("From this day on"),
    to: z.string().trim().min(1).max(20).optional().describe("Up to and with this day"),
    before: z.string().trim().min(1).max(20).optional().describe("Only older rolls than this one: L1200"),
  }),
  who: whoMay("roll export"),
  visibility: "private",
  rest: "words",
  complete: {
    person: completeValue("person"),
    film: completeValue("film"),
    developer: completeValue("developer"),
  },
  handle({ before, ...input }, context) {
    const { stores, class: school } = context;
    const { filter, taken } = readFilter(input, context);
    const file = {
      of: "roll" as const,
      classId: school.id,
      filter,
      format: input.as,
      below: before === undefined ? stores.rolls.lastNumber(school.id) + 1 : numberOf(before),
      line: makeLine("roll export", givenOf(input)),
    };
    if (before !== undefined) return words.restReply(file, taken);
    return words.exportReply(
      file,
      stores.rolls.count(school.id, filter, MOST_COUNTED + 1),
      MOST_COUNTED,
      taken,
    );
  },
});

/** The roll itself need not be there any more. */
function numberOf(typed: string): number {
  const number = parseNumber("roll", typed);
  if (number === undefined) throw new UserError("ERR_UNKNOWN_ROLL", words.noSuchRoll(typed));
  return number;
}
