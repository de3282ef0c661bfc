import { inEach } from "../speech/language.ts";
import { LOOKS, type Look } from "./looks.ts";
import { fold } from "./nearest.ts";
import { de } from "./words/look.de.ts";
import { en } from "./words/look.en.ts";

/*
 * What is seen, in words. The log keeps a fault in one language, so that a class that reads two counts it once; each
 * reader sees it in their own, and finds it by either.
 */

const EACH = { en, de };
const words = inEach(EACH);

export function lookWord(look: Look): string {
  return words().words[look];
}

export function lookHelp(look: Look): string {
  return words().help[look];
}

/** What the log keeps as the fault. */
export function keptFault(look: Look): string {
  return en.words[look];
}

/** A fault from the log for the one who reads; one that is no look's stays as it is. */
export function sayFault(kept: string): string {
  const look = LOOKS.find((each) => en.words[each] === kept);
  return look === undefined ? kept : lookWord(look);
}

/** Faults as the log keeps them that the one who reads sees in words of which one begins so. */
export function faultsRead(beginning: string): string[] {
  const wanted = fold(beginning);
  const isRead = (look: Look): boolean =>
    lookWord(look)
      .split(" ")
      .some((word) => fold(word).startsWith(wanted));
  return words() === en || wanted === "" ? [] : LOOKS.filter(isRead).map(keptFault);
}

/** A fault as somebody typed it, in any language, as the log keeps it; one that is no look's stays as it is. */
export function readFault(typed: string): string {
  const wanted = fold(typed);
  const look = LOOKS.find((each) => Object.values(EACH).some((one) => fold(one.words[each]) === wanted));
  return look === undefined ? typed : keptFault(look);
}
