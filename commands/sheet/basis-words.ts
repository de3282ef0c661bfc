import { inEach } from "../speech/language.ts";
import { formatNumber, joinAnd, plain } from "../speech/wording.ts";
import type { Basis } from "../../store/shapes/sheet.ts";
import type { Step } from "../../store/shapes/plan.ts";
import { titleInText } from "./step-words.ts";
import { de } from "./words/basis.de.ts";
import { en } from "./words/basis.en.ts";
import { de as paperDe } from "./words/paper.de.ts";
import { en as paperEn } from "./words/paper.en.ts";

/* What each number rests on, in words. */

const words = inEach({ en, de });
const paperRules = inEach({ en: paperEn, de: paperDe });

const LONGEST_SOURCE = 80;

/** A rule or a source as it is kept, in the reader's language where it is one of ours. */
export function sayStored(text: string): string {
  return words().stored(text);
}

function stored(text: string): string {
  return plain(sayStored(text));
}

function source(...texts: readonly string[]): string {
  const said = texts.map(sayStored).join("; ");
  return plain(said.length > LONGEST_SOURCE ? `${said.slice(0, LONGEST_SOURCE)}…` : said);
}

type Words = { readonly [K in Basis["kind"]]: (basis: Extract<Basis, { kind: K }>) => string };

const BASIS_TEXT: Words = {
  point: (basis) => words().point(source(basis.source)),
  between: ({ sources }) => words().between(source(...sources)),
  "one-point": (basis) =>
    words().onePoint(source(basis.source), formatNumber(basis.factorPer10C), range(basis)),
  beyond: (basis) => words().beyond(source(basis.source), formatNumber(basis.factorPer10C), range(basis)),
  "rule-of-thumb": (basis) => words().ruleOfThumb(stored(basis.source), range(basis)),
  house: ({ rule }) => words().house(stored(rule)),
  rule: (basis) => words().rule(stored(basis.rule), source(basis.source)),
  paper: ({ rule }) => paperRules()[rule],
};

function range({ lowSeconds, highSeconds }: { lowSeconds: number; highSeconds: number }): string {
  return words().range(lowSeconds, highSeconds);
}

export function sayBasis(basis: Basis): string {
  return (BASIS_TEXT[basis.kind] as (basis: Basis) => string)(basis);
}

const BRIEF_TEXT: Words = {
  point: (basis) => words().point(source(basis.source)),
  between: () => words().brief.between,
  "one-point": (basis) => words().brief.onePoint(formatNumber(basis.factorPer10C)),
  beyond: (basis) => words().brief.beyond(formatNumber(basis.factorPer10C)),
  "rule-of-thumb": () => words().brief.ruleOfThumb,
  house: () => words().brief.house,
  rule: ({ rule }) => stored(rule),
  paper: ({ rule }) => paperRules()[rule],
};

interface Stepped {
  readonly steps: readonly Step[];
}

/** One line for the whole plan: `Rests on: developer: a row of the sheet (…); fixer and wash: house rule.` */
export function honestyLine(plan: Stepped): string {
  const lines = new Map<string, string[]>();
  for (const step of plan.steps.filter(({ seconds }) => seconds !== null)) {
    const bases = step.basis.map((basis) => (BRIEF_TEXT[basis.kind] as (basis: Basis) => string)(basis));
    const rest = [...new Set(bases)].join(", ");
    lines.set(rest, [...(lines.get(rest) ?? []), titleInText(step)]);
  }
  return words().restsOn(sayLines(lines).join("; "));
}

/** `a row of the sheet (…) and house rule: …`. */
export function sayBases(step: Pick<Step, "basis">): string {
  return joinAnd(step.basis.map(sayBasis));
}

/** Every number of the plan and what it rests on, alike ones said once. */
export function honestyLines(plan: Stepped): string[] {
  const lines = new Map<string, string[]>();
  for (const step of plan.steps) {
    const rest = sayBases(step);
    lines.set(rest, [...(lines.get(rest) ?? []), titleInText(step)]);
  }
  return sayLines(lines);
}

function sayLines(lines: ReadonlyMap<string, readonly string[]>): string[] {
  return [...lines].map(([rest, titles]) => `${joinAnd(titles)}: ${rest}`);
}
