/** Words of an English sentence that no German one has: where one is found, something was not translated. */
export const ENGLISH_WORDS =
  /\b(the|of|your|you|is|are|and|with|minutes|seconds|for|this|that|from|not|nothing|tank|reel|reels|roll|rolls|step|stop bath|rinse|fixer|wash|dryer|developer|pour|out|late|now|left|batch|bottle|class|teacher|free|fault)\b(?![:/])/i;

/** The English words in a German reply; a line to be typed, in code marks, is not one of its sentences. */
export function englishIn(...texts: readonly string[]): string[] {
  const words = new RegExp(ENGLISH_WORDS, "gi");
  return texts.flatMap((text) => text.replace(/`[^`]*`/g, "").match(words) ?? []);
}
