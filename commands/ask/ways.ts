import type { Command } from "../define.ts";
import { mayActAs, type Role } from "../../store/shapes/person.ts";
import { type Language, LANGUAGES } from "../../store/shapes/language.ts";
import { foldWord, isSlipOf, tokensOf } from "./tokens.ts";
import { PLAIN_WORDS, WAY_WORDS } from "./way-words.ts";

/*
 * Which commands a sentence may ask for, by the words of their summaries and by those people use instead: for whoever asks how
 * something is done. What is found is offered, never done.
 */

/** In the language that is spoken, if none is given. */
export type SummaryIn = (command: Command, language?: Language) => string;

/** Words as long that begin alike are taken for one: `exportiere`, `export`. */
const LIKE_FROM = 5;
/** A command is offered where so many words of a sentence are its own, or one that no more than so many commands have. */
const LIKELY = 2;
const RARE = 2;
const MOST = 3;
/** One that weighs so many times less than the best is not offered beside it. */
const FAR_LESS = 2.5;
const plain = new Set(PLAIN_WORDS.split(" "));

interface Known {
  readonly command: Command;
  readonly words: ReadonlySet<string>;
}

export interface Way {
  readonly command: Command;
  /** In the language that is spoken. */
  readonly summary: string;
  /** Several words of the sentence speak of it. */
  readonly isLikely: boolean;
}

/** The likeliest first, none that is far less so; only what this role may call. */
export type Ways = (text: string, role: Role) => Way[];

export function createWays(commands: readonly Command[], summaryIn: SummaryIn): Ways {
  let known: readonly Known[] | undefined;
  return (text, role) => {
    known ??= commands.map((command) => ({ command, words: wordsOf(command, summaryIn) }));
    const asked = [...new Set(tokensOf(text))].filter(isTelling);
    const shares = asked.map((word) => ({ word, count: countOf(known ?? [], word) }));
    const found = known
      .filter(({ command }) => mayActAs(role, command.who))
      .map(({ command, words }) => {
        const own = shares.filter(({ word }) => holds(words, word));
        const weight = own.reduce((sum, { count }) => sum + 1 / count, 0);
        return {
          command,
          weight,
          isLikely: own.length >= LIKELY,
          isRare: own.some(({ count }) => count <= RARE),
        };
      })
      .filter(({ isLikely, isRare }) => isLikely || isRare)
      .sort((a, b) => b.weight - a.weight);
    return found
      .slice(0, MOST)
      .filter(({ weight }) => weight * FAR_LESS > (found[0]?.weight ?? 0))
      .map(({ command, isLikely }) => ({ command, isLikely, summary: summaryIn(command) }));
  };
}

const isTelling = (word: string): boolean => /^\p{L}{3}/u.test(word) && !plain.has(word);

function wordsOf(command: Command, summaryIn: SummaryIn): ReadonlySet<string> {
  const texts = [
    command.name,
    WAY_WORDS[command.name] ?? "",
    ...LANGUAGES.map((each) => summaryIn(command, each)),
  ];
  return new Set(texts.flatMap((text) => tokensOf(foldWord(text))).filter(isTelling));
}

const countOf = (known: readonly Known[], word: string): number =>
  known.filter(({ words }) => holds(words, word)).length;

function holds(words: ReadonlySet<string>, word: string): boolean {
  return words.has(word) || [...words].some((each) => isAlike(each, word));
}

function isAlike(one: string, other: string): boolean {
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  return (short.length >= LIKE_FROM && long.startsWith(short)) || isSlipOf(other, one);
}
