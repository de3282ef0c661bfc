import { formatSeconds, joinAnd, plain } from "../wording.ts";
import type { Basis, Plan, Step } from "./plan.ts";
import { titleOf } from "./step-words.ts";

/* What each number rests on, in words. */

const LONGEST_SOURCE = 80;

function source(text: string): string {
  return plain(text.length > LONGEST_SOURCE ? `${text.slice(0, LONGEST_SOURCE)}…` : text);
}

type Words = { readonly [K in Basis["kind"]]: (basis: Extract<Basis, { kind: K }>) => string };

const BASIS_TEXT: Words = {
  point: (basis) => `a row of the sheet (${source(basis.source)})`,
  between: ({ sources }) => `between rows of the sheet (${source(sources.join("; "))})`,
  "one-point": (basis) =>
    `the sheet's one row (${source(basis.source)}) and a factor of ${basis.factorPer10C} per 10 °C: ${range(basis)}`,
  beyond: (basis) =>
    `the sheet's nearest row (${source(basis.source)}) and a factor of ${basis.factorPer10C} per 10 °C: ${range(basis)}`,
  "rule-of-thumb": (basis) => `${plain(basis.source)}: ${range(basis)}`,
  house: ({ rule }) => `house rule: ${plain(rule)}`,
  rule: (basis) => `${plain(basis.rule)} (${source(basis.source)})`,
};

function range({ lowSeconds, highSeconds }: { lowSeconds: number; highSeconds: number }): string {
  return `${formatSeconds(lowSeconds)} to ${formatSeconds(highSeconds)}`;
}

export function sayBasis(basis: Basis): string {
  return (BASIS_TEXT[basis.kind] as (basis: Basis) => string)(basis);
}

type Brief = { readonly [K in Basis["kind"]]: (basis: Extract<Basis, { kind: K }>) => string };

const BRIEF_TEXT: Brief = {
  point: (basis) => `a row of the sheet (${source(basis.source)})`,
  between: () => "between rows of the sheet",
  "one-point": (basis) => `the sheet's one row and a factor of ${basis.factorPer10C} per 10 °C`,
  beyond: (basis) => `the sheet's nearest row and a factor of ${basis.factorPer10C} per 10 °C`,
  "rule-of-thumb": () => "rule of thumb",
  house: () => "house rule",
  rule: ({ rule }) => plain(rule),
};

/** One line for the whole plan: `Rests on: developer 9:00, a row of the sheet (…); fixer and wash, house rule.` */
export function honestyLine(plan: Plan): string {
  const lines = new Map<string, string[]>();
  for (const step of plan.steps.filter(({ seconds }) => seconds !== null)) {
    const bases = step.basis.map((basis) => (BRIEF_TEXT[basis.kind] as (basis: Basis) => string)(basis));
    const rest = [...new Set(bases)].join(" + ");
    lines.set(rest, [...(lines.get(rest) ?? []), titleOf(step).toLowerCase()]);
  }
  return `Rests on: ${[...lines].map(([rest, titles]) => `${joinAnd(titles)}: ${rest}`).join("; ")}.`;
}

/** `a row of the sheet (…) and house rule: …`. */
export function sayBases(step: Pick<Step, "basis">): string {
  return joinAnd(step.basis.map(sayBasis));
}

/** Every number of the plan and what it rests on, alike ones said once. */
export function honestyLines(plan: Plan): string[] {
  const lines = new Map<string, string[]>();
  for (const step of plan.steps) {
    const rest = sayBases(step);
    lines.set(rest, [...(lines.get(rest) ?? []), titleOf(step).toLowerCase()]);
  }
  return [...lines].map(([rest, titles]) => `${joinAnd(titles)}: ${rest}`);
}
