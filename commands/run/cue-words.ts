import type { Action } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { doingOf, leavingOf, titleOf } from "../sheet/step-words.ts";
import type { Step } from "../../store/shapes/plan.ts";
import type { CueKind } from "../../store/shapes/cue.ts";
import { nextAction, titled } from "./reply.ts";
import { stepAt, type Run } from "../../store/shapes/run.ts";
import type { Said } from "./settle.ts";
import { de } from "./words/cue.de.ts";
import { en } from "./words/cue.en.ts";

/* What a run says unasked: the number first, one thing to do, a word on lateness where there is any. */

const words = inEach({ en, de });

export interface CueMessage {
  /** Without a word on lateness: that is added as it is said. */
  readonly text: string;
  readonly actions: readonly Action[];
}

/** `run` is as it was when the cue fell due; `nowMs` is when it is decided. */
export function cueMessage(run: Run, { cue }: Pick<Said, "cue">, nowMs: number): CueMessage {
  const step = stepAt(run, cue.step);
  if (!step) return { text: "", actions: [] };
  // A cue may be decided ahead of its moment; what it says is true at the moment itself.
  const line = ONE_LINE[cue.kind](run, step, cue.step, Math.max(nowMs, cue.dueAtMs));
  return { text: line, actions: actionsFor(run, cue.kind, cue.step) };
}

function actionsFor(run: Run, kind: CueKind, step: number): Action[] {
  if (kind === "nudge") return nextAction(run, step);
  return kind === "next-bath" || kind === "pour-out" ? nextAction(run, step + 1) : [];
}

/** Said in front of a cue that was decided late, or that others before it were missed for: nobody is to work by a wrong moment. */
export function lateWords(lateMs: number, missed: number, dueAtMs: number): string {
  return words().lateAndMissed(Math.round(lateMs / 1000), dueAtMs, missed);
}

function agitate({ agitation }: Step, seconds: number): string {
  return agitation ? words().agitate(seconds, agitation) : words().agitateSome;
}

function positionOf({ phase }: Run, nowMs: number): string {
  if (phase.kind !== "running") return "";
  const gone = Math.max(0, Math.round((nowMs - phase.startedAtMs) / 1000));
  return words().position(gone, (phase.endsAtMs - phase.startedAtMs) / 1000);
}

const inOneLine = (...sentences: readonly string[]): string => sentences.filter(Boolean).join(" ");

type CueWords = (run: Run, step: Step, index: number, nowMs: number) => string;

const ONE_LINE = {
  "agitate-first": (run, step, _index, nowMs) => {
    const isContinuous = step.agitation?.manner === "continuous";
    const move = isContinuous ? words().keepMoving : agitate(step, step.agitation?.initialSeconds ?? 0);
    return inOneLine(move, positionOf(run, nowMs));
  },
  agitate: (run, step, _index, nowMs) =>
    inOneLine(agitate(step, step.agitation?.burstSeconds ?? 0), positionOf(run, nowMs)),
  "get-ready": (run, step, index) => {
    const next = stepAt(run, index + 1);
    const { toPourOut, toEnd, haveReady } = words();
    return inOneLine(
      step.pourOutSeconds > 0 ? toPourOut(run.warnSeconds) : toEnd(run.warnSeconds, titled(step)),
      next ? haveReady(titled(next)) : "",
    );
  },
  "pour-out": (run, step, index) => {
    const next = stepAt(run, index + 1);
    return inOneLine(
      words().pourOut(step.pourOutSeconds, leavingOf(step)),
      next ? words().andThen(titled(next)) : "",
    );
  },
  "next-bath": (run, step, index) => {
    const next = stepAt(run, index + 1);
    if (!next) return words().done(titleOf(step), leavingOf(step));
    const leaving = step.pourOutSeconds > 0 ? "" : leavingOf(step);
    return inOneLine(words().nextBath(titled(next)), leaving, doingOf(next));
  },
  nudge: (run, step, index) => {
    const before = stepAt(run, index - 1);
    const works = before ? words().goesOn(titled(before)) : "";
    return inOneLine(words().isItIn(titled(step)), works, doingOf(step));
  },
} as const satisfies Record<CueKind, CueWords>;

/** Said where a message was decided on time but reached the chat late. */
export function deliveredLate(lateMs: number, dueAtMs: number): string {
  return words().late(Math.round(lateMs / 1000), dueAtMs);
}

/** Said in front of a call on time, of those before it that nobody heard. */
export function missedWords(missed: number): string {
  return words().missed(missed);
}

/** Said where a message leaves before its moment, since many are due together. */
export function deliveredEarly(dueAtMs: number): string {
  return words().early(dueAtMs);
}
