import { z } from "zod";
import { defineCommand, mayActAs, UserError, type Completer, type Context } from "../define.ts";
import { makeLine } from "../line.ts";
import { makeNumber, parseNumber } from "../wording.ts";
import { EVERY_ROLL, splitWords } from "./query.ts";
import * as words from "./reply.ts";
import type { Roll } from "./roll.ts";

const PAGE_SIZE = 8;

const completeFrom =
  (column: "film" | "developer" | "person_name"): Completer =>
  (typed, context) =>
    context.stores.rolls
      .values(context.class.id, column, typed, 25)
      .map((value) => ({ label: value, value }));

const completeRoll: Completer = (typed, context) => {
  const filter = {
    ...EVERY_ROLL,
    words: splitWords(typed.replace(/^l/i, "")).filter((word) => !/^\d+$/.test(word)),
  };
  return context.stores.rolls.search(context.class.id, filter, 25, 0).rolls.map((roll) => ({
    label: `${makeNumber("roll", roll.number)} ${roll.personName}, ${roll.film}`.slice(0, 100),
    value: makeNumber("roll", roll.number),
  }));
};

export const rollFind = defineCommand({
  name: "roll find",
  summary: "Look in the class's log: by words, person, film, developer, batch or tank",
  options: z.object({
    words: z
      .string()
      .max(200)
      .default("")
      .describe("Words from the note, the film, the names; beginnings are enough"),
    person: z.string().min(1).max(60).optional().describe("Whose roll"),
    film: z.string().min(1).max(60).optional().describe("Film"),
    developer: z.string().min(1).max(60).optional().describe("Developer"),
    batch: z.string().min(1).max(20).optional().describe("Batch label, like B3"),
    tank: z.coerce.number().int().min(1).max(999).optional().describe("Tank number"),
    rating: z.coerce.number().int().min(1).max(5).optional().describe("Rated 1 to 5"),
    outcome: z.enum(["finished", "stopped"]).optional().describe("How the run ended"),
    page: z.coerce.number().int().min(1).max(9999).default(1).describe("Page, from 1"),
  }),
  who: "student",
  visibility: "private",
  rest: "words",
  complete: {
    person: completeFrom("person_name"),
    film: completeFrom("film"),
    developer: completeFrom("developer"),
  },
  handle({ words: text, person, page, ...input }, context) {
    const filter = {
      words: splitWords(text),
      personId: person === undefined ? null : personIdOf(context, person),
      film: input.film ?? null,
      developer: input.developer ?? null,
      batch: input.batch?.toUpperCase() ?? null,
      tank: input.tank ?? null,
      rating: input.rating ?? null,
      outcome: input.outcome ?? null,
    };
    const { rolls, total } = context.stores.rolls.search(
      context.class.id,
      filter,
      PAGE_SIZE,
      (page - 1) * PAGE_SIZE,
    );
    const asked = Object.entries({ words: text, person, ...input }).flatMap(([key, value]) =>
      value === undefined || value === "" ? [] : [[key, value] as const],
    );
    return words.foundReply(rolls, total, page, PAGE_SIZE, (to) =>
      makeLine("roll find", { ...Object.fromEntries(asked), page: to }),
    );
  },
});

export const rollShow = defineCommand({
  name: "roll show",
  summary: "One roll: as planned and as it really went",
  options: z.object({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; your newest if left out"),
  }),
  who: "student",
  visibility: "private",
  rest: "roll",
  complete: { roll: completeRoll },
  handle: ({ roll }, context) => words.shownReply(findRoll(context, roll)),
});

export const rollNote = defineCommand({
  name: "roll note",
  summary: "Write a note on a roll, to be found again by its words",
  options: z.object({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; your newest if left out"),
    note: z.string().min(1).max(2000).describe("What you saw; at most 2,000 characters"),
  }),
  who: "student",
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
  summary: "Rate the negatives, 1 (unusable) to 5 (prints by itself)",
  options: z.object({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; your newest if left out"),
    rating: z.coerce.number().int().min(1).max(5).describe("1 to 5"),
  }),
  who: "student",
  visibility: "private",
  complete: { roll: completeRoll },
  handle({ roll: text, rating }, context) {
    const roll = ownRoll(context, text);
    context.stores.rolls.rate(roll.id, rating);
    return words.ratedReply({ ...roll, rating });
  },
});

function findRoll(context: Context, text: string | undefined): Roll {
  const { stores, person } = context;
  if (text === undefined) {
    const [newest] = stores.rolls.search(
      context.class.id,
      { ...EVERY_ROLL, personId: person.id },
      1,
      0,
    ).rolls;
    if (!newest) throw new UserError("ERR_NO_ROLL_YET", words.NO_ROLL_YET);
    return newest;
  }
  const number = parseNumber("roll", text);
  const roll = number === undefined ? undefined : stores.rolls.find(context.class.id, number);
  if (!roll) throw new UserError("ERR_UNKNOWN_ROLL", words.UNKNOWN_ROLL(text));
  return roll;
}

function ownRoll(context: Context, text: string | undefined): Roll {
  const roll = findRoll(context, text);
  if (roll.personId !== context.person.id && !mayActAs(context.role, "aide")) {
    throw new UserError("ERR_NOT_YOUR_ROLL", words.NOT_YOUR_ROLL);
  }
  return roll;
}

function personIdOf(context: Context, name: string): string {
  const member = context.stores.members.findByName(context.class.id, name);
  if (!member) throw new UserError("ERR_UNKNOWN_PERSON", words.UNKNOWN_PERSON(name));
  return member.personId;
}
