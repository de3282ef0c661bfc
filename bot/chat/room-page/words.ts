import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { DEFAULT_LANGUAGE, type Language, languageOfTag } from "../../../store/shapes/language.ts";
import { de } from "./words.de.ts";
import { en, type Words } from "./words.en.ts";

export type { Language };
export const LANGUAGES = { en, de } as const satisfies Record<Language, Words>;

export const WordsContext = createContext<Words>(en);

/** The page's words in the language this person reads. */
export function useWords(): Words {
  return useContext(WordsContext);
}

/** The first of the browser's languages that the page speaks. */
export function guessLanguage(wanted: readonly string[]): Language {
  return wanted.map(languageOfTag).find((language) => language !== undefined) ?? DEFAULT_LANGUAGE;
}
