import { parseLine } from "../../../commands/speech/line.ts";
import { lineForms } from "./line-forms.ts";
import type { CommandCard } from "../room/card.ts";

/* A form to open: which, what stands in it already, and why, where it was refused. */

export interface Fill {
  readonly command: string;
  readonly values: Readonly<Record<string, string>>;
  /** What was wrong with it; empty where nothing was. */
  readonly says: string;
  /** The field to look at first; null: the first one. */
  readonly option: string | null;
}

/** A line as a form filled in with what it holds; undefined where it is no line of these commands. */
export function fillOf(
  line: string,
  cards: readonly CommandCard[],
  says = "",
  option: string | null = null,
): Fill | undefined {
  const parsed = parseLine(line, lineForms(cards));
  if (!parsed.ok) return undefined;
  const { name, options } = parsed.value;
  // `film:…` stands for whatever belongs there.
  const values = Object.fromEntries(Object.entries(options).filter(([, value]) => value !== "…"));
  return { command: name, values, says, option };
}

/** Whether a line does nothing before it is filled in: `plan`. */
export function needsFilling({ command, values }: Fill, cards: readonly CommandCard[]): boolean {
  const card = cards.find(({ name }) => name === command);
  return card?.options.some(({ name, isRequired }) => isRequired && !values[name]) ?? false;
}
