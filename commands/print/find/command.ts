import { z } from "zod";
import { frameSchema } from "../../../store/shapes/print.ts";
import { defineCommand } from "../../define.ts";
import { completeRoll } from "../../roll/options.ts";
import { givenOf, makeLine } from "../../speech/line.ts";
import { textIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { readFilter } from "./options.ts";
import { foundReply } from "./reply.ts";

const PAGE_SIZE = 8;

export const printFind = defineCommand({
  name: "print find",
  summary: "Look in the log of prints: by words, person, roll and frame, rating, fault, days",
  options: () => ({
    words: z
      .string()
      .max(200)
      .default("")
      .describe("Words from title, note, paper and names; beginnings are enough"),
    person: z.string().trim().min(1).max(60).optional().describe("Whose print"),
    roll: z.string().min(1).max(12).optional().describe("From which roll, like L12"),
    frame: textIn(frameSchema).optional().describe("From which frame, like 12A"),
    rating: z.coerce.number().int().min(1).max(5).optional().describe("Rated 1 to 5"),
    fault: z.enum(["yes"]).optional().describe("Only prints with a fault"),
    when: z
      .string()
      .trim()
      .min(1)
      .max(20)
      .optional()
      .describe("2026-03-01, 2026-03, today, last week, 3 weeks"),
    page: z.coerce.number().int().min(1).max(9999).default(1).describe("Page, from 1"),
  }),
  who: whoMay("print find"),
  visibility: "private",
  rest: "words",
  complete: { roll: completeRoll },
  handle({ page, ...input }, context) {
    const found = context.stores.prints.search(
      context.class.id,
      readFilter(input, context),
      PAGE_SIZE,
      (page - 1) * PAGE_SIZE,
    );
    const asked = givenOf(input);
    return foundReply(
      { ...found, page, pageSize: PAGE_SIZE, isEverything: Object.keys(asked).length === 0 },
      (to) => makeLine("print find", { ...asked, page: to }),
    );
  },
});
