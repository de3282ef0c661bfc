import { lastingMs, type Phase, pourOutAtMs, type Run, stepAt } from "../../store/shapes/run.ts";
import type { Step } from "../../store/shapes/plan.ts";
import { CUE_KINDS, type Cue, type CueKind } from "../../store/shapes/cue.ts";

/*
 * When a run speaks. Cues follow from the plan and from when each step really began; nothing else keeps time.
 */

const KEY_LETTERS = {
  "agitate-first": "f",
  agitate: "a",
  "get-ready": "g",
  "pour-out": "p",
  "next-bath": "n",
  nudge: "w",
} as const satisfies Record<CueKind, string>;

/** Of a cue by its key: what it asks for; undefined for a key of another make. */
export function kindOfCue(key: string): CueKind | undefined {
  const letter = /^[0-9a-z]+\.[0-9a-z]+([a-z])[0-9a-z]+$/.exec(key)?.[1];
  return CUE_KINDS.find((kind) => KEY_LETTERS[kind] === letter);
}

/** A print has only just gone in: nobody is called again at once. */
const QUIET_MS = 10_000;

/** After a bath that goes on acting, ask whether the next one is in: common practice, no source. */
const NUDGE_SECONDS = [20, 60, 180] as const;

/**
 * Every cue of the run's present phase, in order of time.
 * Invariant: a pour-out cue lies before the next-bath cue of its step, and no agitation begins that pour-out would cut.
 */
export function cuesOf(run: Run): Cue[] {
  if (run.phase.kind === "running") return runningCues(run, run.phase);
  if (run.phase.kind === "waiting") return waitingCues(run, run.phase);
  return [];
}

function cue(run: Run, step: number, kind: CueKind, number: number, dueAtMs: number): Cue {
  const key = `${run.schedule.toString(36)}.${step.toString(36)}${KEY_LETTERS[kind]}${number.toString(36)}`;
  return { key, kind, step, number, dueAtMs };
}

function runningCues(run: Run, phase: Extract<Phase, { kind: "running" }>): Cue[] {
  const { step: index, startedAtMs, endsAtMs } = phase;
  const step = stepAt(run, index);
  if (!step) return [];
  const outAtMs = pourOutAtMs(run, step, endsAtMs);
  const cues: Cue[] = [];
  const { agitation } = step;
  if (agitation && agitation.initialSeconds > 0) cues.push(cue(run, index, "agitate-first", 0, startedAtMs));
  for (const [position, atMs] of agitationStarts(run, step, startedAtMs, outAtMs).entries()) {
    cues.push(cue(run, index, "agitate", position + 1, atMs));
  }
  const readyAtMs = outAtMs - lastingMs(run, run.warnSeconds);
  const quietMs = step.medium === "paper" ? QUIET_MS : 0;
  if (run.warnSeconds > 0 && readyAtMs > startedAtMs + quietMs)
    cues.push(cue(run, index, "get-ready", 0, readyAtMs));
  if (step.pourOutSeconds > 0 && outAtMs > startedAtMs) cues.push(cue(run, index, "pour-out", 0, outAtMs));
  cues.push(cue(run, index, "next-bath", 0, endsAtMs));
  return cues.sort((a, b) => a.dueAtMs - b.dueAtMs);
}

/** The instants at which the tank is taken up again after its rest. */
export function agitationStarts(
  run: Pick<Run, "speed">,
  step: Step,
  startedAtMs: number,
  untilMs: number,
): number[] {
  const { agitation } = step;
  if (
    !agitation ||
    agitation.manner === "continuous" ||
    agitation.cycleSeconds <= 0 ||
    agitation.burstSeconds <= 0
  ) {
    return [];
  }
  const starts: number[] = [];
  const cycleMs = lastingMs(run, agitation.cycleSeconds);
  const burstMs = lastingMs(run, agitation.burstSeconds);
  const first = Math.max(1, Math.ceil(agitation.initialSeconds / agitation.cycleSeconds));
  for (let atMs = startedAtMs + first * cycleMs; atMs + burstMs <= untilMs; atMs += cycleMs) {
    starts.push(atMs);
  }
  return starts;
}

function waitingCues(run: Run, phase: Extract<Phase, { kind: "waiting" }>): Cue[] {
  const before = stepAt(run, phase.step - 1);
  // Only a developer, a stop or a fixer left in the tank does harm; a film in the wash or the dryer can wait.
  if (!before || !["develop", "stop", "fix", "lamp"].includes(before.kind)) return [];
  // Whoever tries it out has hands no faster than others.
  return NUDGE_SECONDS.map((seconds, position) =>
    cue(run, phase.step, "nudge", position + 1, phase.sinceMs + seconds * 1000),
  );
}

/**
 * What is still to be said after a change at `atMs`. Agitations, calls to get ready and nudges that the new schedule puts
 * into the past are gone: the answer to the correction says where the film is. Pour-out and the next bath are never dropped.
 */
export function cuesAfter(run: Run, atMs: number): Cue[] {
  return cuesOf(run).filter(
    ({ kind, dueAtMs }) => dueAtMs >= atMs || kind === "pour-out" || kind === "next-bath",
  );
}
