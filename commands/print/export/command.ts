import { z } from "zod";
import { LOG_FORMATS } from "../../../store/shapes/log-file.ts";
import { defineCommand, UserError } from "../../define.ts";
import { givenOf, makeLine } from "../../speech/line.ts";
import { parseNumber } from "../../speech/wording.ts";
import { whoMay } from "../../who.ts";
import { readFilter } from "../find/options.ts";
import { unknownPrint } from "../recipe-words.ts";
import * as words from "./reply.ts";

/** Counting more would keep calls waiting. */
const MOST_COUNTED = 10_000;

export const printExport = defineCommand({
  name: "print export",
  summary: "The log of prints as a file, CSV or JSON: everything a print has but its photo",
  options: () => ({
    as: z.enum(LOG_FORMATS).default("csv").describe("What kind of file"),
    words: z.string().max(200).default("").describe("Only prints with these words"),
    person: z.string().trim().min(1).max(60).optional().describe("Only this person's"),
    when: z.string().trim().min(1).max(20).optional().describe("2026-03-01, 2026-03, last week, 3 weeks"),
    before: z.string().trim().min(1).max(20).optional().describe("Only older prints than this one: V1200"),
  }),
  who: whoMay("print export"),
  visibility: "private",
  rest: "words",
  handle({ before, ...input }, context) {
    const { stores, class: school } = context;
    const filter = readFilter(input, context);
    const file = {
      of: "print" as const,
      classId: school.id,
      filter,
      format: input.as,
      below: before === undefined ? stores.prints.lastNumber(school.id) + 1 : numberOf(before),
      line: makeLine("print export", givenOf(input)),
    };
    if (before !== undefined) return words.restReply(file);
    return words.exportReply(file, stores.prints.count(school.id, filter, MOST_COUNTED + 1), MOST_COUNTED);
  },
});

/** The print itself need not be there any more. */
function numberOf(typed: string): number {
  const number = parseNumber("print", typed);
  if (number === undefined) throw new UserError("ERR_UNKNOWN_PRINT", unknownPrint(typed));
  return number;
}
