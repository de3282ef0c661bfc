import type { z } from "zod";
import { distance } from "fastest-levenshtein";
import type { Command } from "../commands/define.ts";
import { aboutOf } from "../commands/forms.ts";
import { joinAnd, plain } from "../commands/wording.ts";

/* Words for options that don't fit. Every fault of a call is told at once. */

type Issue = z.core.$ZodIssue;

/** One sentence per wrong option; empty where all keys are known. */
export function unknownOptionWords(command: Command, given: Readonly<Record<string, unknown>>): string[] {
  const known = Object.keys(command.options.shape);
  return Object.keys(given)
    .filter((key) => !known.includes(key))
    .map((key) => {
      const near = known.filter((each) => distance(each, key) <= 2)[0];
      const hint = near
        ? `Did you mean ${near}?`
        : known.length > 0
          ? `It takes ${joinAnd(known)}.`
          : "It takes none.";
      return `\`/${command.name}\` has no option ${plain(key.slice(0, 40))}. ${hint}`;
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
  if (value === undefined) return `${option} is missing. Add \`${option}:…\` (${lowerFirst(about)}).`;
  const shown = plain(String(value).slice(0, 40));
  switch (issue.code) {
    case "too_small":
      return issue.origin === "string"
        ? `${option} is too short. ${about}.`
        : `${option}:${shown} is too small: at least ${issue.minimum}.`;
    case "too_big":
      return issue.origin === "string"
        ? `${option} is too long: ${String(value).length} characters, at most ${issue.maximum}.`
        : `${option}:${shown} is too large: at most ${issue.maximum}.`;
    case "invalid_value":
      return `${option}:${shown} is not one I know. Use ${joinOr(issue.values.map(String))}.`;
    case "invalid_type":
      return issue.expected === "int"
        ? `${option}:${shown} must be a whole number.`
        : `${option}:${shown} is not a ${issue.expected}. ${about}.`;
    default:
      return `${option}: ${issue.message}`;
  }
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function joinOr(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}
