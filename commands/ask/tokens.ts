import { distance } from "fastest-levenshtein";

/* A sentence as words to compare: one spelling for any case, accent, umlaut or mark, and how near two words are. */

/** Above this a sentence is read only so far; what harms somebody is said early. */
const MOST_LETTERS = 2000;

/** `Wärmer` and `waermer` both as `warmer`; `ß` as `ss`. */
export function foldWord(text: string): string {
  return (
    text
      .normalize("NFKD")
      .replace(/\p{M}/gu, "")
      .toLowerCase()
      .replaceAll("ß", "ss")
      // `sooo`, `heeelp`: no word has a letter three times over.
      .replace(/(\p{L})\1{2,}/gu, "$1")
      .replace(/([aou])e/g, "$1")
  );
}

/** Words and numbers in their order; `20.5`, `1+1`, `9:30` and `°` stay whole. Apostrophes vanish: `what's`, `whats`. */
export function tokensOf(text: string): string[] {
  const folded = foldWord(text.slice(0, MOST_LETTERS)).replace(/['’`´]/g, "");
  return folded.match(/\d+(?:[.,:+/]\d+)*|\p{L}+|°|\?/gu) ?? [];
}

/** Whether `typed` may be `meant` with a slip of the finger: one wrong letter, two changed round, two in a long word. */
export function isSlipOf(typed: string, meant: string): boolean {
  const shorter = Math.min(typed.length, meant.length);
  if (shorter < 4 || Math.abs(typed.length - meant.length) > 2) return false;
  // Another first letter makes another word, `lachen` for `machen`, unless the first two changed places or one is lost.
  if (
    typed[0] !== meant[0] &&
    (typed[1] !== meant[0] || typed[0] !== meant[1]) &&
    typed.length >= meant.length
  )
    return false;
  const far = distance(typed, meant);
  // Of four letters one too many or too few may be a slip; another letter makes another word.
  if (shorter === 4 && typed.length === meant.length) return far === 2 && isTurnedRound(typed, meant);
  if (far <= (shorter >= 8 ? 2 : 1)) return true;
  return far === 2 && typed.length === meant.length && isTurnedRound(typed, meant);
}

/**
 * Finds the word that a typed one may be a slip of; of several, one as long as it. Words are compared letter by letter only
 * where they share nearly all of their letters, for a sentence may hold hundreds that nobody knows.
 */
export function createSlips(words: Iterable<string>): (typed: string) => string | undefined {
  let byLength: ReturnType<typeof sortByLength> | undefined;
  return (typed) => {
    byLength ??= sortByLength(words);
    const letters = lettersOf(typed);
    for (const more of [0, -1, 1, -2, 2]) {
      const near = byLength
        .get(typed.length + more)
        ?.find((each) => mayBeSlip(letters, each.letters) && isSlipOf(typed, each.word));
      if (near) return near.word;
    }
    return undefined;
  };
}

function sortByLength(words: Iterable<string>) {
  const byLength = new Map<number, { readonly word: string; readonly letters: number }[]>();
  for (const word of words)
    byLength.set(word.length, [...(byLength.get(word.length) ?? []), { word, letters: lettersOf(word) }]);
  return byLength;
}

/** Which letters a word has, a bit each; letters that share a bit only let more through. */
function lettersOf(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at += 1) letters |= 1 << (word.charCodeAt(at) & 31);
  return letters;
}

/** False only where no slip leads from one to the other: two letters changed are four bits. */
function mayBeSlip(letters: number, others: number): boolean {
  let differing = letters ^ others;
  for (let bit = 0; bit < 4; bit += 1) differing &= differing - 1;
  return differing === 0;
}

/** Two neighbours changed round: `statr`. */
function isTurnedRound(typed: string, meant: string): boolean {
  let at = 0;
  while (typed[at] === meant[at]) at += 1;
  return typed[at] === meant[at + 1] && typed[at + 1] === meant[at];
}
