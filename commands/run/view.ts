import type { Action } from "../define.ts";
import { makeLine } from "../speech/line.ts";
import { inEach } from "../speech/language.ts";
import { doingOf, labelOf, titleInText, titleOf } from "../sheet/step-words.ts";
import type { Cue } from "../../store/shapes/cue.ts";
import type { Step } from "../../store/shapes/plan.ts";
import {
  type Deviation,
  isTrayRun,
  type Phase,
  type Run,
  stepAt,
  waitsToBegin,
} from "../../store/shapes/run.ts";
import { actionsFor, partsOf } from "./cue-words.ts";
import { seenAction } from "./seen.ts";
import { cuesOf } from "./cues.ts";
import { de } from "./words/view.de.ts";
import { en } from "./words/view.en.ts";
import { turnCall, waitForTurn } from "./turn-words.ts";
import type { RunView } from "./run-view.ts";

/* A run as a page shows it: what the clock counts to, and every call that lies ahead. */

const words = inEach({ en, de });

export function viewOf(run: Run, owner: string): RunView {
  const { phase } = run;
  const index = "step" in phase ? phase.step : run.plan.steps.length - 1;
  const step = stepAt(run, index);
  const cues = callsOf(run);
  const turnAt = turnAtMs(run);
  return {
    run: run.number,
    owner,
    ownerId: run.personId,
    tank: run.plan.tank,
    ...(isTrayRun(run) ? { trays: run.plan.line } : {}),
    title: step ? titleOf(step) : "",
    stepNumber: index + 1,
    stepCount: run.plan.steps.length,
    phase: phase.kind,
    resting: restingWords(run, step),
    isPoured: step !== undefined && step.medium !== "paper" && step.kind !== "dry" && step.kind !== "cut",
    isDeveloping: actingStep(run)?.kind === "develop",
    startedAt: phase.kind === "running" ? phase.startedAtMs : null,
    endsAt: phase.kind === "running" ? phase.endsAtMs : null,
    begunAt: run.startedAtMs,
    overdueSince: phase.kind === "waiting" && isAfterTimedStep(run, phase.step) ? phase.sinceMs : null,
    ...(run.speed === undefined ? {} : { speed: run.speed }),
    knownAt: knownAt(run),
    calls:
      turnAt === null
        ? cues.map(({ kind, dueAtMs }) => ({ kind, at: dueAtMs }))
        : [{ kind: "next-bath", at: turnAt }],
    sayings:
      turnAt === null
        ? Object.fromEntries(
            cues.map((cue) => [
              cue.kind,
              { ...partsOf(run, cue), brief: cueWords(run, cue), actions: actionsFor(run, cue) },
            ]),
          )
        : { "next-bath": turnCall(run) },
    actions: actionsOf(run),
  };
}

/** When it is the turn of a run that waits for a place, as far as anybody knows: nothing else is called before it begins. */
const turnAtMs = (run: Run): number | null => (waitsToBegin(run) ? (run.queued?.dueAtMs ?? null) : null);

type CallCue = Pick<Cue, "kind" | "step" | "dueAtMs">;

function callsOf(run: Run): CallCue[] {
  const { phase } = run;
  if (phase.kind === "running") {
    const waiting: Phase = { kind: "waiting", step: phase.step + 1, sinceMs: phase.endsAtMs };
    return [...cuesOf(run), ...cuesOf({ ...run, phase: waiting })];
  }
  if (phase.kind !== "waiting" || !isAfterTimedStep(run, phase.step)) return [];
  return [{ kind: "next-bath", step: phase.step - 1, dueAtMs: phase.sinceMs }, ...cuesOf(run)];
}

/** Whose bath is in the tank, as far as anybody has said. */
function actingStep(run: Run): Step | undefined {
  const { phase } = run;
  if (phase.kind === "running") return stepAt(run, phase.step);
  return phase.kind === "waiting" ? stepAt(run, phase.step - 1) : undefined;
}

/** A step with a time ends by the clock, so that whoever waits after it was called. */
function isAfterTimedStep(run: Run, index: number): boolean {
  return (stepAt(run, index - 1)?.seconds ?? null) !== null;
}

function knownAt({ phase, deviations, startedAtMs }: Run): number {
  if (phase.kind === "waiting") return phase.sinceMs;
  if (phase.kind !== "running") return startedAtMs;
  const changes = deviations.filter(({ step, kind }) => step === phase.step && CHANGES_SCHEDULE.has(kind));
  return Math.max(phase.startedAtMs, ...changes.map(({ atMs }) => atMs));
}

const CHANGES_SCHEDULE: ReadonlySet<Deviation["kind"]> = new Set([
  "moved",
  "new-temperature",
  "seen",
  "washed-anew",
]);

function restingWords(run: Run, step: Step | undefined): string {
  const { phase } = run;
  if (phase.kind === "finished") return isTrayRun(run) ? words().tray.finished : words().finished;
  if (phase.kind === "stopped") return words().stopped;
  if (!step) return "";
  if (phase.kind === "waiting") return run.queued ? waitForTurn() : doingOf(step);
  if (!step.agitation) return words().wait;
  const { keepMoving, letStand } = step.medium === "paper" ? words().tray : words();
  return step.agitation.manner === "continuous" ? keepMoving : letStand;
}

/** What a cue asks for, in a few words. */
export function cueWords(run: Run, cue: Pick<Cue, "kind" | "step">): string {
  const step = stepAt(run, cue.step);
  const next = stepAt(run, cue.step + 1);
  const says = step?.medium === "paper" ? words().tray : words();
  switch (cue.kind) {
    case "agitate":
      return says.agitateFor(step?.agitation?.burstSeconds ?? 0);
    case "agitate-first":
      return says.agitateFor(step?.agitation?.initialSeconds ?? 0);
    case "get-ready":
      return words().getReady(next ? titleInText(next) : null);
    case "pour-out":
      return says.pourOut;
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
  const seen = seenAction(run);
  if (seen)
    return [seen, { label: labelOf(next), line: makeLine("run next", { run: run.number, step: to }) }, stop];
  // To whoever waits for a place it would be an invitation.
  const weight = run.queued?.dueAtMs === null ? "plain" : "main";
  return [{ label: labelOf(next), line: makeLine("run next", { run: run.number, step: to }), weight }, stop];
}
