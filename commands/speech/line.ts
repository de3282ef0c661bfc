import { distance } from "fastest-levenshtein";
import { fail, ok, type Result } from "../result.ts";

/*
 * One grammar for a typed line and for a button: `run next run:7 step:2`, `/plan film:"Lantern 400" temp:20`.
 * A value goes on to the next ` word:`, so quotes are needed only where the value itself holds one.
 */

export type LineFault =
  | { readonly code: "ERR_EMPTY_LINE" }
  | { readonly code: "ERR_UNKNOWN_COMMAND"; readonly word: string; readonly near: readonly string[] }
  | { readonly code: "ERR_OPEN_QUOTE"; readonly option: string }
  | { readonly code: "ERR_TWICE"; readonly option: string }
  | { readonly code: "ERR_STRAY_WORDS"; readonly words: string; readonly command: string };

export interface Line {
  readonly name: string;
  readonly options: Readonly<Record<string, string>>;
}

/** What of a command a line is read by. */
export interface LineForm {
  readonly name: string;
  /** The option that takes words written without a key. */
  readonly rest?: string | null | undefined;
  /**
   * Its options. Any other word is text where a blank follows its colon, as in prose: `note:Doors: one stood open`; without
   * the blank it is a slip, and refused. Where they are not given, each word with a colon is an option.
   */
  readonly options?: readonly string[];
}

const KEY = /(^|\s)([a-z][a-z0-9-]*):/gi;
/** What follows a colon in prose and in addresses. */
const PROSE = /^(\s|$|\/\/)/;

export function parseLine(text: string, forms: readonly LineForm[]): Result<Line, LineFault> {
  const trimmed = text.trim().replace(/^\/\s*/, "");
  if (trimmed === "") return fail({ code: "ERR_EMPTY_LINE" });
  const lower = trimmed.toLowerCase().replace(/\s+/g, " ");
  const form = forms
    .filter(({ name }) => lower === name || lower.startsWith(`${name} `))
    .sort((a, b) => b.name.length - a.name.length)[0];
  if (!form) {
    const word = trimmed.split(/\s+/).slice(0, 2).join(" ");
    const names = forms.map(({ name }) => name);
    return fail({ code: "ERR_UNKNOWN_COMMAND", word, near: nearNames(word.toLowerCase(), names) });
  }
  const words = form.name.split(" ").length;
  const tail = trimmed.replace(new RegExp(`^(?:\\S+\\s*){${words}}`), "");
  return parseOptions(tail, form);
}

function parseOptions(tail: string, { name, rest, options: known }: LineForm): Result<Line, LineFault> {
  const options: Record<string, string> = Object.create(null);
  const nextKey = (text: string, from: number): Key | undefined => findKey(text, from, known);
  const first = nextKey(tail, 0);
  const stray = tail.slice(0, first?.at ?? tail.length).trim();
  if (stray !== "") {
    if (!rest) return fail({ code: "ERR_STRAY_WORDS", words: stray, command: name });
    options[rest] = unquote(stray);
  }
  let key = first;
  while (key) {
    if (key.option in options) return fail({ code: "ERR_TWICE", option: key.option });
    const start = skipSpace(tail, key.end);
    if (tail[start] === '"') {
      const close = closingQuote(tail, start);
      if (close === -1) return fail({ code: "ERR_OPEN_QUOTE", option: key.option });
      options[key.option] = tail.slice(start + 1, close).replace(/\\(["\\])/g, "$1");
      key = nextKey(tail, close + 1);
    } else {
      const following = nextKey(tail, key.end);
      options[key.option] = tail.slice(key.end, following?.at ?? tail.length).trim();
      key = following;
    }
  }
  return ok({ name, options: { ...options } });
}

interface Key {
  readonly at: number;
  readonly end: number;
  readonly option: string;
}

function findKey(text: string, from: number, known: readonly string[] | undefined): Key | undefined {
  KEY.lastIndex = from;
  for (let match = KEY.exec(text); match; match = KEY.exec(text)) {
    const option = (match[2] ?? "").toLowerCase();
    const isText = known && !known.includes(option) && PROSE.test(text.slice(KEY.lastIndex));
    if (!isText) return { at: match.index, end: KEY.lastIndex, option };
  }
  return undefined;
}

function skipSpace(text: string, from: number): number {
  let at = from;
  while (text[at] === " ") at += 1;
  return at;
}

function closingQuote(text: string, open: number): number {
  for (let at = open + 1; at < text.length; at += 1) {
    if (text[at] === "\\") at += 1;
    else if (text[at] === '"') return at;
  }
  return -1;
}

function unquote(text: string): string {
  return /^".*"$/s.test(text) ? text.slice(1, -1).replace(/\\(["\\])/g, "$1") : text;
}

/** The reverse of parseLine: what a button carries, what a form types. */
export function makeLine(name: string, options: Readonly<Record<string, string | number>>): string {
  const parts = Object.entries(options).map(([key, value]) => `${key}:${quote(String(value))}`);
  return [name, ...parts].join(" ");
}

/** What was given of some options, without those that were left out. */
export function givenOf<T extends string | number>(
  options: Readonly<Record<string, T | undefined>>,
): Readonly<Record<string, T>> {
  return Object.fromEntries(
    Object.entries(options).flatMap(([name, value]) =>
      value === undefined || value === "" ? [] : [[name, value] as const],
    ),
  );
}

/** A button carries a line of at most so many characters, in every chat. */
const LONGEST_KEY_LINE = 100;

export const fitsKey = (line: string): boolean => line.length <= LONGEST_KEY_LINE;

function quote(value: string): string {
  return /^[\p{L}\p{N}+.,/°%-]+$/u.test(value) ? value : `"${value.replace(/(["\\])/g, "\\$1")}"`;
}

/** Command names a slip of the finger away; failing that, those of the group that was meant. */
export function nearNames(word: string, names: readonly string[]): string[] {
  const within = (most: number, farOf: (name: string) => number): string[] =>
    names
      .map((name) => ({ name, far: farOf(name) }))
      .filter(({ far }) => far <= most)
      .sort((a, b) => a.far - b.far)
      .slice(0, 3)
      .map(({ name }) => name);
  const near = within(2, (name) => distance(word, name));
  if (near.length > 0) return near;
  const group = word.split(" ")[0] ?? "";
  return within(1, (name) => distance(group, name.split(" ")[0] ?? ""));
}
