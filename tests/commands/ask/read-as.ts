import { readSentence } from "../../../commands/ask/read.ts";

export const CLASS_NAMES = { films: ["Lantern 400", "Quay 100"], developers: ["House MQ", "Pier Fine"] };

/** What a sentence is read as; `none` where nothing was understood, `torn` where two readings are offered. */
export function readAs(sentence: string): string {
  const { wanted, isTorn } = readSentence(sentence, CLASS_NAMES);
  return isTorn ? "torn" : (wanted[0] ?? "none");
}
