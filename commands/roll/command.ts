import { z } from "zod";
import { whoMay } from "../who.ts";
import {
  defineCommand,
  mayActAs,
  UserError,
  type Completer,
  type Context,
  type PhotoPlace,
} from "../define.ts";
import { makeNumber, parseNumber } from "../speech/wording.ts";
import { EVERY_ROLL, splitWords } from "./query.ts";
import * as words from "./reply.ts";
import type { Roll } from "../../store/shapes/roll.ts";

export const completeRoll: Completer = (typed, context) => {
  const filter = {
    ...EVERY_ROLL,
    words: splitWords(typed.replace(/^l/i, "")).filter((word) => !/^\d+$/.test(word)),
  };
  return context.stores.rolls.search(context.class.id, filter, 25, 0).rolls.map((roll) => ({
    label: `${makeNumber("roll", roll.number)} ${roll.personName}, ${roll.film}`.slice(0, 100),
    value: makeNumber("roll", roll.number),
  }));
};

export const rollShow = defineCommand({
  name: "roll show",
  summary: "One roll: as planned and as it really went",
  options: z.object({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; your newest if left out"),
  }),
  who: whoMay("roll show"),
  visibility: "private",
  rest: "roll",
  complete: { roll: completeRoll },
  handle({ roll: text }, context) {
    const roll = findRoll(context, text);
    return { ...words.shownReply(roll), photo: photoPlace(context, roll) };
  },
});

export const rollNote = defineCommand({
  name: "roll note",
  summary: "Write a note on a roll, to be found again by its words",
  options: z.object({
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
  summary: "Rate the negatives, 1 (unusable) to 5 (prints by itself)",
  options: z.object({
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

export function findRoll(context: Context, text: string | undefined): Roll {
  const { stores, person } = context;
  if (text === undefined) {
    const [newest] = stores.rolls.search(
      context.class.id,
      { ...EVERY_ROLL, person: { id: person.id, name: null } },
      1,
      0,
    ).rolls;
    if (!newest) throw new UserError("ERR_NO_ROLL_YET", words.noRollYet());
    return newest;
  }
  const number = parseNumber("roll", text);
  const roll = number === undefined ? undefined : stores.rolls.find(context.class.id, number);
  if (!roll) throw new UserError("ERR_UNKNOWN_ROLL", words.unknownRoll(text));
  return roll;
}

export function ownRoll(context: Context, text: string | undefined): Roll {
  const roll = findRoll(context, text);
  if (!mayWriteOn(context, roll)) throw new UserError("ERR_NOT_YOUR_ROLL", words.notYourRoll());
  return roll;
}

function mayWriteOn({ person, role }: Context, roll: Roll): boolean {
  return roll.personId === person.id || mayActAs(role, "aide");
}

export function photoPlace(context: Context, roll: Roll): PhotoPlace {
  return {
    roll: roll.number,
    has: context.stores.photos.has(roll.id),
    mayAdd: mayWriteOn(context, roll),
  };
}
