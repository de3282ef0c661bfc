import { inEach } from "../../speech/language.ts";
import { formatMl, formatNumber, instant, joinAnd, plain } from "../../speech/wording.ts";
import { isForPaper, type Batch, type BatchKind } from "../../../store/shapes/batch.ts";
import { labelOf, leftWords, nameOf, standingWord, stateLine } from "../../batch/batch-words.ts";
import type { Mark } from "../../batch/marks.ts";
import type { Collected } from "../../../store/shapes/shelf.ts";
import type { BatchState } from "../../batch/state.ts";
import { de } from "./digest.de.ts";
import { en } from "./digest.en.ts";

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
  /** Safelights whose test is due by then. */
  readonly lampsDue: readonly string[];
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
const words = inEach({ en, de });

export function lateLine({ lateMs, dueAtMs, missed }: Lateness): string {
  if (lateMs < LATE_FROM_MS) return "";
  const minutes = Math.round(lateMs / 60_000);
  const late = minutes < 120 ? `${minutes} min` : `${Math.round(minutes / 60)} h`;
  return words().late(late, instant(dueAtMs, "date"), instant(dueAtMs, "time"), missed);
}

export function periodWords(facts: PeriodFacts, name: string, startsAtMs: number, late: Lateness): string {
  const { ready, tired, worn, toMix, lampsDue } = facts;
  const { nextPeriod, period, mixBefore, dontUse, watch, ...say } = words();
  const title = name === "" ? nextPeriod : plain(name);
  const lines = [
    lateLine(late),
    period(title, instant(startsAtMs, "time"), instant(startsAtMs, "relative")),
    toMix.length > 0 ? mixBefore(joinAnd(toMix.map(shortWords))) : "",
    lampsDue.length > 0 ? say.testLamps(joinAnd(lampsDue.map(plain))) : "",
    worn.length > 0 ? dontUse(joinAnd(worn.map(wornLabel))) : "",
    tired.length > 0 ? watch(joinAnd(tired.map(tiredLabel))) : "",
    ready.length > 0 ? say.ready : say.noneReady,
    ...ready.map(({ batch, state }) => `- ${stateLine(batch, state)}`),
  ];
  return lines.filter(Boolean).join("\n");
}

function wornLabel({ batch, state }: Shown): string {
  return `${labelOf(batch)} (${standingWord(state.standing)})`;
}

function tiredLabel({ batch, state, marks }: PeriodFacts["tired"][number]): string {
  const why = marks.map((mark) => words().marks[mark]).join(", ");
  return `${labelOf(batch)} (${leftWords(batch, state)}, ${why})`;
}

function shortWords({ kind, product, leftRolls, expected }: Shortage): string {
  const { developer, kind: kindWord, short } = words();
  return short(
    kind === "developer" ? developer(plain(product)) : kindWord(kind),
    leftRolls,
    expected,
    isForPaper(kind),
  );
}

export function weekWords(facts: WeekFacts, late: Lateness): string {
  const { finished, stopped, collected } = facts;
  const { developed, volumes, noWaste, ending, ...say } = words();
  const grams = (mg: number): string => formatNumber(mg / 1000, 1);
  const waste = [
    facts.silverMl > 0 ? say.toSilver(formatMl(facts.silverMl)) : "",
    facts.drainMl > 0 ? say.toDrain(formatMl(facts.drainMl)) : "",
    facts.supplierMl > 0 ? say.toSupplier(formatMl(facts.supplierMl)) : "",
  ].filter(Boolean);
  const lines = [
    lateLine(late),
    developed(finished, stopped),
    volumes(formatMl(facts.mixedMl), formatMl(facts.usedMl), waste.length > 0 ? joinAnd(waste) : noWaste),
    collected.ml > 0
      ? say.collected(formatMl(collected.ml), grams(collected.lowMg), grams(collected.highMg))
      : "",
    facts.ending.length > 0 ? ending(joinAnd(facts.ending.map(({ batch }) => nameOf(batch)))) : "",
  ];
  return lines.filter(Boolean).join("\n");
}
