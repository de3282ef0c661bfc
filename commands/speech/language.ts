/*
 * Everything a person reads is worded in their own language. As one call has one clock reading, one stretch of work has
 * one listener: whoever begins it (a call, a cue, a digest) says whose language it is, and the words follow. A stretch is
 * synchronous, so that two of them never mix.
 */

export const LANGUAGES = ["en", "de"] as const;
export type Language = (typeof LANGUAGES)[number];
export const DEFAULT_LANGUAGE: Language = "en";

let spoken: Language = DEFAULT_LANGUAGE;

/** The language of the one who is spoken to. */
export function spokenLanguage(): Language {
  return spoken;
}

/** Does `work`, which must not wait for anything, in this language. */
export function speaking<T>(language: Language, work: () => T): T {
  const before = spoken;
  spoken = language;
  try {
    return work();
  } finally {
    spoken = before;
  }
}

/** The same words in each language; call the result for those of the one who is spoken to. */
export function inEach<Words>(words: Readonly<Record<Language, Words>>): () => Words {
  return () => words[spoken];
}

/** The language of a tag such as `de-AT` (BCP 47); undefined for one that is not spoken here. */
export function languageOfTag(tag: string): Language | undefined {
  const primary = tag.split(/[-_]/)[0]?.toLowerCase();
  return LANGUAGES.find((language) => language === primary);
}
