import type { CommandCard } from "../room/card.ts";

/* Where in a command line the caret stands. */

export type Caret =
  | { readonly at: "command"; readonly typed: string }
  /** `others` are the options written before; `from` is where the typed word begins. */
  | {
      readonly at: "option";
      readonly card: CommandCard;
      readonly typed: string;
      readonly from: number;
      readonly others: Readonly<Record<string, string>>;
    }
  | {
      readonly at: "value";
      readonly card: CommandCard;
      readonly option: string;
      readonly typed: string;
      readonly from: number;
      readonly others: Readonly<Record<string, string>>;
    };

const KEY = /(^|\s)([a-z][a-z0-9-]*):/gi;

/** Reads the line up to the caret. What follows the caret is not looked at. */
export function readCaret(line: string, cards: readonly CommandCard[]): Caret {
  const lead = /^\s*\/?\s*/.exec(line)?.[0].length ?? 0;
  const body = line.slice(lead);
  const lower = body.toLowerCase().replace(/\s+/g, " ");
  const card = cards
    .filter(({ name }) => lower.startsWith(`${name} `))
    .sort((a, b) => b.name.length - a.name.length)[0];
  if (!card) return { at: "command", typed: lower.trimStart() };
  const head = new RegExp(`^(?:\\S+\\s+){${card.name.split(" ").length}}`).exec(body)?.[0].length ?? 0;
  return readTail(line, lead + head, card);
}

function readTail(line: string, start: number, card: CommandCard): Caret {
  const known = new Set(card.options.map(({ name }) => name));
  const keys = [...line.slice(start).matchAll(KEY)]
    .map((match) => ({
      option: (match[2] ?? "").toLowerCase(),
      at: start + match.index,
      end: start + match.index + match[0].length,
    }))
    .filter(({ option }) => known.has(option));
  const others: Record<string, string> = {};
  keys.forEach(({ option, end }, index) => {
    if (index < keys.length - 1) others[option] = unquote(line.slice(end, keys[index + 1]?.at));
  });
  const last = keys[keys.length - 1];
  if (!last) {
    const word = /\S*$/.exec(line.slice(start))?.[0] ?? "";
    return { at: "option", card, typed: word, from: line.length - word.length, others };
  }
  const value = line.slice(last.end);
  const quoted = /^\s*"/.test(value);
  const isClosed = quoted && /^\s*"(?:[^"\\]|\\.)*"\s/.test(value);
  if (isClosed || (!quoted && /\S\s$/.test(value))) {
    const word = isClosed ? (/\S*$/.exec(value)?.[0] ?? "") : "";
    others[last.option] = unquote(isClosed ? value.slice(0, value.length - word.length) : value);
    return { at: "option", card, typed: word, from: line.length - word.length, others };
  }
  const typed = value.replace(/^\s*"?/, "");
  return { at: "value", card, option: last.option, typed, from: last.end, others };
}

function unquote(text: string): string {
  return text
    .trim()
    .replace(/^"(.*)"$/s, "$1")
    .replace(/\\(["\\])/g, "$1");
}
