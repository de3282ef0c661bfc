import type { Phase, Run } from "./run.ts";

/** The same run, every instant of it moved by `byMs`: for a wall clock that was set while the film was in the tank. */
export function shiftRun(run: Run, byMs: number): Run {
  return {
    ...run,
    startedAtMs: run.startedAtMs + byMs,
    phase: shiftPhase(run.phase, byMs),
    ...(run.queued ? { queued: shiftQueued(run.queued, byMs) } : {}),
    marks: run.marks.map((mark) => ({
      ...mark,
      startedAtMs: mark.startedAtMs + byMs,
      endedAtMs: mark.endedAtMs === null ? null : mark.endedAtMs + byMs,
    })),
    deviations: run.deviations.map((each) => ({ ...each, atMs: each.atMs + byMs })),
  };
}

const shiftQueued = ({ dueAtMs, ...rest }: NonNullable<Run["queued"]>, byMs: number) => ({
  ...rest,
  dueAtMs: dueAtMs === null ? null : dueAtMs + byMs,
});

function shiftPhase(phase: Phase, byMs: number): Phase {
  switch (phase.kind) {
    case "waiting":
      return { ...phase, sinceMs: phase.sinceMs + byMs };
    case "running":
      return { ...phase, startedAtMs: phase.startedAtMs + byMs, endsAtMs: phase.endsAtMs + byMs };
    default:
      return { ...phase, atMs: phase.atMs + byMs };
  }
}
