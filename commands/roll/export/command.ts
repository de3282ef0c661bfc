import { z } from "zod";
import { whoMay } from "../../who.ts";
import { defineCommand } from "../../define.ts";
import { completeValue, readFilter } from "../find/options.ts";
import { EXPORT_FORMATS, writeLog } from "./file.ts";
import * as words from "./reply.ts";

/** More than a class makes in years, and within what the chats carry. */
const MOST_ROLLS = 2000;

export const rollExport = defineCommand({
  name: "roll export",
  summary: "The log as a file, CSV or JSON: everything a roll has but its photo",
  options: z.object({
    as: z.enum(EXPORT_FORMATS).default("csv").describe("csv for a spreadsheet, json for programs"),
    words: z.string().max(200).default("").describe("Only rolls with these words"),
    person: z.string().trim().min(1).max(60).optional().describe("Only this person's"),
    film: z.string().trim().min(1).max(60).optional().describe("Only this film"),
    developer: z.string().trim().min(1).max(60).optional().describe("Only this developer"),
    when: z.string().trim().min(1).max(20).optional().describe("2026-03-01, 2026-03, last week, 3 weeks"),
    from: z.string().trim().min(1).max(20).optional().describe("From this day on"),
    to: z.string().trim().min(1).max(20).optional().describe("Up to and with this day"),
    page: z.coerce.number().int().min(1).max(1000).default(1).describe("The next 2,000 of a longer log"),
  }),
  who: whoMay("roll export"),
  visibility: "private",
  rest: "words",
  complete: {
    person: completeValue("person"),
    film: completeValue("film"),
    developer: completeValue("developer"),
  },
  handle({ as, page, ...input }, context) {
    const { filter, taken } = readFilter(input, context);
    const offset = (page - 1) * MOST_ROLLS;
    const { rolls } = context.stores.rolls.search(context.class.id, filter, MOST_ROLLS, offset);
    const total = context.stores.rolls.count(context.class.id, filter);
    return words.exportReply(writeLog(rolls, as), as, rolls.length, total, page, MOST_ROLLS, taken);
  },
});
