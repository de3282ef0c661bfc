import type { NameForms, Redaction, Traces } from "../../store/redaction.ts";
import { inEach } from "../speech/language.ts";
import { somebody } from "../speech/name-words.ts";
import { escapeXml } from "../speech/svg.ts";
import { makeNumber, plain } from "../speech/wording.ts";
import { de } from "./words/redact.de.ts";
import { en } from "./words/redact.en.ts";

/* Taking a person's name out of what others wrote. Pure. */

const words = inEach({ en, de });

/** Shorter parts of a name are words of every language. */
const LEAST_PART = 3;

/**
 * The ways in which a person may be named in a text: by name, and by a part of it that nobody else of the class has.
 * `others` are the names of the others.
 */
export function namesOf(names: readonly string[], others: readonly string[]): NameForms {
  const taken = new Set(others.flatMap((other) => partsOf(other).map((part) => part.toLowerCase())));
  const parts = names
    .flatMap(partsOf)
    .filter((part) => [...part].length >= LEAST_PART && !taken.has(part.toLowerCase()));
  const whole = names.filter((name) => !others.some((other) => other.toLowerCase() === name.toLowerCase()));
  return { whole: withMarkup(whole), parts: withMarkup(parts) };
}

function partsOf(name: string): string[] {
  return name.split(/[\s.]+/).filter((part) => !/^\d*$/.test(part));
}

/** As the name stands in a reply and in a picture, where its signs are made harmless. */
function withMarkup(names: readonly string[]): string[] {
  return [...new Set(names.flatMap((name) => [name, plain(name), escapeXml(name)]))]
    .filter((name) => name !== "")
    .sort((a, b) => b.length - a.length);
}

/** The text with `somebody` for the names, word by word: `Mina` is not taken out of `Minaret`. */
export function redactText(text: string, { whole, parts }: NameForms): string {
  const instead = somebody();
  const wholly = whole.reduce((rest, name) => rest.replace(wordPattern(name, "giu"), instead), text);
  const flagsOf = (part: string): string => (ALSO_WORDS.has(part.toLowerCase()) ? "gu" : "giu");
  return parts.reduce((rest, name) => rest.replace(wordPattern(name, flagsOf(name)), instead), wholly);
}

/** First names that are common words in lower case: so written, they are taken for the word. */
const ALSO_WORDS = new Set(
  "will mark rose hope faith grace may june april august art frank rich penny ray dean drew grant lance miles chase clay bill bob jack pat rob sue ernst".split(
    " ",
  ),
);

function wordPattern(name: string, flags: string): RegExp {
  return new RegExp(`(?<![\\p{L}\\p{N}])${sourceOf(name)}(?![\\p{L}\\p{N}])`, flags);
}

/** Undefined where there is nothing to look for. */
function patternOf(names: readonly string[], flags: string): RegExp | undefined {
  if (names.length === 0) return undefined;
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${names.map(sourceOf).join("|")})(?![\\p{L}\\p{N}])`, flags);
}

function sourceOf(name: string): string {
  const escaped = name.replace(/[\\^$.*+?()[\]{}|]/g, "\\$&");
  // With the endings that names take: `Minas Dose`, `Bens`, `den Müllern`.
  return [...name].length > 2 ? `${escaped}(?:s|es|n|en|ns)?` : escaped;
}

/** Every text inside a JSON value; keys are the program's own. */
export function redactJson(value: unknown, names: NameForms): unknown {
  if (typeof value === "string") return redactText(value, names);
  if (Array.isArray(value)) return value.map((each) => redactJson(each, names));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, redactJson(each, names)]));
}

/** Shorter words may be anybody's: by them alone nothing is taken for a quotation. */
const LEAST_QUOTED = 12;

/** A number said aloud, by its letter: whose it is, the numbers say. */
const SAID = /(?<![\p{L}\p{N}])([LRPV])(\d{1,9})(?![\p{L}\p{N}])/giu;

/** Whether a JSON value tells of somebody: by a name, by a number of theirs said aloud, or in words written of their rolls and prints. */
export function tellsOf(
  { names, texts, plans, runs, rolls, prints }: Traces,
  { parts }: NameForms,
): (value: unknown) => boolean {
  const isWord = (part: string): boolean => ALSO_WORDS.has(part.toLowerCase());
  const patterns = [
    patternOf([...withMarkup(names), ...parts.filter((part) => !isWord(part))], "iu"),
    patternOf(parts.filter(isWord), "u"),
  ].flatMap((pattern) => pattern ?? []);
  const quoted = withMarkup(texts.filter((text) => [...text].length >= LEAST_QUOTED)).map((text) =>
    text.toLowerCase(),
  );
  const numbers = new Set([
    ...plans.map((number) => makeNumber("plan", number)),
    ...runs.map((number) => makeNumber("run", number)),
    ...rolls.map((number) => makeNumber("roll", number)),
    ...prints.map((number) => makeNumber("print", number)),
  ]);
  const named = [...withMarkup(names), ...parts].map((name) => name.toLowerCase());
  // Evenings of answers are read: what a plain search settles is not asked of patterns.
  function inText(text: string): boolean {
    const lower = text.toLowerCase();
    if (quoted.some((each) => lower.includes(each))) return true;
    if (named.some((each) => lower.includes(each)) && patterns.some((pattern) => pattern.test(text)))
      return true;
    for (const [said] of /[lrpv]\d/.test(lower) ? text.matchAll(SAID) : [])
      if (numbers.has(said.toUpperCase())) return true;
    return false;
  }
  return function tells(value: unknown): boolean {
    if (typeof value === "string") return inText(value);
    if (typeof value !== "object" || value === null) return false;
    return Object.values(value).some(tells);
  };
}

export const redaction: Redaction = {
  formsOf: namesOf,
  inText: redactText,
  inJson: redactJson,
  tellsOf,
  withdrawn: () => words().withdrawn,
};
