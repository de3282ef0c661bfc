import { countOf, formatMl, instant, joinAnd, plain } from "../wording.ts";
import type { Batch, BatchKind } from "./batch.ts";
import { KIND_WORDS, labelOf, leftWords, nameOf, STANDING_WORDS, stateLine } from "./batch-words.ts";
import type { Mark } from "./marks.ts";
import type { Collected } from "./silver.ts";
import type { BatchState } from "./state.ts";

/* What the class is told before a period, and once a week. */

interface Shown {
  readonly batch: Batch;
  readonly state: BatchState;
}

export interface Shortage {
  readonly kind: BatchKind;
  readonly product: string;
  readonly leftRolls: number;
  /** Rolls this period may bring; null: too little is known. */
  readonly expected: number | null;
}

export interface PeriodFacts {
  readonly ready: readonly Shown[];
  readonly tired: readonly (Shown & { readonly marks: readonly Mark[] })[];
  readonly worn: readonly Shown[];
  readonly toMix: readonly Shortage[];
}

export interface WeekFacts {
  readonly finished: number;
  readonly stopped: number;
  readonly mixedMl: number;
  readonly usedMl: number;
  readonly drainMl: number;
  readonly silverMl: number;
  readonly supplierMl: number;
  readonly collected: Collected;
  readonly ending: readonly Shown[];
  readonly isEmpty: boolean;
}

/** How late, and how many of its kind were missed before it. */
export interface Lateness {
  readonly lateMs: number;
  readonly dueAtMs: number;
  readonly missed: number;
}

const LATE_FROM_MS = 2 * 60_000;

export function lateLine({ lateMs, dueAtMs, missed }: Lateness): string {
  if (lateMs < LATE_FROM_MS) return "";
  const minutes = Math.round(lateMs / 60_000);
  const late = minutes < 120 ? `${minutes} min` : `${Math.round(minutes / 60)} h`;
  const others =
    missed === 0 ? "" : missed === 1 ? " One before it was missed." : ` ${missed} before it were missed.`;
  return `**${late} late**: this was for ${instant(dueAtMs, "date")}, ${instant(dueAtMs, "time")}.${others}`;
}

const WHY = {
  tired: "getting tired",
  "last-films": "last rolls",
  exhausted: "not enough for a roll",
  "out-of-date-soon": "out of date soon",
  "out-of-date": "out of date",
  "test-overdue": "needs a clearing test",
} as const satisfies Record<Mark, string>;

export function periodWords(facts: PeriodFacts, name: string, startsAtMs: number, late: Lateness): string {
  const { ready, tired, worn, toMix } = facts;
  const title = name === "" ? "The next period" : plain(name);
  const lines = [
    lateLine(late),
    `**${title}** at ${instant(startsAtMs, "time")}, ${instant(startsAtMs, "relative")}.`,
    toMix.length > 0 ? `**Mix before it: ${joinAnd(toMix.map(shortWords))}.** An aide or the teacher.` : "",
    worn.length > 0
      ? `**Don't use** ${joinAnd(worn.map(({ batch, state }) => `${labelOf(batch)} (${STANDING_WORDS[state.standing]})`))}.`
      : "",
    tired.length > 0
      ? `Watch: ${joinAnd(tired.map(({ batch, state, marks }) => `${labelOf(batch)} (${leftWords(batch, state)}, ${marks.map((mark) => WHY[mark]).join(", ")})`))}.`
      : "",
    ready.length > 0 ? "Ready:" : "Nothing mixed is ready.",
    ...ready.map(({ batch, state }) => `- ${stateLine(batch, state)}`),
  ];
  return lines.filter(Boolean).join("\n");
}

function shortWords({ kind, product, leftRolls, expected }: Shortage): string {
  const name = kind === "developer" ? `${plain(product)} (developer)` : KIND_WORDS[kind];
  const left = leftRolls === 0 ? "none ready" : `${countOf(leftRolls, "roll")} left`;
  return expected === null
    ? `${name}, ${left}`
    : `${name}, ${left} and up to ${countOf(expected, "roll")} expected`;
}

export function weekWords(facts: WeekFacts, late: Lateness): string {
  const { finished, stopped, collected } = facts;
  const grams = (mg: number): string => (mg / 1000).toFixed(1);
  const waste = [
    facts.silverMl > 0 ? `${formatMl(facts.silverMl)} of fixer to the silver collection` : "",
    facts.drainMl > 0 ? `${formatMl(facts.drainMl)} to the drain, as local rules allow` : "",
    facts.supplierMl > 0 ? `${formatMl(facts.supplierMl)} back to the supplier` : "",
  ].filter(Boolean);
  const lines = [
    lateLine(late),
    `**${countOf(finished, "roll")}** developed in the last seven days${stopped > 0 ? `, ${stopped} stopped` : ""}.`,
    `Mixed: ${formatMl(facts.mixedMl)}. Developer used: ${formatMl(facts.usedMl)}. Waste: ${waste.length > 0 ? joinAnd(waste) : "none noted"}.`,
    collected.ml > 0
      ? `In the collection: **${formatMl(collected.ml)}** of used fixer with about ${grams(collected.lowMg)} to ${grams(collected.highMg)} g of silver. Handing over: \`/batch handover\`; local rules decide how.`
      : "",
    facts.ending.length > 0
      ? `Out of date within a week: ${joinAnd(facts.ending.map(({ batch }) => nameOf(batch)))}. Use it first.`
      : "",
  ];
  return lines.filter(Boolean).join("\n");
}
