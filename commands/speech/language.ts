import { DEFAULT_LANGUAGE, type Language } from "../../store/shapes/language.ts";

/*
 * Everything a person reads is worded in their own language. As one call has one clock reading, one stretch of work has
 * one listener: whoever begins it (a call, a cue, a digest) says whose language it is, and the words follow. A stretch is
 * synchronous, so that two of them never mix.
 */

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
