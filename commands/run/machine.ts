import { fail, ok, type Result } from "../result.ts";
import { stayLonger } from "./longer.ts";
import { lastingMs, pourOutAtMs, secondsIn, stepAt } from "../../store/shapes/run.ts";
import type { Deviation, StepRecord, Phase, Run } from "../../store/shapes/run.ts";

/*
 * A run as a state machine. `advance` is the only way a run changes. A film in a bath can't be paused, so there is
 * no pause: a step either waits for a person's word or runs by the clock.
 */

export type RunEvent =
  /** The bath of the next step is in (or the step without a time is done). `step` is what the button spoke of. */
  | { readonly kind: "next"; readonly step: number | null; readonly sure: boolean; readonly atMs: number }
  /** The clock reached the end of the step. */
  | { readonly kind: "elapsed"; readonly atMs: number }
  /** "I poured 20 s ago." */
  | { readonly kind: "poured"; readonly agoSeconds: number; readonly atMs: number }
  /** A temperature measured in mid-step, and the seconds left that follow from it. */
  | {
      readonly kind: "new-temperature";
      readonly tenthsC: number;
      readonly leftSeconds: number;
      readonly atMs: number;
    }
  /** The image was seen to appear; the developing time in all that follows from it. */
  | {
      readonly kind: "seen";
      readonly wholeSeconds: (seenAfterSeconds: number) => number;
      readonly atMs: number;
    }
  /** A bath was found to need longer. */
  | { readonly kind: "longer"; readonly plan: Run["plan"]; readonly atMs: number }
  /** A wet print came into the wash of this one. */
  | { readonly kind: "wash-anew"; readonly atMs: number }
  | { readonly kind: "stop"; readonly reason: string; readonly atMs: number };

export type RunFault =
  | { readonly code: "ERR_RUN_OVER" }
  | { readonly code: "ERR_OLD_BUTTON"; readonly step: number }
  | { readonly code: "ERR_ALREADY_RUNNING"; readonly step: number; readonly leftSeconds: number }
  | { readonly code: "ERR_TOO_EARLY"; readonly step: number; readonly leftSeconds: number }
  | { readonly code: "ERR_BEFORE_LAST_STEP"; readonly step: number; readonly mostSeconds: number }
  | { readonly code: "ERR_NOTHING_RUNNING"; readonly step: number }
  | { readonly code: "ERR_POURING_OUT"; readonly step: number }
  | { readonly code: "ERR_NOT_DEVELOPING"; readonly step: number }
  | { readonly code: "ERR_ALREADY_SEEN"; readonly step: number };

/** A change this close to pour-out counts as the change itself: hands are quicker than clocks. */
export const EARLY_GRACE_SECONDS = 5;
/** Shorter deviations than this are how people are, not news. */
const WORTH_NOTING_SECONDS = 5;

export function advance(run: Run, event: RunEvent): Result<Run, RunFault> {
  if (run.phase.kind === "finished" || run.phase.kind === "stopped") return fail({ code: "ERR_RUN_OVER" });
  switch (event.kind) {
    case "next":
      return run.phase.kind === "waiting"
        ? nextWhileWaiting(run, run.phase, event)
        : nextWhileRunning(run, run.phase, event);
    case "elapsed":
      return run.phase.kind === "running" ? ok(elapse(run, run.phase)) : ok(run);
    case "poured":
      return moveStart(run, event.agoSeconds, event.atMs);
    case "new-temperature":
      return retemper(run, event);
    case "seen":
      return seeImage(run, run.phase, event);
    case "longer":
      return ok(stayLonger(run, run.phase, event.plan, event.atMs));
    case "wash-anew":
      return ok(washAnew(run, run.phase, event.atMs));
    case "stop": {
      const { step } = run.phase;
      const marks = closeMark(run.marks, event.atMs);
      const phase = { kind: "stopped", step, atMs: event.atMs, reason: event.reason } as const;
      return ok({ ...run, phase, marks, schedule: run.schedule + 1 });
    }
  }
}

type WaitingPhase = Extract<Phase, { kind: "waiting" }>;
type Running = Extract<Phase, { kind: "running" }>;
type Next = Extract<RunEvent, { kind: "next" }>;

function nextWhileWaiting(run: Run, phase: WaitingPhase, event: Next): Result<Run, RunFault> {
  if (event.step !== null && event.step !== phase.step)
    return fail({ code: "ERR_OLD_BUTTON", step: phase.step });
  return ok(begin(run, phase.step, event.atMs));
}

function nextWhileRunning(run: Run, phase: Running, event: Next): Result<Run, RunFault> {
  const leftSeconds = Math.max(0, Math.ceil(secondsIn(run, phase.endsAtMs - event.atMs)));
  if (event.step === phase.step) return fail({ code: "ERR_ALREADY_RUNNING", step: phase.step, leftSeconds });
  if (event.step !== null && event.step !== phase.step + 1)
    return fail({ code: "ERR_OLD_BUTTON", step: phase.step });
  const step = stepAt(run, phase.step);
  const earliest = step ? pourOutAtMs(run, step, phase.endsAtMs) - lastingMs(run, EARLY_GRACE_SECONDS) : 0;
  if (event.atMs < earliest && !event.sure)
    return fail({ code: "ERR_TOO_EARLY", step: phase.step, leftSeconds });
  return ok(begin(run, phase.step + 1, event.atMs));
}

/** Puts the bath of `step` in: closes the step before, and starts the clock where the step has one. */
function begin(run: Run, step: number, atMs: number): Run {
  const deviations = [...run.deviations, ...deviationAtEnd(run, atMs)];
  const marks = closeMark(run.marks, atMs);
  const next = stepAt(run, step);
  if (!next)
    return { ...run, marks, deviations, schedule: run.schedule + 1, phase: { kind: "finished", atMs } };
  if (next.seconds === null) {
    // Nothing is timed here: the word that it is done closes the step.
    const done = [
      ...marks,
      { step, plannedSeconds: null, startedAtMs: waitingSince(run, atMs), endedAtMs: atMs },
    ];
    return enter({ ...run, marks: done, deviations }, step + 1, atMs);
  }
  const mark = { step, plannedSeconds: next.seconds, startedAtMs: atMs, endedAtMs: null };
  const endsAtMs = atMs + lastingMs(run, next.seconds);
  const phase = { kind: "running", step, startedAtMs: atMs, endsAtMs } as const;
  return { ...run, marks: [...marks, mark], deviations, phase, schedule: run.schedule + 1 };
}

function enter(run: Run, step: number, atMs: number): Run {
  const phase: Phase = stepAt(run, step)
    ? { kind: "waiting", step, sinceMs: atMs }
    : { kind: "finished", atMs };
  return { ...run, phase, schedule: run.schedule + 1 };
}

function elapse(run: Run, phase: Running): Run {
  // A bath acts on until the next one is in; but nothing follows the last step, and what has no time is no bath.
  const isLastBath = (stepAt(run, phase.step + 1)?.seconds ?? null) === null;
  const marks = isLastBath ? closeMark(run.marks, phase.endsAtMs) : run.marks;
  return enter({ ...run, marks }, phase.step + 1, phase.endsAtMs);
}

function waitingSince(run: Run, atMs: number): number {
  return run.phase.kind === "waiting" ? run.phase.sinceMs : atMs;
}

function closeMark(marks: readonly StepRecord[], atMs: number): StepRecord[] {
  return marks.map((mark) =>
    mark.endedAtMs === null ? { ...mark, endedAtMs: Math.max(atMs, mark.startedAtMs) } : mark,
  );
}

/** Where the bath before acted clearly longer or shorter than planned. */
function deviationAtEnd(run: Run, atMs: number): Deviation[] {
  const mark = run.marks.find(({ endedAtMs }) => endedAtMs === null);
  if (!mark || mark.plannedSeconds === null) return [];
  const bySeconds = Math.round(secondsIn(run, atMs - mark.startedAtMs)) - mark.plannedSeconds;
  if (Math.abs(bySeconds) < WORTH_NOTING_SECONDS) return [];
  // A wash or a dryer may go on as long as it likes; only too little of it is news.
  const kind = stepAt(run, mark.step)?.kind;
  if (bySeconds > 0 && (kind === "wash" || kind === "dry" || kind === "rinse")) return [];
  return [
    bySeconds < 0
      ? { kind: "cut-short", step: mark.step, bySeconds: -bySeconds, atMs }
      : { kind: "overrun", step: mark.step, bySeconds, atMs },
  ];
}

function moveStart(run: Run, agoSeconds: number, atMs: number): Result<Run, RunFault> {
  const startedAtMs = atMs - lastingMs(run, agoSeconds);
  const step = run.phase.kind === "waiting" || run.phase.kind === "running" ? run.phase.step : 0;
  const previous = run.marks.filter((mark) => mark.step < step).at(-1);
  const floorMs = previous?.startedAtMs ?? run.startedAtMs - 60 * 60 * 1000;
  if (startedAtMs <= floorMs) {
    return fail({
      code: "ERR_BEFORE_LAST_STEP",
      step,
      mostSeconds: Math.max(0, Math.floor(secondsIn(run, atMs - floorMs)) - 1),
    });
  }
  if (run.phase.kind === "waiting") return ok(begin(run, run.phase.step, startedAtMs));
  if (run.phase.kind !== "running") return fail({ code: "ERR_RUN_OVER" });
  const byMs = startedAtMs - run.phase.startedAtMs;
  const phase = { ...run.phase, startedAtMs, endsAtMs: run.phase.endsAtMs + byMs };
  const marks = run.marks.map((mark) => {
    if (mark.step === step && mark.endedAtMs === null) return { ...mark, startedAtMs };
    // The bath before acted until this one was in.
    return previous && mark === previous ? { ...mark, endedAtMs: startedAtMs } : mark;
  });
  const moved = { kind: "moved", step, bySeconds: Math.round(secondsIn(run, byMs)), atMs } as const;
  return ok({ ...run, phase, marks, deviations: [...run.deviations, moved], schedule: run.schedule + 1 });
}

function retemper(run: Run, event: Extract<RunEvent, { kind: "new-temperature" }>): Result<Run, RunFault> {
  if (run.phase.kind !== "running") {
    return fail({ code: "ERR_NOTHING_RUNNING", step: run.phase.kind === "waiting" ? run.phase.step : 0 });
  }
  const { step, startedAtMs, endsAtMs } = run.phase;
  const at = stepAt(run, step);
  if (at && event.atMs >= pourOutAtMs(run, at, endsAtMs)) return fail({ code: "ERR_POURING_OUT", step });
  const newEndMs = event.atMs + lastingMs(run, event.leftSeconds);
  const note = {
    kind: "new-temperature",
    step,
    tenthsC: event.tenthsC,
    fromSeconds: Math.round(secondsIn(run, endsAtMs - startedAtMs)),
    toSeconds: Math.round(secondsIn(run, newEndMs - startedAtMs)),
    atMs: event.atMs,
  } as const;
  const phase = { ...run.phase, endsAtMs: newEndMs };
  return ok({ ...run, phase, deviations: [...run.deviations, note], schedule: run.schedule + 1 });
}

type Open = Extract<Phase, { kind: "waiting" | "running" }>;

function seeImage(
  run: Run,
  phase: Open,
  { wholeSeconds, atMs }: Extract<RunEvent, { kind: "seen" }>,
): Result<Run, RunFault> {
  const { step } = phase;
  if (phase.kind !== "running" || stepAt(run, step)?.kind !== "develop")
    return fail({ code: "ERR_NOT_DEVELOPING", step });
  if (run.deviations.some((each) => each.kind === "seen" && each.step === step))
    return fail({ code: "ERR_ALREADY_SEEN", step });
  const { startedAtMs, endsAtMs } = phase;
  const afterSeconds = Math.max(1, Math.round(secondsIn(run, atMs - startedAtMs)));
  const toSeconds = wholeSeconds(afterSeconds);
  const fromSeconds = Math.round(secondsIn(run, endsAtMs - startedAtMs));
  const note = { kind: "seen", step, afterSeconds, fromSeconds, toSeconds, atMs } as const;
  return ok({
    ...run,
    phase: { ...phase, endsAtMs: startedAtMs + lastingMs(run, toSeconds) },
    deviations: [...run.deviations, note],
    schedule: run.schedule + 1,
  });
}

/** The wash of a print begins anew, also where its time was over and the print is still in it; else nothing changes. */
function washAnew(run: Run, phase: Open, atMs: number): Run {
  const step = phase.kind === "running" ? phase.step : phase.step - 1;
  const wash = stepAt(run, step);
  if (wash?.kind !== "wash" || wash.medium !== "paper" || wash.seconds === null) return run;
  const before = run.marks.filter((each) => each.step === step).at(-1);
  const afterSeconds = Math.max(0, Math.round(secondsIn(run, atMs - (before?.startedAtMs ?? atMs))));
  const note = { kind: "washed-anew", step, afterSeconds, atMs } as const;
  const mark = { step, plannedSeconds: wash.seconds, startedAtMs: atMs, endedAtMs: null };
  return {
    ...run,
    phase: { kind: "running", step, startedAtMs: atMs, endsAtMs: atMs + lastingMs(run, wash.seconds) },
    marks: [...closeMark(run.marks, atMs), mark],
    deviations: [...run.deviations, note],
    schedule: run.schedule + 1,
  };
}
