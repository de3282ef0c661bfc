import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { de } from "./words.de.ts";
import { en, type Words } from "./words.en.ts";

export const LANGUAGES = { en, de } as const satisfies Record<string, Words>;
export type Language = keyof typeof LANGUAGES;

export const WordsContext = createContext<Words>(en);

/** The page's words in the language this person reads. */
export function useWords(): Words {
  return useContext(WordsContext);
}

/** The first of the browser's languages that the page speaks. */
export function guessLanguage(wanted: readonly string[]): Language {
  const known = wanted.map((tag) => tag.slice(0, 2).toLowerCase());
  return (known.find((tag) => tag in LANGUAGES) ?? "en") as Language;
}
