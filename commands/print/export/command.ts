import { z } from "zod";
import { defineCommand } from "../../define.ts";
import { whoMay } from "../../who.ts";
import { readFilter } from "../find/options.ts";
import { EXPORT_FORMATS, writePrints } from "./file.ts";
import { exportReply } from "./reply.ts";

const MOST_PRINTS = 2000;

export const printExport = defineCommand({
  name: "print export",
  summary: "The log of prints as a file, CSV or JSON: everything a print has but its photo",
  options: () => ({
    as: z.enum(EXPORT_FORMATS).default("csv").describe("csv for a spreadsheet, json for programs"),
    words: z.string().max(200).default("").describe("Only prints with these words"),
    person: z.string().trim().min(1).max(60).optional().describe("Only this person's"),
    when: z.string().trim().min(1).max(20).optional().describe("2026-03-01, 2026-03, last week, 3 weeks"),
    page: z.coerce.number().int().min(1).max(1000).default(1).describe("The next 2,000 of a longer log"),
  }),
  who: whoMay("print export"),
  visibility: "private",
  rest: "words",
  handle({ as, page, ...input }, context) {
    const offset = (page - 1) * MOST_PRINTS;
    const found = context.stores.prints.search(
      context.class.id,
      readFilter(input, context),
      MOST_PRINTS,
      offset,
    );
    return exportReply(writePrints(found.prints, as), as, found.prints.length, found.total - offset, page);
  },
});
