import { conceptsOf, isCommon, isStrange } from "./lexicon.ts";
import { CHANGES, DOUBTS, rules, type Intent, type Rule, type Sign } from "./rules.ts";
import { termOf, termWords, type Term } from "./terms.ts";
import { findThings, type Names, type Things } from "./things.ts";
import { createSlips } from "./tokens.ts";

/*
 * A typed sentence read: what is wanted, and what with. Pure and the same each time; words are compared, nothing is
 * guessed from outside. Whether anything is done about it is decided by a key that a person presses.
 */

export interface Reading {
  /** What may be wanted, the likeliest first; empty where nothing was understood. */
  readonly wanted: readonly Intent[];
  /** Changes that the words come near to and do not say for certain: offered, never taken as said. */
  readonly doubted: readonly Intent[];
  /** Most of what was said is not understood: what was read of it is offered, not answered. */
  readonly isUnsure: boolean;
  /** Two readings that are as likely as each other. */
  readonly isTorn: boolean;
  readonly things: Things;
  readonly terms: readonly Term[];
  readonly signs: ReadonlySet<Sign>;
}

/** `15:20`, `3 pm`, `15 Uhr`; how long something takes may look the same. */
const isDaytime = /\b(?:[01]?\d|2[0-3])(?:[:.]\d\d| ?(?:uhr|[ap]m))\b/i;

/** A reading this much weaker than the best is not offered beside it. */
const NEAR_WEIGHT = 4;

export function readSentence(text: string, names: Names): Reading {
  const found = findThings(text, names);
  const { things } = found;
  const rest = withoutFillers(found.rest);
  const terms = [...new Set(rest.flatMap(termIn))];
  const signs = signsOf(things, rest, terms);
  if (isDaytime.test(text)) signs.add("DAYTIME");
  const weights = new Map<Intent, number>();
  const reasons = new Map<Intent, Rule>();
  const doubted = new Set<Intent>();
  for (const rule of rules) {
    const { intent, needs, bars, weight } = rule;
    if (weight <= (weights.get(intent) ?? 0)) continue;
    if (!needs.every((sign) => signs.has(sign)) || bars.some((sign) => signs.has(sign))) continue;
    if (isDoubtful(rule, signs)) doubted.add(intent);
    else {
      weights.set(intent, weight);
      reasons.set(intent, rule);
    }
  }
  const about = { things, terms, signs };
  // Whoever may be hurt comes before all else.
  if (weights.has("harm")) return { wanted: ["harm"], doubted: [], isTorn: false, isUnsure: false, ...about };
  const ranked = [...weights].sort((a, b) => b[1] - a[1]);
  const [best, second] = ranked;
  return {
    wanted: ranked.map(([intent]) => intent),
    doubted: [...doubted].filter((intent) => !weights.has(intent)),
    isUnsure:
      best !== undefined &&
      (isChance(reasons.get(best[0]), rest) ||
        (!BROAD.has(best[0]) && explains(reasons.get(best[0]), rest) < ENOUGH)),
    isTorn: best !== undefined && second !== undefined && best[1] - second[1] < NEAR_WEIGHT,
    ...about,
  };
}

/** Of the words that mean something, the share that a reading rests on; below this it may be a chance. */
const ENOUGH = 0.45;
/** So few words are soon explained, or clearly not. */
const FEW = 3;

/** Asks further, or says what to do whatever it was. */
const BROAD: ReadonlySet<Intent> = new Set(["look", "exposed", "worry", "wait", "thanks", "undo"]);
/** Asked for by much, or by a word that has one meaning only. */
const FIRM_WEIGHT = 30;
const NAMED: ReadonlySet<Sign> = new Set([
  "FILMNAME",
  "DEVNAME",
  "DIL",
  "TEMP",
  "EI",
  "DURATION",
  "TANKNO",
  "BOTTLENO",
  "RUNNO",
]);

function explains(rule: Rule | undefined, rest: readonly string[]): number {
  const meant = rest.filter(
    (word) => /^\p{L}{2}/u.test(word) && (isStrange(word) || conceptsOf(word).size > 0) && !isGreeting(word),
  );
  // What was named by its name is no chance.
  if (
    rule === undefined ||
    rule.weight >= FIRM_WEIGHT ||
    meant.length < FEW ||
    rule.needs.some((sign) => NAMED.has(sign))
  )
    return 1;
  const needs = new Set<Sign>(rule.needs);
  const known = meant.filter(
    (word) =>
      [...conceptsOf(word)].some((concept) => needs.has(concept)) ||
      (needs.has("TERM") && termIn(word).length > 0),
  );
  return known.length / meant.length;
}

/** So many words around a single one that means something: it may mean anything there. */
const MANY = 6;

function isChance(rule: Rule | undefined, rest: readonly string[]): boolean {
  return (
    rule !== undefined &&
    rule.needs.length === 1 &&
    (CHANGES.has(rule.intent) || rule.intent === "help") &&
    !rule.needs.some((sign) => NAMED.has(sign)) &&
    rest.filter((word) => /^\p{L}/u.test(word)).length >= MANY
  );
}

/** Says nothing of what is wanted. */
const isGreeting = (word: string): boolean => conceptsOf(word).has("HELLO");

/** A rule that asks for much may be believed beside a word that is not known. */
const FIRM_NEEDS = 3;

function isDoubtful({ intent, needs }: Rule, signs: ReadonlySet<Sign>): boolean {
  if (!CHANGES.has(intent)) return false;
  return DOUBTS.some(
    (doubt) =>
      signs.has(doubt) && !needs.includes(doubt) && !(doubt === "STRANGE" && needs.length >= FIRM_NEEDS),
  );
}

/** After these or at the end `in` means that a bath is in the tank; before other words it stands for a place. */
const AFTER_IN = new Set([
  "now",
  "already",
  "sorry",
  "since",
  "for",
  "ago",
  "and",
  "jetzt",
  "schon",
  "seit",
  "vor",
  "?",
]);
const INTERJECTIONS = new Set(["ok", "okay", "so", "also", "well"]);

function withoutFillers(words: readonly string[]): string[] {
  const spoken = words.length > 1 && INTERJECTIONS.has(words[0] ?? "") ? words.slice(1) : words;
  return spoken.filter((word, at) => {
    const next = spoken[at + 1];
    return word !== "in" || next === undefined || AFTER_IN.has(next);
  });
}

const termMeantBy = createSlips(termWords);

function termIn(word: string): Term[] {
  const term = termOf(word);
  if (term) return [term];
  if (word.length < 5 || isCommon(word)) return [];
  const meant = termMeantBy(word);
  const near = meant === undefined ? undefined : termOf(meant);
  return near ? [near] : [];
}

function signsOf(things: Things, rest: readonly string[], terms: readonly Term[]): Set<Sign> {
  const signs = new Set<Sign>();
  for (const word of new Set(rest)) for (const concept of conceptsOf(word)) signs.add(concept);
  const found: Partial<Record<Sign, boolean>> = {
    FILMNAME: things.films.length > 0,
    DEVNAME: things.developer !== null,
    DIL: things.dilution !== null,
    TEMP: things.tenthsC !== null,
    EI: things.exposureIndex !== null,
    DURATION: things.seconds !== null,
    TANKNO: things.tank !== null,
    BOTTLENO: things.bottle !== null,
    RUNNO: things.run !== null,
    ROLLNO: things.roll !== null,
    TERM: terms.length > 0,
    YEAR: rest.some((word) => /^(?:19[3-9]|20[0-2])\d$/.test(word)),
    QUESTION: rest.includes("?"),
    SHORT: rest.length <= 3,
    STRANGE: rest.some((word) => isStrange(word) && termOf(word) === undefined),
  };
  for (const [sign, isThere] of Object.entries(found)) if (isThere) signs.add(sign as Sign);
  return signs;
}
