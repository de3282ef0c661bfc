import type { Action } from "../define.ts";
import { makeLine } from "../speech/line.ts";
import { inEach } from "../speech/language.ts";
import { doingOf, labelOf, leavingOf, titleInText, titleOf } from "../sheet/step-words.ts";
import { cuesOf } from "./cues.ts";
import type { Cue } from "../../store/shapes/cue.ts";
import { pourOutAtMs, stepAt, type Run } from "../../store/shapes/run.ts";
import { de } from "./words/view.de.ts";
import { en } from "./words/view.en.ts";

/* A run as a page shows it: the one next action, and what the clock counts to. */

const words = inEach({ en, de });

export interface ComingCue {
  readonly text: string;
  readonly at: number;
}

export interface RunView {
  /** Its number. */
  readonly run: number;
  readonly owner: string;
  readonly ownerId: string;
  readonly tank: number | null;
  readonly title: string;
  /** From 1. */
  readonly stepNumber: number;
  readonly stepCount: number;
  readonly phase: Run["phase"]["kind"];
  readonly now: string;
  readonly startedAt: number | null;
  readonly endsAt: number | null;
  readonly nextCue: ComingCue | null;
  /** What else is said in this step, in order: a phone that lost its link goes on calling by itself. */
  readonly coming: readonly ComingCue[];
  readonly actions: readonly Action[];
}

export function viewOf(run: Run, owner: string, nowMs: number): RunView {
  const { phase } = run;
  const index = "step" in phase ? phase.step : run.plan.steps.length - 1;
  const step = stepAt(run, index);
  const coming = cuesOf(run)
    .filter(({ dueAtMs, kind }) => dueAtMs > nowMs && kind !== "nudge")
    .map((cue) => ({ text: cueWords(run, cue), at: cue.dueAtMs }));
  return {
    run: run.number,
    owner,
    ownerId: run.personId,
    tank: run.plan.tank,
    title: step ? titleOf(step) : "",
    stepNumber: index + 1,
    stepCount: run.plan.steps.length,
    phase: phase.kind,
    now: step ? nowWords(run, nowMs) : "",
    startedAt: phase.kind === "running" ? phase.startedAtMs : null,
    endsAt: phase.kind === "running" ? phase.endsAtMs : null,
    nextCue: coming[0] ?? null,
    coming,
    actions: actionsOf(run),
  };
}

function nowWords(run: Run, nowMs: number): string {
  const { phase } = run;
  if (phase.kind === "finished") return words().finished;
  if (phase.kind === "stopped") return words().stopped;
  const step = stepAt(run, phase.step);
  if (!step) return "";
  if (phase.kind === "waiting") return doingOf(step);
  if (nowMs >= pourOutAtMs(step, phase.endsAtMs))
    return step.pourOutSeconds > 0 ? words().pourOutNow(leavingOf(step)) : leavingOf(step);
  const { agitation } = step;
  if (!agitation) return words().wait;
  if (agitation.manner === "continuous") return words().keepMoving;
  const gone = (nowMs - phase.startedAtMs) / 1000;
  const into = agitation.cycleSeconds > 0 ? gone % agitation.cycleSeconds : gone;
  const isMoving =
    gone < agitation.initialSeconds || (gone >= agitation.cycleSeconds && into < agitation.burstSeconds);
  return isMoving ? words().agitate : words().letStand;
}

/** What a cue asks for, in a few words. */
export function cueWords(run: Run, cue: Cue): string {
  const step = stepAt(run, cue.step);
  const next = stepAt(run, cue.step + 1);
  switch (cue.kind) {
    case "agitate":
      return words().agitateFor(step?.agitation?.burstSeconds ?? 0);
    case "agitate-first":
      return words().agitateFor(step?.agitation?.initialSeconds ?? 0);
    case "get-ready":
      return words().getReady(next ? titleInText(next) : null);
    case "pour-out":
      return words().pourOut;
    default:
      return next ? titleOf(next) : words().done;
  }
}

function actionsOf(run: Run): Action[] {
  const { phase } = run;
  if (phase.kind !== "waiting" && phase.kind !== "running") return [];
  const to = phase.kind === "waiting" ? phase.step : phase.step + 1;
  const next = stepAt(run, to);
  const stop: Action = {
    label: words().stopThis,
    line: makeLine("run stop", { run: run.number }),
    weight: "danger",
  };
  if (!next) return [stop];
  return [
    { label: labelOf(next), line: makeLine("run next", { run: run.number, step: to }), weight: "main" },
    stop,
  ];
}
