import { EVERY_PRINT, type Print } from "../../store/shapes/print.ts";
import { mayActAs } from "../../store/shapes/person.ts";
import { type Completer, type Context, type PhotoSlot, UserError } from "../define.ts";
import { makeNumber, parseNumber } from "../speech/wording.ts";
import { refuseUnreadable } from "../unreadable.ts";
import * as words from "./recipe-words.ts";

/* Which print is meant, and who may write on it. */

export const completePrint: Completer = (typed, { stores, class: { id } }) => {
  const typedWords = typed.replace(/^v(?=\d)/i, "").replace(/\b\d+\b/g, " ");
  return stores.prints
    .search(id, { ...EVERY_PRINT, words: [typedWords] }, 25, 0)
    .prints.map(({ number, title, personName }) => ({
      label: `${makeNumber("print", number)} ${[personName, title].filter(Boolean).join(", ")}`.slice(0, 100),
      value: makeNumber("print", number),
    }));
};

/** The one asked for, or this person's newest. @throws UserError where there is none, or it can't be read. */
export function findPrint(context: Context, text: string | undefined): Print {
  const { stores, person, class: school } = context;
  if (text === undefined) {
    const [newest] = stores.prints.search(school.id, { ...EVERY_PRINT, personId: person.id }, 1, 0).prints;
    if (!newest) throw new UserError("ERR_NO_PRINT_YET", words.noPrintYet());
    return newest;
  }
  const number = parseNumber("print", text);
  const print = number === undefined ? undefined : stores.prints.find(school.id, number);
  if (print) return print;
  refuseUnreadable(context, "print", number);
  throw new UserError("ERR_UNKNOWN_PRINT", words.unknownPrint(text));
}

/** One that this person may write on. */
export function ownPrint(context: Context, text: string | undefined): Print {
  const print = findPrint(context, text);
  if (!mayWriteOn(context, print)) throw new UserError("ERR_NOT_YOUR_PRINT", words.notYourPrint());
  return print;
}

export const mayWriteOn = ({ person, role }: Context, print: Print): boolean =>
  print.personId === person.id || mayActAs(role, "aide");

export const photoOfPrint = (context: Context, print: Print): PhotoSlot => ({
  kind: "print",
  number: print.number,
  isKept: context.stores.prints.photoOf(print.id) !== undefined,
  mayAdd: mayWriteOn(context, print),
});
