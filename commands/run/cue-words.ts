import type { Action } from "../define.ts";
import { doingOf, leavingOf, titleOf } from "../plan/step-words.ts";
import type { Agitation, Step } from "../plan/plan.ts";
import { countOf, formatSeconds, instant, saySeconds } from "../wording.ts";
import type { CueKind } from "./cues.ts";
import { nameOf, nextAction } from "./reply.ts";
import { stepAt, type Run } from "./run.ts";
import type { Said } from "./settle.ts";
import { LATE_FROM_MS, lateness } from "./settle.ts";

/* What a run says unasked: the number first, one thing to do, a word on lateness where there is any. */

export interface CueMessage {
  readonly text: string;
  /** Which run it speaks of: `R7, tank 3`. */
  readonly about: string;
  readonly actions: readonly Action[];
}

/** `run` is as it was when the cue fell due; `nowMs` is when it is decided. */
export function cueMessage(run: Run, { cue, lateMs, merged }: Said, nowMs: number): CueMessage {
  const step = stepAt(run, cue.step);
  const about = nameOf(run);
  if (!step) return { text: "", about, actions: [] };
  const missed = merged.filter((each) => lateness(each, nowMs) >= LATE_FROM_MS).length;
  const late =
    lateMs >= LATE_FROM_MS ? lateWords(lateMs, missed, cue.dueAtMs) : missed > 0 ? missedWords(missed) : "";
  // A cue may be decided ahead of its moment; what it says is true at the moment itself.
  const line = ONE_LINE[cue.kind](run, step, cue.step, Math.max(nowMs, cue.dueAtMs));
  return {
    text: [late, line].filter(Boolean).join("\n"),
    about,
    actions: actionsFor(run, cue.kind, cue.step),
  };
}

function actionsFor(run: Run, kind: CueKind, step: number): Action[] {
  if (kind === "nudge") return nextAction(run, step);
  return kind === "next-bath" || kind === "pour-out" ? nextAction(run, step + 1) : [];
}

/** Said in front of a cue that comes late, so that nobody works by a wrong moment. */
export function lateWords(lateMs: number, missed: number, dueAtMs: number): string {
  const others =
    missed > 0 ? ` ${countOf(missed, "call")} before it ${missed === 1 ? "was" : "were"} missed.` : "";
  return `**${saySeconds(Math.round(lateMs / 1000))} late**: this was for ${instant(dueAtMs, "time")}.${others} Do it now.`;
}

/** Said where calls were missed, and this one is on time. */
function missedWords(missed: number): string {
  return `**${countOf(missed, "call")} before this ${missed === 1 ? "was" : "were"} missed.**`;
}

const MOVE = {
  inversion: "turn the tank over and back",
  rotation: "turn the reel",
  continuous: "keep the tank moving",
} as const satisfies Record<Agitation["manner"], string>;

function agitate(step: Step, seconds: number): string {
  const { agitation } = step;
  if (!agitation) return "Agitate.";
  const taps =
    agitation.taps > 0 ? `, then rap it ${agitation.taps === 1 ? "once" : `${agitation.taps} times`}` : "";
  return `**${seconds} s** agitate: ${MOVE[agitation.manner]}${taps}.`;
}

function positionOf(run: Run, nowMs: number): string {
  if (run.phase.kind !== "running") return "";
  const { startedAtMs, endsAtMs } = run.phase;
  const gone = Math.max(0, Math.round((nowMs - startedAtMs) / 1000));
  return ` ${formatSeconds(gone)} of ${formatSeconds((endsAtMs - startedAtMs) / 1000)}.`;
}

type Words = (run: Run, step: Step, index: number, nowMs: number) => string;

const ONE_LINE = {
  "agitate-first": (run, step, _index, nowMs) => {
    if (step.agitation?.manner === "continuous")
      return `**Keep it moving** until I call pour-out.${positionOf(run, nowMs)}`;
    return `${agitate(step, step.agitation?.initialSeconds ?? 0)}${positionOf(run, nowMs)}`;
  },
  agitate: (run, step, _index, nowMs) =>
    `${agitate(step, step.agitation?.burstSeconds ?? 0)}${positionOf(run, nowMs)}`,
  "get-ready": (run, step, index) => {
    const next = stepAt(run, index + 1);
    const what = next ? ` Have ready: ${titleOf(next).toLowerCase()}.` : "";
    const leaving = step.pourOutSeconds > 0 ? "pour-out" : `the end of ${titleOf(step).toLowerCase()}`;
    return `**${run.warnSeconds} s** to ${leaving}.${what}`;
  },
  "pour-out": (run, step, index) => {
    const next = stepAt(run, index + 1);
    const then = next ? ` Then: ${titleOf(next).toLowerCase()}.` : "";
    return `**${step.pourOutSeconds} s: pour out now.** ${leavingOf(step)}${then}`;
  },
  "next-bath": (run, step, index) => {
    const next = stepAt(run, index + 1);
    if (!next) return `**${titleOf(step)} is done.** ${leavingOf(step)}`;
    const leaving = step.pourOutSeconds > 0 ? "" : ` ${leavingOf(step)}`;
    return `**Now: ${titleOf(next).toLowerCase()}.**${leaving} ${doingOf(next)}`;
  },
  nudge: (run, step, index) => {
    const before = stepAt(run, index - 1);
    const works = before ? ` The ${titleOf(before).toLowerCase()} goes on working.` : "";
    return `**Is it in?** I wait for ${titleOf(step).toLowerCase()}.${works} ${doingOf(step)}`;
  },
} as const satisfies Record<CueKind, Words>;

/** Said where a message was decided on time but reached the chat late. */
export function deliveredLate(lateMs: number, dueAtMs: number): string {
  return `**${saySeconds(Math.round(lateMs / 1000))} late**: this was for ${instant(dueAtMs, "time")}.`;
}

/** Said where a message leaves before its moment, since many are due together. */
export function deliveredEarly(dueAtMs: number): string {
  return `At ${instant(dueAtMs, "time")}, ${instant(dueAtMs, "relative")}:`;
}
