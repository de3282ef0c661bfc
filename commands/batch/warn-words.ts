import type { Action } from "../define.ts";
import { makeLine } from "../line.ts";
import { formatDilution, formatMl, formatSeconds, instant, plain } from "../wording.ts";
import { formatRolls } from "./area.ts";
import type { Batch } from "./batch.ts";
import { clearingWords, KIND_WORDS, labelOf, leftWords, wornWords } from "./batch-words.ts";
import type { Mark } from "./marks.ts";
import type { BatchState } from "./state.ts";

/* What a batch says unasked: the number first, then the one next thing to do and who can do it. */

export interface Warning {
  readonly batch: Batch;
  readonly state: BatchState;
  /** Another batch that is ready and does the same. */
  readonly instead: Batch | null;
  readonly now: number;
}

const WHO = "An aide or the teacher";

function bath(batch: Batch): string {
  return `${plain(batch.product)} ${formatDilution(batch.dilution)}`;
}

function mixWords({ batch, instead }: Warning): string {
  if (instead) return `Next: ${labelOf(instead)} is open.`;
  return `Next: ${WHO.toLowerCase()} mixes new ${KIND_WORDS[batch.kind]} (\`/batch mix\`).`;
}

function awayWords({ batch }: Warning): string {
  return batch.kind === "fixer"
    ? "It goes into the silver collection, never the drain (`/batch discard`)."
    : "It is thrown away as local rules say (`/batch discard`).";
}

function useInstead(warning: Warning): string {
  return warning.instead ? `Use **${labelOf(warning.instead)}** instead.` : mixWords(warning);
}

const CLASS_WORDS = {
  tired: (warning) => {
    const { batch, state } = warning;
    const clears = clearingWords(state);
    return `**${capital(leftWords(batch, state))} in ${labelOf(batch)}** (${bath(batch)}): it is getting tired${clears ? `, ${clears}; new plans fix as long as that needs` : ""}. ${mixWords(warning)}`;
  },
  "last-films": (warning) => {
    const { batch, state } = warning;
    const rolls = state.leftRolls === null ? leftWords(batch, state) : `${rollWords(state.leftRolls)} left`;
    return `**${rolls} in ${labelOf(batch)}** (${bath(batch)}). ${mixWords(warning)}`;
  },
  exhausted: (warning) => {
    const { batch, state } = warning;
    if (state.exhaustedBy === null)
      return `**Not enough for a roll in ${labelOf(batch)}** (${bath(batch)}): ${formatMl(Math.max(0, state.volumeMl))}. ${useInstead(warning)}`;
    return `**${labelOf(batch)} is exhausted: don't use it.** ${capital(bath(batch))}: ${wornWords(state)}. ${useInstead(warning)} ${awayWords(warning)}`;
  },
  "out-of-date-soon": (warning) => {
    const { batch, state, now } = warning;
    const hours = Math.max(0, Math.round(((state.expiresAtMs ?? now) - now) / 3_600_000));
    const when = hours > 36 ? "2 days" : hours > 20 ? "1 day" : `${hours} h`;
    return `**${labelOf(batch)} goes out of date in ${when}** (${bath(batch)}, ${leftWords(batch, state)}), on ${instant(state.expiresAtMs ?? now, "date")}. Use it first. ${mixWords(warning)}`;
  },
  "out-of-date": (warning) => {
    const { batch, state } = warning;
    return `**${labelOf(batch)} is out of date: don't use it.** ${capital(bath(batch))}: ${wornWords({ ...state, exhaustedBy: null })}. ${useInstead(warning)} ${awayWords(warning)}`;
  },
  "test-overdue": ({ batch, state }) => {
    const since =
      state.testedAtMs === null
        ? "never tested"
        : `${formatRolls(state.loadSqIn - (state.testedLoadSqIn ?? 0))} since its last test`;
    return `**${labelOf(batch)} needs a clearing test** (${bath(batch)}): ${since}. Next: ${WHO.toLowerCase()} drops a scrap of undeveloped film into a little of it, in room light, and times until it is clear: \`/batch test batch:${labelOf(batch)} clearing:0:45\`.`;
  },
} as const satisfies Record<Mark, (warning: Warning) => string>;

function rollWords(rolls: number): string {
  return rolls === 1 ? "1 roll" : `${rolls} rolls`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** For the class channel. */
export function classWarning(mark: Mark, warning: Warning): { text: string; actions: Action[] } {
  return { text: CLASS_WORDS[mark](warning), actions: actionsFor(mark, warning) };
}

/** For a teacher alone: the same, with the figures it rests on. */
export function teacherWarning(mark: Mark, warning: Warning): { text: string; actions: Action[] } {
  const { batch, state } = warning;
  const figures = [
    `Mixed ${instant(batch.mixedAtMs, "date")}, ${formatMl(batch.volumeMl)}; ${formatRolls(state.usedSqIn)} through it so far`,
    state.clearing ? `fresh clearing time ${formatSeconds(state.clearing.freshSeconds)}` : "",
    state.topUps > 0 ? `topped up ${state.topUps === 1 ? "once" : `${state.topUps} times`}` : "",
  ].filter(Boolean);
  const text = `${CLASS_WORDS[mark](warning)}\n_${figures.join("; ")}. Its limits: ${plain(batch.source)}. The class has been told._`;
  return { text, actions: actionsFor(mark, warning) };
}

function actionsFor(mark: Mark, { batch }: Warning): Action[] {
  const label = labelOf(batch);
  const actions: Action[] = [{ label: `See ${label}`, line: makeLine("batch status", { batch: label }) }];
  const isGone = mark === "exhausted" || mark === "out-of-date";
  if (isGone && batch.kind === "fixer")
    actions.push({
      label: "Into the silver collection",
      line: makeLine("batch discard", { batch: label, to: "silver" }),
      weight: "danger",
    });
  return actions;
}

/** To the owner of a run whose next bath has just gone bad; the chat adds which run. */
export function redirectedWords(kind: Batch["kind"], old: string, why: string, to: string | null): string {
  const bathWord = KIND_WORDS[kind];
  if (to === null)
    return `**Don't pour in ${old}.** ${capital(why)}, and no other ${bathWord} is ready. If the film is in water already, leave it there: water does no harm. Tell the teacher.`;
  return `**Take ${to}, not ${old}**, when it is time for the ${bathWord}. ${capital(old)}: ${why}. Your plan is changed.`;
}
