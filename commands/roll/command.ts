import { z } from "zod";
import { whoMay } from "../who.ts";
import { defineCommand } from "../define.ts";
import * as words from "./reply.ts";
import { completeRoll, findRoll, ownRoll, photoOfRoll } from "./options.ts";

export const rollShow = defineCommand({
  name: "roll show",
  summary: "One roll: as planned and as it really went",
  options: () => ({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; your newest if left out"),
  }),
  who: whoMay("roll show"),
  visibility: "private",
  rest: "roll",
  complete: { roll: completeRoll },
  handle({ roll: text }, context) {
    const roll = findRoll(context, text);
    return { ...words.shownReply(roll), photo: photoOfRoll(context, roll) };
  },
});

export const rollNote = defineCommand({
  name: "roll note",
  summary: "Write a note on a roll, to be found again by its words",
  options: () => ({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; your newest if left out"),
    note: z.string().min(1).max(2000).describe("What you saw; at most 2,000 characters"),
  }),
  who: whoMay("roll note"),
  visibility: "private",
  complete: { roll: completeRoll },
  handle({ roll: text, note }, context) {
    const roll = ownRoll(context, text);
    context.stores.rolls.note(roll.id, note);
    return words.notedReply({ ...roll, note });
  },
});

export const rollRate = defineCommand({
  name: "roll rate",
  summary: "Rate the negatives, 1 (unusable) to 5 (prints easily)",
  options: () => ({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; your newest if left out"),
    rating: z.coerce.number().int().min(1).max(5).describe("1 to 5"),
  }),
  who: whoMay("roll rate"),
  visibility: "private",
  complete: { roll: completeRoll },
  handle({ roll: text, rating }, context) {
    const roll = ownRoll(context, text);
    context.stores.rolls.rate(roll.id, rating);
    return words.ratedReply({ ...roll, rating });
  },
});
