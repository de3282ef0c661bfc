import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Words } from "./words.en.ts";

export type { Words };
export const WordsContext = createContext<Words | null>(null);

/** The page's words in the language this person reads. */
export function useWords(): Words {
  const words = useContext(WordsContext);
  if (!words) throw new Error("drawn without words");
  return words;
}
