import { distance } from "fastest-levenshtein";

/* A sentence as words to compare: one spelling for any case, accent, umlaut or mark, and how near two words are. */

/** Above this a sentence is read only so far; what harms somebody is said early. */
const MOST_LETTERS = 2000;

/** `Wärmer` and `waermer` both as `warmer`; `ß` as `ss`. */
export function foldWord(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll("ß", "ss")
    .replace(/([aou])e/g, "$1");
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
    typed.length === meant.length
  )
    return false;
  const far = distance(typed, meant);
  // Of four letters one too many or too few may be a slip; another letter makes another word.
  if (shorter === 4 && typed.length === meant.length) return far === 2 && isTurnedRound(typed, meant);
  if (far <= (shorter >= 8 ? 2 : 1)) return true;
  return far === 2 && typed.length === meant.length && isTurnedRound(typed, meant);
}

/** Two neighbours changed round: `statr`. */
function isTurnedRound(typed: string, meant: string): boolean {
  let at = 0;
  while (typed[at] === meant[at]) at += 1;
  return typed[at] === meant[at + 1] && typed[at + 1] === meant[at];
}
