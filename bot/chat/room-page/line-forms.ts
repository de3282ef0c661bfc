import type { LineForm } from "../../../commands/speech/line.ts";
import type { CommandCard } from "../room/card.ts";

const known = new WeakMap<readonly CommandCard[], readonly LineForm[]>();

/** What lines are read by. Made once for the cards: a log holds hundreds of commands, and each is read by them. */
export function lineForms(cards: readonly CommandCard[]): readonly LineForm[] {
  const made =
    known.get(cards) ??
    cards.map(({ name, rest, options }) => ({ name, rest, options: options.map((option) => option.name) }));
  known.set(cards, made);
  return made;
}
