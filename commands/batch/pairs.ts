import type { Place } from "../../store/shapes/ledger.ts";
import type { FixPair } from "../../store/shapes/school.ts";

/*
 * Two-bath fixing: film clears in the first bath and finishes in the second, which is spared. When the first is used up it is
 * dropped, the second moves up, and a fresh one is second; after so many rotations both are mixed new.
 */

/** Where a bottle stands in the class's pairs; null: in none. */
export function placeIn(pairs: readonly FixPair[], number: number): Place | null {
  const pair = pairOf(pairs, number);
  return pair === undefined ? null : pair.first === number ? 1 : 2;
}

export function pairOf(pairs: readonly FixPair[], number: number): FixPair | undefined {
  return pairs.find(({ first, second }) => first === number || second === number);
}

/** The pair after its first bath is dropped; undefined: it has rotated as often as it may, and both are to be new. */
export function rotated(pair: FixPair, fresh: number, mostRotations: number): FixPair | undefined {
  if (pair.rotations >= mostRotations) return undefined;
  return { first: pair.second, second: fresh, rotations: pair.rotations + 1 };
}

/** The pairs with this one in place of every other that has one of its bottles. */
export function withPair(pairs: readonly FixPair[], pair: FixPair): FixPair[] {
  const isTouched = ({ first, second }: FixPair): boolean =>
    [first, second].some((number) => number === pair.first || number === pair.second);
  return [...pairs.filter((each) => !isTouched(each)), pair];
}
