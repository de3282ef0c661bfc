import { foldName } from "../sheet/names.ts";
import { parseDilution, pointDecimal } from "../speech/measure.ts";
import type { Dilution } from "../../store/shapes/sheet.ts";
import { isCommon } from "./lexicon.ts";
import { foldWord, isSlipOf, tokensOf } from "./tokens.ts";

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
}

export interface Found {
  readonly things: Things;
  /** The words that are left when names and quantities are taken out. */
  readonly rest: readonly string[];
}

const NUMBER_WORDS: Readonly<Record<string, number>> = Object.fromEntries(
  (
    [
      ["one eins ein eine einer einen a an ne ner", 1],
      ["two zwei zwo", 2],
      ["three drei", 3],
      ["four vier", 4],
      ["five fünf", 5],
      ["six sechs", 6],
      ["seven sieben", 7],
      ["eight acht", 8],
      ["nine neun", 9],
      ["ten zehn", 10],
      ["twenty zwanzig", 20],
      ["thirty dreißig", 30],
      ["half halbe halben halbes halb", 0.5],
    ] as const
  ).flatMap(([words, value]) => words.split(" ").map((word) => [foldWord(word), value])),
);
const wordsOf = (text: string): ReadonlySet<string> => new Set(text.split(" ").map(foldWord));
const SECONDS = wordsOf("s sec secs second seconds sek sekunde sekunden");
const MINUTES = wordsOf("m min mins minute minutes minuten");
const CELSIUS = wordsOf("c celsius");
const FAHRENHEIT = wordsOf("f fahrenheit");
const DEGREES = wordsOf("° degrees degree deg grad");
const TANKS = wordsOf("tank tanks dose dosen");
const BOTTLES = wordsOf("bottle flasche batch");
const SINCE = wordsOf("since seit for");
const NUMBER_SIGNS = wordsOf("number nummer no nr");
const EXPOSED = wordsOf(
  "at auf to iso asa ei shot pushed push pulled gepusht belichtet fotografiert exposed als",
);
/** The full stops of the usual scale of film speeds, and thirds people set: as published in ISO 5800 and ISO 6. */
const SPEEDS = new Set([
  25, 32, 40, 50, 64, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500,
  3200, 6400, 12800,
]);
/** A bare number between these may be a bath's temperature. */
const [COOLEST_C, WARMEST_C] = [12, 32];
const [COOLEST_F, WARMEST_F] = [55, 90];

interface Bench {
  readonly tokens: readonly string[];
  readonly taken: boolean[];
}

export function findThings(text: string, names: Names): Found {
  const tokens = joinPhrases(tokensOf(text));
  const bench: Bench = { tokens, taken: tokens.map(() => false) };
  const numbered = (letter: string, nouns: ReadonlySet<string> | null): number | null =>
    takeNumbered(bench, letter, nouns);
  // The order counts: a name may hold a number that could be a speed or a temperature.
  const films = takeNames(bench, names.films);
  const [developer = null] = takeNames(bench, names.developers);
  const dilution = takeDilution(bench);
  const tank = numbered("t", TANKS);
  const bottle = numbered("b", BOTTLES);
  const run = numbered("r", null);
  const roll = numbered("l", null);
  const seconds = takeSeconds(bench);
  const tenthsC = takeTemperature(bench, true);
  const exposureIndex = takeSpeed(bench);
  const things = {
    films,
    developer,
    dilution,
    tenthsC: tenthsC ?? takeTemperature(bench, false),
    exposureIndex,
    seconds,
    tank,
    run,
    bottle,
    roll,
  };
  return { things, rest: tokens.filter((_, at) => !bench.taken[at]) };
}

/** Two words that are one thing: `stop bath`. */
const PHRASES: readonly (readonly [first: string, second: string, as: string])[] = [
  ["stop", "bath", "stopbath"],
  ["stopp", "bad", "stoppbad"],
  ["wetting", "agent", "wettingagent"],
  ["wash", "aid", "washaid"],
  ["contact", "sheet", "contactsheet"],
  ["data", "sheet", "datasheet"],
  ["exposure", "index", "exposureindex"],
  ["clearing", "time", "clearingtime"],
  ["red", "light", "redlight"],
  ["pour", "out", "pourout"],
  ["to", "go", "togo"],
  ["give", "up", "giveup"],
  ["gebe", "auf", "giveup"],
  ["developing", "time", "developmenttime"],
  ["development", "time", "developmenttime"],
  ["hang", "on", "hangon"],
  ["go", "back", "goback"],
  ["end", "it", "endit"],
  ["hor", "auf", "horauf"],
  ["hore", "auf", "horeauf"],
  ["water", "marks", "watermarks"],
  ["fertig", "zum", "bereit"],
].map(([first = "", second = "", as = ""]) => [foldWord(first), foldWord(second), foldWord(as)]);

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

function take({ taken }: Bench, from: number, count: number): void {
  for (let at = from; at < from + count; at += 1) taken[at] = true;
}

const isNumber = (token: string | undefined): boolean => /^\d+([.,]\d+)?$/.test(token ?? "");

function numberAt({ tokens, taken }: Bench, at: number): number | null {
  const token = tokens[at];
  if (token === undefined || taken[at]) return null;
  if (isNumber(token)) return Number(pointDecimal(token));
  return NUMBER_WORDS[token] ?? null;
}

/**
 * Names of which the sentence has all words, or the first, or one that is no common word; numbers of a name decide
 * between names that begin alike.
 */
function takeNames(bench: Bench, names: readonly string[]): string[] {
  const parts = [...new Set(names)].map((name) => ({ name, words: tokensOf(foldName(name)) }));
  let best: { readonly names: string[]; readonly at: number[]; readonly score: number } = {
    names: [],
    at: [],
    score: 0,
  };
  for (const { name, words } of parts) {
    const at = words.map((word) => findWord(bench, word));
    const hit = words.filter((word, index) => (at[index] ?? -1) >= 0 && !isNumber(word));
    const hasAll = at.every((each) => each >= 0);
    // A common word alone names nothing: a film may be called `Fine 100`.
    if (!hasAll && !hit.some((word) => !isCommon(word) && word.length > 1)) continue;
    const score = at.filter((each) => each >= 0).length + (hasAll ? 0.5 : 0);
    if (score > best.score) best = { names: [name], at: at.filter((each) => each >= 0), score };
    else if (score === best.score) best = { ...best, names: [...best.names, name] };
  }
  for (const at of best.at) take(bench, at, 1);
  return best.names;
}

function findWord({ tokens, taken }: Bench, word: string): number {
  const same = tokens.findIndex((token, at) => !taken[at] && token === word);
  if (same >= 0 || isNumber(word)) return same;
  return tokens.findIndex((token, at) => !taken[at] && !isCommon(token) && isSlipOf(token, word));
}

function takeDilution(bench: Bench): Dilution | null {
  const at = bench.tokens.findIndex(
    (token, index) =>
      !bench.taken[index] && (/^\d+[+:]\d+$/.test(token) || /^(stock|stammlosung)$/.test(token)),
  );
  const token = bench.tokens[at];
  if (token === undefined) return null;
  const read = parseDilution(token === "stammlosung" ? "stock" : token);
  // 9:30 is a time, and 1:30 may be one.
  const isTime = token.includes(":") && (!token.startsWith("1:") || SINCE.has(bench.tokens[at - 1] ?? ""));
  if (!read.ok || isTime) return null;
  const { concentrateParts, waterParts } = read.value;
  if (token !== "stock" && token !== "stammlosung") take(bench, at, 1);
  return { concentrateParts, waterParts };
}

/** `tank 3`, `dose drei`, `t3`, `t 3`, `tank is number 5`. */
function takeNumbered(bench: Bench, letter: string, nouns: ReadonlySet<string> | null): number | null {
  const { tokens } = bench;
  for (const [at, token] of tokens.entries()) {
    if (bench.taken[at]) continue;
    const isNoun = nouns?.has(token) ?? false;
    if (!isNoun && token !== letter) continue;
    const reach = isNoun ? 3 : 1;
    for (let next = at + 1; next <= at + reach; next += 1) {
      const isFar = next > at + 1 && !NUMBER_SIGNS.has(tokens[next - 1] ?? "");
      const number = isFar ? null : numberAt(bench, next);
      if (
        number === null ||
        !Number.isInteger(number) ||
        number < 1 ||
        /^(a|an|ein\w*)$/.test(tokens[next] ?? "")
      )
        continue;
      take(bench, next, 1);
      return number;
    }
  }
  return null;
}

function takeSeconds(bench: Bench): number | null {
  const { tokens } = bench;
  for (const [at, token] of tokens.entries()) {
    if (bench.taken[at]) continue;
    if (/^\d{1,2}:[0-5]\d$/.test(token)) {
      take(bench, at, 1);
      const [minutes = 0, seconds = 0] = token.split(":").map(Number);
      return minutes * 60 + seconds;
    }
    const unit = SECONDS.has(token) ? 1 : MINUTES.has(token) ? 60 : 0;
    if (unit === 0 || at === 0) continue;
    const number = halfOf(bench, at) ?? numberAt(bench, at - 1);
    if (number === null) continue;
    take(bench, at - 1, 2);
    return Math.round(number * unit);
  }
  return null;
}

/** `half a minute`. */
function halfOf({ tokens }: Bench, at: number): number | null {
  return NUMBER_WORDS[tokens[at - 2] ?? ""] === 0.5 && NUMBER_WORDS[tokens[at - 1] ?? ""] === 1 ? 0.5 : null;
}

/** With its scale or the word degrees; else a bare number that could be a bath's. */
function takeTemperature(bench: Bench, hasUnit: boolean): number | null {
  const { tokens } = bench;
  for (const [at, token] of tokens.entries()) {
    if (bench.taken[at] || !isNumber(token)) continue;
    const value = Number(pointDecimal(token));
    const unit = tokens
      .slice(at + 1, at + 3)
      .join(" ")
      .split(" ");
    const isF = unit.some((each) => FAHRENHEIT.has(each));
    const isC = unit.some((each) => CELSIUS.has(each));
    const isMarked = isF || isC || DEGREES.has(tokens[at + 1] ?? "");
    if (hasUnit !== isMarked) continue;
    const inF = isF || (!isC && value >= COOLEST_F && value <= WARMEST_F);
    const [least, most] = inF ? [COOLEST_F - 23, 212] : [hasUnit ? 0 : COOLEST_C, hasUnit ? 100 : WARMEST_C];
    if (value < least || value > most) continue;
    take(bench, at, isMarked ? (isC || isF ? 2 : 2) : 1);
    return Math.round(inF ? ((value - 32) * 50) / 9 : value * 10);
  }
  return null;
}

function takeSpeed(bench: Bench): number | null {
  const { tokens } = bench;
  const at = tokens.findIndex(
    (token, index) =>
      !bench.taken[index] &&
      SPEEDS.has(Number(token)) &&
      (Number(token) >= 100 || tokens.slice(Math.max(0, index - 2), index).some((each) => EXPOSED.has(each))),
  );
  if (at < 0) return null;
  take(bench, at, 1);
  return Number(tokens[at]);
}
