import type { Reply } from "../../../commands/define.ts";
import { LONGEST_KEY } from "./key-class.ts";
import type { KnownPlace } from "./settings.ts";
import { sentenceWords } from "./words/sentences.ts";

/* Which of several classes a sentence is about, where a message alone does not tell it: one key for each. */

/** Not the beginning of any command's line. */
const CHOICE = /^@(\S+)(?: (.*))?$/s;
const MOST_CLASSES = 20;

export function chooseClass(text: string, places: readonly KnownPlace[]): Reply {
  const actions = places.slice(0, MOST_CLASSES).map(({ place }) => ({
    label: place.className,
    line: makeChoice(place.classKey, text),
  }));
  return { text: sentenceWords(places[0]?.language).whichClass, actions };
}

/** A sentence too long for a key is left behind: then the key opens what is next in that class. */
function makeChoice(classKey: string, text: string): string {
  const whole = `@${classKey} ${text}`;
  return whole.length <= LONGEST_KEY ? whole : `@${classKey}`;
}

/** Undefined where a line is no such key. */
export function readChoice(
  line: string,
): { name: string; options: { text?: string }; classKey: string } | undefined {
  const [, classKey, text] = CHOICE.exec(line) ?? [];
  if (classKey === undefined) return undefined;
  return text === undefined
    ? { name: "help", options: {}, classKey }
    : { name: "ask", options: { text }, classKey };
}
