import { DEFAULT_LANGUAGE, type Language } from "../../../../store/shapes/language.ts";
import { de } from "./discord.de.ts";
import { type DiscordWords, en } from "./discord.en.ts";

const EACH: Readonly<Record<Language, DiscordWords>> = { en, de };

/** The adapter's own words in a language it was told, which may be several turns ago; in the default one where it was told none. */
export function discordWords(language: Language = DEFAULT_LANGUAGE): DiscordWords {
  return EACH[language];
}
