import type { z } from "zod";
import { distance } from "fastest-levenshtein";
import type { Command } from "../../commands/define.ts";
import { aboutOf } from "../../commands/forms.ts";
import { choiceCalled, choiceWord } from "../../commands/speech/choices.ts";
import { inEach } from "../../commands/speech/language.ts";
import { pointDecimal } from "../../commands/speech/decimal.ts";
import {
  formatNumber,
  inList,
  joinAnd,
  joinOr,
  NUMBER_LETTERS,
  type Numbered,
  plain,
} from "../../commands/speech/wording.ts";
import { de } from "./words/option.de.ts";
import { en } from "./words/option.en.ts";

/* Words for options that don't fit. Every fault of a call is told at once. */

type Issue = z.core.$ZodIssue;

const words = inEach({ en, de });

/** One sentence per wrong option; empty where all keys are known. */
export function unknownOptionWords(command: Command, given: Readonly<Record<string, unknown>>): string[] {
  const known = Object.keys(command.options.shape);
  return Object.keys(given)
    .filter((key) => !known.includes(key))
    .map((key) => {
      const near = known.filter((each) => distance(each, key) <= 2)[0];
      const hint = near
        ? words().didYouMean(near)
        : known.length > 0
          ? words().takes(joinAnd(known))
          : words().takesNone;
      return words().unknown(command.name, plain(key.slice(0, 40)), hint);
    });
}

export function issueWords(
  command: Command,
  issues: readonly Issue[],
  given: Readonly<Record<string, unknown>>,
): string[] {
  const seen = new Set<string>();
  return issues.flatMap((issue) => {
    const option = String(issue.path[0] ?? "");
    if (seen.has(option)) return [];
    seen.add(option);
    return [sentence(command, option, issue, given[option])];
  });
}

function sentence(command: Command, option: string, issue: Issue, value: unknown): string {
  const about = aboutOf(command, option);
  if (value === undefined) return words().missing(option, about);
  const shown = plain(String(value).slice(0, 40));
  switch (issue.code) {
    case "too_small":
      return issue.origin === "string"
        ? words().tooShort(option, about)
        : words().tooSmall(option, shown, bound(issue.minimum));
    case "too_big":
      return issue.origin === "string"
        ? words().tooLong(option, String(value).length, bound(issue.maximum))
        : words().tooLarge(option, shown, bound(issue.maximum));
    case "invalid_value":
      return words().notKnown(
        option,
        shown,
        joinOr(issue.values.map((each) => inList(choiceWord(command.name, option, String(each))))),
      );
    case "invalid_type":
      return issue.expected === "int"
        ? words().notWhole(option, shown)
        : words().notA(option, shown, issue.expected, about);
    default:
      return `${option}: ${issue.message}`;
  }
}

function bound(value: number | bigint): string {
  return formatNumber(Number(value));
}

/** `T2` where tanks are asked for, as `2`; any other text as it is. */
function bareNumber(option: string, text: string): string {
  const letter = Object.hasOwn(NUMBER_LETTERS, option) ? NUMBER_LETTERS[option as Numbered] : undefined;
  return letter === undefined ? text : text.replace(new RegExp(`^\\s*${letter}\\s*(?=\\d+\\s*$)`, "i"), "");
}

/** A choice by whatever it is called. */
function choiceMeant(command: Command, option: string, issue: Issue, said: string): string {
  const values = issue.code === "invalid_value" ? issue.values.map(String) : [];
  return choiceCalled(said, command.name, option, values) ?? said;
}

/**
 * The same values with a decimal point where a number was written with a decimal comma, without the letter a tank or a run is
 * called by, and with a choice as it is named in all languages; undefined where that was not what is wrong.
 */
function mend(
  command: Command,
  given: Readonly<Record<string, unknown>>,
  issues: readonly Issue[],
): Readonly<Record<string, unknown>> | undefined {
  const mended = issues.flatMap((issue): [string, string][] => {
    const option = String(issue.path[0]);
    const value = given[option];
    if (typeof value !== "string") return [];
    const meant =
      issue.code === "invalid_type"
        ? bareNumber(option, pointDecimal(value))
        : choiceMeant(command, option, issue, value);
    return meant === value ? [] : [[option, meant]];
  });
  return mended.length > 0 ? { ...given, ...Object.fromEntries(mended) } : undefined;
}

/** As written, or, where that doesn't fit, with numbers and choices mended. */
export function readOptions(command: Command, given: Readonly<Record<string, unknown>>) {
  const parsed = command.options.safeParse(given);
  const mended = parsed.success ? undefined : mend(command, given, parsed.error.issues);
  return mended ? command.options.safeParse(mended) : parsed;
}
