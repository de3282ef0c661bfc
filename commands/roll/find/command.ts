import { z } from "zod";
import { whoMay } from "../../who.ts";
import { defineCommand } from "../../define.ts";
import { givenOf, makeLine } from "../../speech/line.ts";
import { completeBatch, completeFault, completeValue, readFilter } from "./options.ts";
import { foundReply } from "./reply.ts";

const PAGE_SIZE = 8;

export const rollFind = defineCommand({
  name: "roll find",
  summary: "Look in the class's log: by words, person, film, developer, batch, tank, days, fault, rating",
  options: () => ({
    words: z
      .string()
      .max(200)
      .default("")
      .describe("Words from the note, the film, the names; beginnings are enough"),
    person: z.string().trim().min(1).max(60).optional().describe("Whose roll"),
    film: z.string().trim().min(1).max(60).optional().describe("Film"),
    developer: z.string().trim().min(1).max(60).optional().describe("Developer"),
    batch: z.string().trim().min(1).max(20).optional().describe("Batch label, like B3"),
    tank: z.coerce.number().int().min(1).max(999).optional().describe("Tank number"),
    when: z
      .string()
      .trim()
      .min(1)
      .max(20)
      .optional()
      .describe("2026-03-01, 2026-03, today, last week, 3 weeks"),
    from: z.string().trim().min(1).max(20).optional().describe("From this day on"),
    to: z.string().trim().min(1).max(20).optional().describe("Up to and with this day"),
    fault: z.string().trim().min(1).max(60).optional().describe("What was seen, like thin; or any"),
    rating: z.coerce.number().int().min(1).max(5).optional().describe("Rated 1 to 5"),
    outcome: z.enum(["finished", "stopped"]).optional().describe("How the run ended"),
    late: z.enum(["yes"]).optional().describe("Only with calls that came late or were missed"),
    page: z.coerce.number().int().min(1).max(9999).default(1).describe("Page, from 1"),
  }),
  who: whoMay("roll find"),
  visibility: "private",
  rest: "words",
  complete: {
    person: completeValue("person"),
    film: completeValue("film"),
    developer: completeValue("developer"),
    fault: completeFault,
    batch: completeBatch,
  },
  handle({ page, ...input }, context) {
    const { rolls } = context.stores;
    const { filter, taken } = readFilter(input, context);
    const found = rolls.search(context.class.id, filter, PAGE_SIZE, (page - 1) * PAGE_SIZE);
    const asked = givenOf(input);
    return foundReply(
      { ...found, taken, page, pageSize: PAGE_SIZE, isEverything: Object.keys(asked).length === 0 },
      (to) => makeLine("roll find", { ...asked, page: to }),
    );
  },
});
