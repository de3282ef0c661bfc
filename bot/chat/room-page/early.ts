import { api } from "./api.ts";
import { readKept } from "./kept.ts";
import { applyTheme } from "./theme.ts";
import { fetchWords, guessLanguage } from "./word-books.ts";

/* What the first view needs beside its code: asked for, and done, while that is still on its way. */

// A bright page, be it for a second, is the last thing a darkroom needs.
applyTheme(readKept("theme", "auto"))();

export const firstLanguage = readKept("language", guessLanguage(navigator.languages));
export const firstWords = fetchWords(firstLanguage);
let me: ReturnType<typeof api.me> | null = api.me();

/** Who we are: the first time as it was asked early, later anew. */
export function askMe(): ReturnType<typeof api.me> {
  const asked = me ?? api.me();
  me = null;
  return asked;
}
