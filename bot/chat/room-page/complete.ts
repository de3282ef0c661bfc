import type { Suggestion } from "../../../commands/define.ts";
import type { CommandCard } from "../room/card.ts";
import type { Caret } from "./caret.ts";

/* What may be typed next. */

export interface Choice {
  readonly label: string;
  readonly hint: string;
  /** The whole line once this is taken. */
  readonly line: string;
}

const MOST = 8;

export function completeLocally(caret: Caret, line: string, cards: readonly CommandCard[]): Choice[] {
  switch (caret.at) {
    case "command":
      return completeCommand(caret.typed, cards);
    case "option":
      return [
        ...completeOption(caret.card, caret.typed, caret.others, line.slice(0, caret.from)),
        ...completeLonger(caret.card, caret.typed, caret.others, cards),
      ].slice(0, MOST);
    case "value": {
      const { choices = [] } = caret.card.options.find(({ name }) => name === caret.option) ?? {};
      const typed = caret.typed.toLowerCase();
      return choices
        .filter(({ label, value }) => [label, value].some((each) => each.toLowerCase().startsWith(typed)))
        .slice(0, MOST)
        .map((choice) => chooseValue(choice, line.slice(0, caret.from)));
    }
  }
}

/** Values the room offers, for the option the caret is in. */
export function completeFromRoom(
  caret: Extract<Caret, { at: "value" }>,
  line: string,
  offers: readonly Suggestion[],
): Choice[] {
  return offers.slice(0, MOST).map((offer) => chooseValue(offer, line.slice(0, caret.from)));
}

function completeCommand(typed: string, cards: readonly CommandCard[]): Choice[] {
  const starts = cards.filter(({ name }) => name.startsWith(typed));
  const holds = cards.filter(
    ({ name, summary }) =>
      !name.startsWith(typed) &&
      typed.length > 1 &&
      (name.includes(typed) || summary.toLowerCase().includes(typed)),
  );
  return [...starts, ...holds]
    .slice(0, MOST)
    .map(({ name, summary }) => ({ label: `/${name}`, hint: summary, line: `/${name} ` }));
}

function completeOption(
  card: CommandCard,
  typed: string,
  others: Readonly<Record<string, string>>,
  before: string,
): Choice[] {
  return card.options
    .filter(({ name }) => !(name in others) && name.startsWith(typed.toLowerCase()))
    .sort((a, b) => Number(b.isRequired) - Number(a.isRequired))
    .slice(0, MOST)
    .map(({ name, about }) => ({ label: `${name}:`, hint: about, line: `${before}${name}:` }));
}

/** `/plan ` may still become `/plan curve`. */
function completeLonger(
  card: CommandCard,
  typed: string,
  others: Readonly<Record<string, string>>,
  cards: readonly CommandCard[],
): Choice[] {
  if (Object.keys(others).length > 0) return [];
  return completeCommand(`${card.name} ${typed.toLowerCase()}`, cards);
}

function chooseValue({ label, value }: Suggestion, before: string): Choice {
  return {
    label,
    hint: label === value ? "" : value,
    line: `${before}${quoteWhereNeeded(value)} `,
  };
}

/** A value runs on to the next `word:`, so only one that holds such a thing, or a quote, needs quotes. */
export function quoteWhereNeeded(value: string): string {
  return /["\\]|(^|\s)[a-z][a-z0-9-]*:/i.test(value) || value.trim() !== value || value === ""
    ? `"${value.replace(/(["\\])/g, "\\$1")}"`
    : value;
}
