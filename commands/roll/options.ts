import { splitWords } from "../../store/rolls-match.ts";
import { EVERY_ROLL } from "../../store/shapes/roll.ts";
import { type Completer, type Context, type PhotoSlot, UserError } from "../define.ts";
import { mayActAs } from "../../store/shapes/person.ts";
import { makeNumber, parseNumber } from "../speech/wording.ts";
import type { Roll } from "../../store/shapes/roll.ts";
import { queryOf } from "./query.ts";
import * as words from "./reply.ts";

export const completeRoll: Completer = (typed, context) => {
  const filter = {
    ...EVERY_ROLL,
    ...queryOf(
      splitWords(typed.replace(/^l/i, ""))
        .filter((word) => !/^\d+$/.test(word))
        .join(" "),
    ),
  };
  return context.stores.rolls.search(context.class.id, filter, 25, 0).rolls.map((roll) => ({
    label: `${makeNumber("roll", roll.number)} ${roll.personName}, ${roll.film}`.slice(0, 100),
    value: makeNumber("roll", roll.number),
  }));
};

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

export function photoOfRoll(context: Context, roll: Roll): PhotoSlot {
  return {
    kind: "roll",
    number: roll.number,
    isKept: context.stores.photos.has(roll.id),
    mayAdd: mayWriteOn(context, roll),
  };
}
