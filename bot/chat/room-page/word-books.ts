import { DEFAULT_LANGUAGE, type Language, languageOfTag } from "../../../store/shapes/language.ts";
import type { Words } from "./words.en.ts";

/* The page's words, a book for each language. A page fetches the one that is read on it, and another once it is chosen. */

export const LANGUAGE_NAMES = { en: "English", de: "Deutsch" } as const satisfies Record<Language, string>;

const FETCH: Readonly<Record<Language, () => Promise<Words>>> = {
  en: () => import("./words.en.ts").then(({ en }) => en),
  de: () => import("./words.de.ts").then(({ de }) => de),
};
const books = new Map<Language, Words>();

/** Rejects where it can't be fetched now. */
export async function fetchWords(language: Language): Promise<Words> {
  const words = books.get(language) ?? (await FETCH[language]());
  books.set(language, words);
  return words;
}

/** Of a language that was fetched: what is drawn is so before its language is set. */
export function wordsIn(language: Language): Words {
  const words = books.get(language);
  if (!words) throw new Error(`the words of ${language} are not here`);
  return words;
}

/** The first of the browser's languages that the page speaks. */
export function guessLanguage(wanted: readonly string[]): Language {
  return wanted.map(languageOfTag).find((language) => language !== undefined) ?? DEFAULT_LANGUAGE;
}
