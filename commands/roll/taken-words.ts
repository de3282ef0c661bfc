import { inEach } from "../speech/language.ts";
import { plain } from "../speech/wording.ts";
import { sayFault } from "./look-words.ts";
import { de } from "./words/taken.de.ts";
import { en } from "./words/taken.en.ts";

const words = inEach({ en, de });

/** A value of the log that was taken for what was typed. */
export interface Taken {
  readonly typed: string;
  readonly value: string;
}

/** A sentence for each value that was taken for another than was typed. */
export function takenWords(taken: readonly Taken[]): string[] {
  return taken.map(({ typed, value }) => words().taken(plain(typed), plain(sayFault(value))));
}
