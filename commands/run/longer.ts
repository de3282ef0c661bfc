import { lastingMs, type Phase, type Run } from "../../store/shapes/run.ts";

type Open = Extract<Phase, { kind: "waiting" | "running" }>;

/**
 * By a plan with longer times, a film that is in such a bath stays in it: also where its time was over, as long as the next
 * bath is not in. Never shorter; where the bath has acted long enough by now, only the plan is another.
 */
export function stayLonger(run: Run, phase: Open, plan: Run["plan"], atMs: number): Run {
  const step = phase.kind === "running" ? phase.step : phase.step - 1;
  const mark = run.marks.find((each) => each.step === step && each.endedAtMs === null);
  const seconds = plan.steps[step]?.seconds ?? 0;
  const endsAtMs = mark ? mark.startedAtMs + lastingMs(run, seconds) : 0;
  if (!mark || seconds <= (mark.plannedSeconds ?? Infinity) || endsAtMs <= atMs) return { ...run, plan };
  return {
    ...run,
    plan,
    phase: { kind: "running", step, startedAtMs: mark.startedAtMs, endsAtMs },
    marks: run.marks.map((each) => (each === mark ? { ...each, plannedSeconds: seconds } : each)),
    schedule: run.schedule + 1,
  };
}
