import { type Language, LANGUAGES } from "../../store/shapes/language.ts";
import { spokenLanguage } from "./language.ts";
import { choices as de } from "./words/choices.de.ts";
import { choices as en } from "./words/choices.en.ts";

const EACH: Readonly<Record<Language, Readonly<Record<string, string>>>> = { en, de };

/** A language is named in itself. */
const LANGUAGE_NAMES: Readonly<Record<string, string>> = { en: "English", de: "Deutsch" };

/** What a choice of a command's option is called; sizes and the like (`6x9`, `120`) are the same in all languages. */
export function choiceWord(
  command: string,
  option: string,
  value: string,
  language = spokenLanguage(),
): string {
  const words = EACH[language];
  return words[`${command} ${option} ${value}`] ?? words[value] ?? LANGUAGE_NAMES[value] ?? value;
}

/** The one of these values that is called so, in any language and with any capitals: whatever is shown may be typed. */
export function choiceCalled(
  said: string,
  command: string,
  option: string,
  values: readonly string[],
): string | undefined {
  const word = said.trim().toLowerCase();
  return values.find((value) =>
    [value, ...LANGUAGES.map((language) => choiceWord(command, option, value, language))].some(
      (each) => each.toLowerCase() === word,
    ),
  );
}
