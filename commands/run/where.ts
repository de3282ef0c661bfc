import { inEach } from "../speech/language.ts";
import { describeAgitation, doingOf, leavingOf, titleInText, titleOf } from "../sheet/step-words.ts";
import type { Step } from "../../store/shapes/plan.ts";
import {
  currentStep,
  isOver,
  isTrayRun,
  isTrial,
  pourOutAtMs,
  type Run,
  secondsIn,
  stepAt,
} from "../../store/shapes/run.ts";
import { nameOf, queuedWords } from "./run-words.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";
import type { Titled } from "./words/titled.ts";

/* Where a run is, in a sentence or three. */

const words = inEach({ en, de });

/** A step as sentences speak of it. */
export function titled(step: Step): Titled {
  return { kind: step.kind, title: titleInText(step) };
}

/** Where its film is. */
export function whereIs(run: Run, now: number): string {
  const { phase } = run;
  const name = nameOf(run);
  if (isTrial(run) && isOver(run)) return words().trialOver(name);
  const says = isTrayRun(run) ? words().tray : words();
  if (phase.kind === "finished") return says.finished(name);
  if (phase.kind === "stopped" && run.marks.length === 0) return words().stoppedNow(name);
  if (phase.kind === "stopped")
    return says.stopped(name, titleOf(stepAt(run, phase.step) ?? { kind: "cut", ordinal: 0 }));
  const step = currentStep(run);
  if (!step) return `**${name}**`;
  if (phase.kind === "waiting") {
    const isQueued = run.queued && (run.queued.dueAtMs ?? Infinity) > now;
    return words().waiting(name, titled(step), isQueued ? queuedWords(run) : doingOf(step));
  }
  const left = Math.max(0, Math.ceil(secondsIn(run, phase.endsAtMs - now)));
  const lines = [words().left(left, titled(step), phase.endsAtMs, name)];
  if (step.agitation) lines.push(words().agitate(describeAgitation(step.agitation, step.medium)));
  return [...lines, ...leavingLines(run, step, phase.endsAtMs, now)].join("\n");
}

/** The same for who is told of it and may read it later, beside a countdown: by the clock, since what is left goes on. */
export function whereIsByClock(run: Run, now: number): string {
  const step = currentStep(run);
  if (!step || run.phase.kind !== "running") return whereIs(run, now);
  const { endsAtMs } = run.phase;
  return [words().until(titled(step), endsAtMs), ...leavingLines(run, step, endsAtMs, now)].join("\n");
}

function leavingLines(run: Run, step: Step, endsAtMs: number, now: number): string[] {
  if (step.pourOutSeconds === 0) return [];
  const says = isTrayRun(run) ? words().tray : words();
  const outAtMs = pourOutAtMs(run, step, endsAtMs);
  return [now >= outAtMs ? says.pourOutNow(leavingOf(step)) : says.pourOutAt(outAtMs)];
}
