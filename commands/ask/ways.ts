import type { Command } from "../define.ts";
import { mayActAs, type Role } from "../../store/shapes/person.ts";
import { type Language, LANGUAGES } from "../../store/shapes/language.ts";
import { isSlipOf, tokensOf } from "./tokens.ts";
import { PLAIN_WORDS, WAY_WORDS } from "./way-words.ts";

/*
 * Which commands a sentence may ask for, by the words of their summaries and by those people use instead: for whoever asks how
 * something is done. What is found is offered, never done.
 */

/** In the language that is spoken, if none is given. */
export type SummaryIn = (command: Command, language?: Language) => string;

/** Words as long that begin alike are taken for one: `exportiere`, `export`. */
const LIKE_FROM = 5;
/** A command is offered where so many words of a sentence are its own, or one that people use for it and for few others. */
const LIKELY = 2;
const RARE = 2;
const MOST = 3;
/** One that weighs so many times less than the best is not offered beside it. */
const FAR_LESS = 2.5;
/** Words that people use for a command weigh more than those of its summary. */
const ASKED_WEIGHT = 1.5;
/** Who asks how something is done says so within so many telling words: calls must not wait for a longer text to be compared. */
const MOST_WORDS = 12;

export interface Way {
  readonly command: Command;
  /** In the language that is spoken. */
  readonly summary: string;
  /** Several words of the sentence speak of it. */
  readonly isLikely: boolean;
}

/** The likeliest first, none that is far less so; only what this role may call. */
export type Ways = (text: string, role: Role) => Way[];

/** By word, how much it weighs for each command that has it. */
type Holders = Map<string, Map<Command, number>>;

export function createWays(commands: readonly Command[], summaryIn: SummaryIn): Ways {
  let known: Holders | undefined;
  return (text, role) => {
    known ??= holdersIn(commands, summaryIn);
    const found = new Map<Command, { weight: number; count: number; isRare: boolean }>();
    for (const word of [...wordsOf(text)].slice(0, MOST_WORDS)) {
      const holders = holdersOf(known, word);
      for (const [command, weight] of holders) {
        const before = found.get(command) ?? { weight: 0, count: 0, isRare: false };
        found.set(command, {
          weight: before.weight + weight / holders.size,
          count: before.count + 1,
          isRare: before.isRare || (holders.size <= RARE && weight >= ASKED_WEIGHT),
        });
      }
    }
    const offered = [...found]
      .filter(([{ who }, { count, isRare }]) => mayActAs(role, who) && (isRare || count >= LIKELY))
      .sort(([, a], [, b]) => b.weight - a.weight);
    const [, best] = offered[0] ?? [];
    return offered
      .slice(0, MOST)
      .filter(([, { weight }]) => weight * FAR_LESS > (best?.weight ?? 0))
      .map(([command, { count }]) => ({ command, summary: summaryIn(command), isLikely: count >= LIKELY }));
  };
}

const plain = new Set(PLAIN_WORDS.split(" "));
const wordsOf = (text: string): ReadonlySet<string> =>
  new Set(tokensOf(text).filter((word) => /^\p{L}{3}/u.test(word) && !plain.has(word)));

function holdersIn(commands: readonly Command[], summaryIn: SummaryIn): Holders {
  const holders: Holders = new Map();
  const add = (text: string, command: Command, weight: number): void => {
    for (const word of wordsOf(text))
      holders.set(word, (holders.get(word) ?? new Map<Command, number>()).set(command, weight));
  };
  for (const command of commands) {
    add([command.name, ...LANGUAGES.map((each) => summaryIn(command, each))].join(" "), command, 1);
    add(WAY_WORDS[command.name] ?? "", command, ASKED_WEIGHT);
  }
  return holders;
}

/** Of all words that are like it. */
function holdersOf(known: Holders, word: string): ReadonlyMap<Command, number> {
  const all = new Map<Command, number>();
  for (const [each, holders] of known)
    if (isAlike(each, word))
      for (const [command, weight] of holders) all.set(command, Math.max(weight, all.get(command) ?? 0));
  return all;
}

function isAlike(one: string, other: string): boolean {
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  return one === other || (short.length >= LIKE_FROM && long.startsWith(short)) || isSlipOf(other, one);
}
