import { z } from "zod";
import { noteSchema } from "../../../store/shapes/print.ts";
import { defineCommand } from "../../define.ts";
import { textIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { completePrint, ownPrint } from "../find-print.ts";
import * as words from "./reply.ts";

const printOption = z
  .string()
  .min(1)
  .max(12)
  .optional()
  .describe("Which print, like V7; your newest if left out");

export const printNote = defineCommand({
  name: "print note",
  summary: "Write a note on a print, to be found again by its words",
  options: () => ({
    print: printOption,
    note: textIn(noteSchema).describe("What you saw; at most 2,000 characters"),
  }),
  who: whoMay("print note"),
  visibility: "private",
  complete: { print: completePrint },
  handle({ print: text, note }, context) {
    const print = ownPrint(context, text);
    context.stores.prints.note(print.id, note);
    return words.notedReply({ ...print, note });
  },
});

export const printRate = defineCommand({
  name: "print rate",
  summary: "Rate a dry print, 1 (unusable) to 5 (as you wanted it)",
  options: () => ({
    print: printOption,
    rating: z.coerce.number().int().min(1).max(5).describe("1 to 5"),
  }),
  who: whoMay("print rate"),
  visibility: "private",
  complete: { print: completePrint },
  handle({ print: text, rating }, context) {
    const print = ownPrint(context, text);
    context.stores.prints.rate(print.id, rating);
    return words.ratedReply({ ...print, rating }, rating);
  },
});
