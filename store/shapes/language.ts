export const LANGUAGES = ["en", "de"] as const;

export type Language = (typeof LANGUAGES)[number];

export const DEFAULT_LANGUAGE: Language = "en";

/** The language of a tag such as `de-AT` (BCP 47); undefined for one that is not spoken here. */
export function languageOfTag(tag: string): Language | undefined {
  const primary = tag.split(/[-_]/)[0]?.toLowerCase();
  return LANGUAGES.find((language) => language === primary);
}

/** The language somebody reads by what is kept of them. */
export const languageRead = (tag: string | null | undefined): Language =>
  languageOfTag(tag ?? "") ?? DEFAULT_LANGUAGE;
