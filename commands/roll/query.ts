import { splitWords } from "../../store/rolls-match.ts";
import type { RollFilter } from "../../store/shapes/roll.ts";
import { faultsRead } from "./look-words.ts";

/** What was typed as words of a search, a fault's words as their reader means them. */
export function queryOf(text: string): Pick<RollFilter, "words" | "readAs"> {
  const words = splitWords(text);
  return { words, readAs: words.map(faultsRead) };
}
