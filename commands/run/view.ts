import type { Action } from "../define.ts";
import { makeLine } from "../line.ts";
import { doingOf, labelOf, leavingOf, titleOf } from "../plan/step-words.ts";
import { makeNumber, saySeconds } from "../wording.ts";
import { cuesOf, type Cue } from "./cues.ts";
import { pourOutAtMs, stepAt, type Run } from "./run.ts";

/* A run as a page shows it: the one next action, and what the clock counts to. */

export interface ComingCue {
  readonly text: string;
  readonly at: number;
}

export interface RunView {
  readonly run: string;
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
    run: makeNumber("run", run.number),
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
  if (phase.kind === "finished") return "Done. The negatives are in the log.";
  if (phase.kind === "stopped") return "Stopped.";
  const step = stepAt(run, phase.step);
  if (!step) return "";
  if (phase.kind === "waiting") return doingOf(step);
  if (nowMs >= pourOutAtMs(step, phase.endsAtMs))
    return step.pourOutSeconds > 0 ? `Pour out now. ${leavingOf(step)}` : leavingOf(step);
  const { agitation } = step;
  if (!agitation) return "Wait.";
  if (agitation.manner === "continuous") return "Keep it moving.";
  const gone = (nowMs - phase.startedAtMs) / 1000;
  const into = agitation.cycleSeconds > 0 ? gone % agitation.cycleSeconds : gone;
  const isMoving =
    gone < agitation.initialSeconds || (gone >= agitation.cycleSeconds && into < agitation.burstSeconds);
  return isMoving ? "Agitate." : "Let it stand.";
}

/** What a cue asks for, in a few words. */
export function cueWords(run: Run, cue: Cue): string {
  const step = stepAt(run, cue.step);
  const next = stepAt(run, cue.step + 1);
  switch (cue.kind) {
    case "agitate":
      return `Agitate ${saySeconds(step?.agitation?.burstSeconds ?? 0)}`;
    case "agitate-first":
      return `Agitate ${saySeconds(step?.agitation?.initialSeconds ?? 0)}`;
    case "get-ready":
      return next ? `Get ready: ${titleOf(next).toLowerCase()}` : "Get ready";
    case "pour-out":
      return "Pour out";
    default:
      return next ? titleOf(next) : "Done";
  }
}

function actionsOf(run: Run): Action[] {
  const { phase } = run;
  if (phase.kind !== "waiting" && phase.kind !== "running") return [];
  const to = phase.kind === "waiting" ? phase.step : phase.step + 1;
  const next = stepAt(run, to);
  const stop: Action = {
    label: "Stop this run",
    line: makeLine("run stop", { run: run.number }),
    weight: "danger",
  };
  if (!next) return [stop];
  return [
    { label: labelOf(next), line: makeLine("run next", { run: run.number, step: to }), weight: "main" },
    stop,
  ];
}
