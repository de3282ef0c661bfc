import { distance } from "fastest-levenshtein";

/* Values over a slip of the finger: what is offered while typing, and what a mistyped filter is taken for. */

export interface Used {
  readonly value: string;
  readonly uses: number;
}

/** Case, accents, spaces and signs aside: `Lantern-400` and `lantern 400` are one. */
export function fold(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

/** Slips allowed in a word of this length: one in four letters, at most three. */
function slipsIn(length: number): number {
  return Math.min(3, Math.floor(length / 4) + (length >= 3 ? 1 : 0));
}

/** How far a value is from what was typed; null: too far. Smaller is better. */
function farness(typed: string, value: string): number | null {
  if (value === typed) return 0;
  if (value.startsWith(typed)) return 1;
  if (value.split(" ").some((word) => word.startsWith(typed))) return 2;
  if (value.includes(typed)) return 3;
  // What is being typed is compared with as much of the value, so that a slip early on doesn't end the search.
  const slips = Math.min(distance(typed, value), distance(typed, value.slice(0, typed.length)));
  return slips <= slipsIn(typed.length) ? 3 + slips : null;
}

/** The likeliest first; of two alike the more used. With nothing typed, the most used. */
export function nearest(typed: string, values: readonly Used[], limit: number): string[] {
  const wanted = fold(typed);
  return values
    .flatMap((each) => {
      const far = wanted === "" ? 0 : farness(wanted, fold(each.value));
      return far === null ? [] : [{ ...each, far }];
    })
    .sort((a, b) => a.far - b.far || b.uses - a.uses || a.value.localeCompare(b.value))
    .slice(0, limit)
    .map(({ value }) => value);
}

/** The one value that was meant; undefined where none is, or where two are as likely. */
export function pickNearest(typed: string, values: readonly Used[]): string | undefined {
  const wanted = fold(typed);
  const exact = values.filter(({ value }) => fold(value) === wanted);
  if (exact.length > 0) return exact.find(({ value }) => value === typed)?.value ?? exact[0]?.value;
  const [first, second] = values
    .flatMap(({ value }) => {
      const far = farness(wanted, fold(value));
      return far === null || wanted === "" ? [] : [{ value, far }];
    })
    .sort((a, b) => a.far - b.far);
  return first && (!second || first.far < second.far) ? first.value : undefined;
}
