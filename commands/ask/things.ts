import { foldName } from "../sheet/names.ts";
import type { Dilution } from "../../store/shapes/sheet.ts";
import { isCommon } from "./lexicon.ts";
import { BOTTLES, FRAMES, PHRASES, TANKS } from "./number-words.ts";
import * as quantities from "./quantities.ts";
import { isSlipOf, tokensOf } from "./tokens.ts";

/* What a sentence speaks of: a film, a bath, a temperature, how long ago, which tank. */

/** The class's own names. */
export interface Names {
  readonly films: readonly string[];
  readonly developers: readonly string[];
}

export interface Things {
  /** Films that may be meant: one where it is clear. */
  readonly films: readonly string[];
  readonly developer: string | null;
  readonly dilution: Dilution | null;
  readonly tenthsC: number | null;
  readonly exposureIndex: number | null;
  /** A stretch of time, in seconds. */
  readonly seconds: number | null;
  readonly tank: number | null;
  readonly run: number | null;
  readonly bottle: number | null;
  readonly roll: number | null;
  readonly print: number | null;
  readonly frame: number | null;
}

export interface Found {
  readonly things: Things;
  /** The words that are left when names and quantities are taken out. */
  readonly rest: readonly string[];
}

export function findThings(text: string, names: Names): Found {
  const tokens = joinPhrases(tokensOf(withHalves(text)));
  const bench: quantities.Bench = { tokens, taken: tokens.map(() => false) };
  const numbered = (letter: string, nouns: ReadonlySet<string> | null): number | null =>
    quantities.takeNumbered(bench, letter, nouns);
  // The order counts: a name may hold a number that could be a speed or a temperature.
  const films = takeNames(bench, names.films);
  const [developer = null] = takeNames(bench, names.developers);
  const dilution = quantities.takeDilution(bench);
  const tank = numbered("t", TANKS);
  const bottle = numbered("b", BOTTLES);
  const run = numbered("r", null);
  const roll = numbered("l", null);
  const print = numbered("v", null);
  const frame = numbered("#", FRAMES);
  const seconds = quantities.takeSeconds(bench);
  const tenthsC = quantities.takeTemperature(bench, true);
  const exposureIndex = quantities.takeSpeed(bench);
  const things = {
    films,
    developer,
    dilution,
    tenthsC: tenthsC ?? quantities.takeTemperature(bench, false),
    exposureIndex,
    seconds,
    tank,
    run,
    bottle,
    roll,
    print,
    frame,
  };
  return { things, rest: tokens.filter((_, at) => !bench.taken[at]) };
}

/** `19 and a half` is 19.5: half read, it would be another temperature. */
const withHalves = (text: string): string =>
  text.replace(/(\d+)(?: and a half| ?einhalb| 1\/2| ?½)/gi, "$1.5");

function joinPhrases(tokens: readonly string[]): string[] {
  const joined: string[] = [];
  for (const token of tokens) {
    const before = joined.at(-1);
    const phrase = PHRASES.find(([first, second]) => first === before && second === token);
    if (phrase) joined.splice(-1, 1, phrase[2]);
    else joined.push(token);
  }
  return joined;
}

/**
 * Names of which the sentence has all words, or the first, or one that is no common word; numbers of a name decide
 * between names that begin alike.
 */
function takeNames(bench: quantities.Bench, names: readonly string[]): string[] {
  const parts = [...new Set(names)].map((name) => ({ name, words: tokensOf(foldName(name)) }));
  let best: { readonly names: string[]; readonly at: number[]; readonly score: number } = {
    names: [],
    at: [],
    score: 0,
  };
  for (const { name, words } of parts) {
    const at = words.map((word) => findWord(bench, word));
    const hit = words.filter((word, index) => (at[index] ?? -1) >= 0 && !quantities.isNumber(word));
    const hasAll = at.every((each) => each >= 0);
    // A common word alone names nothing: a film may be called `Fine 100`.
    if (!hasAll && !hit.some((word) => !isCommon(word) && word.length > 1)) continue;
    const score = at.filter((each) => each >= 0).length + (hasAll ? 0.5 : 0);
    if (score > best.score) best = { names: [name], at: at.filter((each) => each >= 0), score };
    else if (score === best.score) best = { ...best, names: [...best.names, name] };
  }
  for (const at of best.at) quantities.take(bench, at, 1);
  return best.names;
}

function findWord({ tokens, taken }: quantities.Bench, word: string): number {
  const same = tokens.findIndex((token, at) => !taken[at] && token === word);
  if (same >= 0 || quantities.isNumber(word)) return same;
  return tokens.findIndex((token, at) => !taken[at] && !isCommon(token) && isSlipOf(token, word));
}
