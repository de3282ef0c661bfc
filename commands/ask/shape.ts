import type { Action } from "../define.ts";
import type { Facts } from "./facts.ts";
import type { Reading } from "./read.ts";

/* What an answer to a sentence is made of. */

/** Commands that change nothing, so that a sentence may show what they say. */
export const READING_COMMANDS = [
  "run status",
  "batch status",
  "class board",
  "help",
  "caution",
  "sheet list",
  "roll fault",
  "roll find",
  "print fault",
  "print again",
] as const;
export type ReadingCommand = (typeof READING_COMMANDS)[number];

export interface Answer {
  readonly text: string;
  readonly show?: {
    readonly command: ReadingCommand;
    readonly options: Readonly<Record<string, string | number>>;
  };
  readonly keys: readonly Action[];
}

export type Answerer = (reading: Reading, facts: Facts) => Answer;

export const says = (text: string, ...keys: Action[]): Answer => ({ text, keys });
export const shows = (
  command: ReadingCommand,
  options: Readonly<Record<string, string | number>> = {},
  text = "",
  keys: readonly Action[] = [],
): Answer => ({ text, keys, show: { command, options } });
