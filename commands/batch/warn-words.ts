import type { Action } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { formatMl, formatSeconds, instant } from "../speech/wording.ts";
import {
  bathName,
  clearingWords,
  formatRolls,
  labelOf,
  leftWords,
  rollsLeftWords,
  strengthWords,
  wornWords,
} from "./batch-words.ts";
import { isFixer, type Batch } from "../../store/shapes/batch.ts";
import type { Mark } from "./marks.ts";
import { sourceWords } from "./source-words.ts";
import type { BatchState } from "./state.ts";
import { de } from "./words/warn.de.ts";
import { en } from "./words/warn.en.ts";

/* What a batch says unasked: the number first, then the one next thing to do and who can do it. */

export interface Warning {
  readonly batch: Batch;
  readonly state: BatchState;
  /** Another batch that is ready and does the same. */
  readonly instead: Batch | null;
  /** It stands as the first of two fixing baths: the second moves up. */
  readonly isFirstOfTwo: boolean;
  readonly now: number;
}

const HOUR_MS = 3_600_000;
const words = inEach({ en, de });

function mixWords({ batch, instead, isFirstOfTwo }: Warning): string {
  if (isFirstOfTwo) return words().rotate;
  return instead ? words().open(labelOf(instead)) : words().mixNew(batch.kind);
}

/** What to take instead, and where the bath goes. */
function insteadWords(warning: Warning): string {
  if (warning.isFirstOfTwo) return words().rotate;
  return warning.instead ? words().useInstead(labelOf(warning.instead)) : mixWords(warning);
}

function awayWords({ batch }: Warning): string {
  return isFixer(batch.kind) ? words().intoSilver : words().away;
}

const CLASS_WORDS = {
  tired: (warning) => {
    const { batch, state } = warning;
    const [label, bath] = [labelOf(batch), bathName(batch)];
    const left = [leftWords(batch, state), strengthWords(state)].filter(Boolean).join(", ");
    return words().tired(label, bath, left, clearingWords(state), mixWords(warning));
  },
  "last-films": (warning) => {
    const { batch, state } = warning;
    const left =
      state.leftRolls === null ? leftWords(batch, state) : rollsLeftWords(state.leftRolls, batch.kind);
    return words().lastFilms(labelOf(batch), bathName(batch), left, mixWords(warning));
  },
  exhausted: (warning) => {
    const { batch, state } = warning;
    const [label, bath] = [labelOf(batch), bathName(batch)];
    const next = insteadWords(warning);
    if (state.exhaustedBy === null)
      return words().notEnough(label, bath, formatMl(Math.max(0, state.volumeMl)), next);
    return `${words().exhausted(label, bath, wornWords(batch, state))} ${next} ${awayWords(warning)}`;
  },
  "out-of-date-soon": (warning) => {
    const { batch, state, now } = warning;
    const endsAtMs = state.expiresAtMs ?? now;
    const hours = Math.max(0, Math.round((endsAtMs - now) / HOUR_MS));
    const time = hours > 36 ? { days: 2 } : hours > 20 ? { days: 1 } : { hours };
    const date = instant(endsAtMs, "date");
    return `${words().soon(labelOf(batch), bathName(batch), leftWords(batch, state), time, date)} ${mixWords(warning)}`;
  },
  "out-of-date": (warning) => {
    const { batch, state } = warning;
    const why = wornWords(batch, { ...state, exhaustedBy: null });
    return `${words().outOfDate(labelOf(batch), bathName(batch), why)} ${insteadWords(warning)} ${awayWords(warning)}`;
  },
  "test-overdue": ({ batch, state }) => {
    const since =
      state.testedAtMs === null
        ? null
        : formatRolls(state.loadSqIn - (state.testedLoadSqIn ?? 0), batch.kind);
    return words().testOverdue(labelOf(batch), bathName(batch), since);
  },
  "replenish-due": ({ batch, state }) =>
    words().replenishDue(labelOf(batch), bathName(batch), formatMl(state.replenishMl ?? 0)),
} as const satisfies Record<Mark, (warning: Warning) => string>;

/** For the class channel. */
export function classWarning(mark: Mark, warning: Warning): { text: string; actions: Action[] } {
  return { text: CLASS_WORDS[mark](warning), actions: actionsFor(mark, warning) };
}

/** For a teacher alone: the same, with the figures it rests on. */
export function teacherWarning(mark: Mark, warning: Warning): { text: string; actions: Action[] } {
  const { batch, state } = warning;
  const { mixed, fresh, toppedUp, figures: sayFigures } = words();
  const figures = [
    mixed(
      instant(batch.mixedAtMs, "date"),
      formatMl(batch.volumeMl),
      formatRolls(state.usedSqIn, batch.kind),
    ),
    state.clearing ? fresh(formatSeconds(state.clearing.freshSeconds)) : "",
    state.topUps > 0 ? toppedUp(state.topUps) : "",
  ].filter(Boolean);
  const text = `${CLASS_WORDS[mark](warning)}\n${sayFigures(figures.join("; "), sourceWords(batch.source))}`;
  return { text, actions: actionsFor(mark, warning) };
}

function actionsFor(mark: Mark, { batch, state }: Warning): Action[] {
  const label = labelOf(batch);
  const actions: Action[] = [{ label: words().see(label), line: makeLine("batch status", { batch: label }) }];
  if (mark === "replenish-due" && state.replenishMl !== null)
    actions.push({
      label: words().replenished(formatMl(state.replenishMl)),
      line: makeLine("batch topup", { batch: label, add: `${state.replenishMl} ml` }),
    });
  const isGone = mark === "exhausted" || mark === "out-of-date";
  if (isGone && isFixer(batch.kind))
    actions.push({
      label: words().collect,
      line: makeLine("batch discard", { batch: label, to: "silver" }),
      weight: "danger",
    });
  return actions;
}

/** Why a second fixing bath is not second any more, as a clause. */
export const movedUpWords = (): string => words().movedUp;

/** To the owner of a run whose next bath has just gone bad; the chat adds which run. */
export function redirectedWords(kind: Batch["kind"], old: string, why: string, to: string | null): string {
  return to === null ? words().dontPour(old, why, kind) : words().takeOther(to, old, why, kind);
}

/** To whoever has just poured in more film than a fixer is good for. */
export const overEndWords = (label: string): string => words().overEnd(label);
