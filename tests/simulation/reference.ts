import type { Agitation } from "../../store/shapes/sheet.ts";
import type { Plan, Step } from "../../store/shapes/plan.ts";

/*
 * What a run owes, reckoned a second time and in another way than the program does: in elapsed time, a plain object, no
 * store. The simulation and the model-based tests hold the bot against it.
 */

export type Stage =
  | { readonly kind: "waiting"; readonly step: number; readonly sinceMs: number }
  | { readonly kind: "running"; readonly step: number; readonly startMs: number; readonly endMs: number }
  | { readonly kind: "finished" }
  | { readonly kind: "stopped" };

/** One promise to speak. `key` is filled in once the bot has written it down. */
export interface Promised {
  readonly kind: "agitate-first" | "agitate" | "get-ready" | "pour-out" | "next-bath" | "nudge";
  readonly step: number;
  /** Which agitation or which nudge, from 1; 0 for the others. */
  readonly number: number;
  readonly dueMs: number;
  readonly madeMs: number;
  key: string | undefined;
  /** The run moved on and with it the promise. */
  takenBackMs: number | undefined;
  /** Due before anybody saw that it was owed: made or not, by when exactly the bot noticed. */
  readonly isOptional: boolean;
  /** So close to the instant from which on it is not owed that, the two clocks being apart by the slack, either is right. */
  readonly isOnTheEdge: boolean;
}

type Coming = Pick<Promised, "kind" | "step" | "number" | "dueMs"> & { readonly isOnTheEdge?: boolean };

export type Verdict = "done" | string;

/** Two readings of one instant may be this far apart: clock steps below 50 ms are let be, and ms are whole. */
export const SLACK_MS = 120;
const EARLY_GRACE_MS = 5000;

export class ReferenceRun {
  readonly plan: Plan;
  readonly warnSeconds: number;
  readonly startedMs: number;
  stage: Stage;
  readonly promises: Promised[] = [];
  /** When each bath went in. */
  readonly starts: { readonly step: number; atMs: number }[] = [];

  constructor(plan: Plan, warnSeconds: number, atMs: number) {
    this.plan = plan;
    this.warnSeconds = warnSeconds;
    this.startedMs = atMs;
    this.stage = { kind: "waiting", step: 0, sinceMs: atMs };
  }

  get isOver(): boolean {
    return this.stage.kind === "finished" || this.stage.kind === "stopped";
  }

  open(): Promised[] {
    return this.promises.filter(({ takenBackMs }) => takenBackMs === undefined);
  }

  /** What the bot must answer to a press of the button of `step`, and what becomes of the run. */
  next(step: number | undefined, isSure: boolean, atMs: number): Verdict {
    const { stage } = this;
    if (stage.kind === "finished" || stage.kind === "stopped") return "ERR_RUN_OVER";
    if (stage.kind === "waiting") {
      if (step !== undefined && step !== stage.step) return "ERR_OLD_BUTTON";
      this.putIn(stage.step, atMs);
      return "done";
    }
    if (step === stage.step) return "ERR_ALREADY_RUNNING";
    if (step !== undefined && step !== stage.step + 1) return "ERR_OLD_BUTTON";
    if (!isSure && atMs < this.earliestMs(stage)) return "ERR_TOO_EARLY";
    this.putIn(stage.step + 1, atMs);
    return "done";
  }

  /** The instant from which on the next bath counts as in time; close to it either answer may come. */
  earliestMs(stage: Extract<Stage, { kind: "running" }>): number {
    return stage.endMs - this.pourOutSeconds(stage.step) * 1000 - EARLY_GRACE_MS;
  }

  poured(agoSeconds: number, atMs: number): Verdict {
    const { stage } = this;
    if (stage.kind === "finished" || stage.kind === "stopped") return "ERR_RUN_OVER";
    const startMs = atMs - agoSeconds * 1000;
    const before = this.starts.filter(({ step }) => step < stage.step).at(-1);
    if (startMs <= (before?.atMs ?? this.startedMs - 3_600_000)) return "ERR_BEFORE_LAST_STEP";
    if (stage.kind === "waiting") this.putIn(stage.step, startMs, atMs);
    else {
      const own = this.starts.findLast(({ step }) => step === stage.step);
      if (own) own.atMs = startMs;
      this.enter({ ...stage, startMs, endMs: stage.endMs + startMs - stage.startMs }, atMs);
    }
    return "done";
  }

  /** A temperature in mid-step. How long is left then is the arithmetic's matter, and taken from the bot. */
  newTemperature(atMs: number, endMs: number): Verdict {
    const { stage } = this;
    if (stage.kind === "finished" || stage.kind === "stopped") return "ERR_RUN_OVER";
    if (stage.kind === "waiting") return "ERR_NOTHING_RUNNING";
    if (atMs >= stage.endMs - this.pourOutSeconds(stage.step) * 1000) return "ERR_POURING_OUT";
    this.enter({ ...stage, endMs }, atMs);
    return "done";
  }

  stop(atMs: number): Verdict {
    if (this.isOver) return "ERR_RUN_OVER";
    this.enter({ kind: "stopped" }, atMs);
    return "done";
  }

  /** The clock came to the end of the step. */
  elapse(atMs: number): void {
    if (this.stage.kind !== "running") throw new Error("nothing is running");
    const { step, endMs } = this.stage;
    // What the step still owed was said with its end, or stands in it; only the end itself is looked for.
    const isThere = step + 1 < this.plan.steps.length;
    this.enter(
      isThere ? { kind: "waiting", step: step + 1, sinceMs: endMs } : { kind: "finished" },
      atMs,
      true,
    );
  }

  private putIn(step: number, atMs: number, nowMs = atMs): void {
    const at = this.plan.steps[step];
    if (!at) return this.enter({ kind: "finished" }, nowMs);
    this.starts.push({ step, atMs });
    if (at.seconds !== null)
      return this.enter({ kind: "running", step, startMs: atMs, endMs: atMs + at.seconds * 1000 }, nowMs);
    const isThere = step + 1 < this.plan.steps.length;
    this.enter(isThere ? { kind: "waiting", step: step + 1, sinceMs: atMs } : { kind: "finished" }, nowMs);
  }

  private enter(stage: Stage, nowMs: number, byClock = false): void {
    this.stage = stage;
    if (!byClock) for (const each of this.open()) if (!isPast(each, nowMs)) each.takenBackMs = nowMs;
    const coming = stage.kind === "running" ? this.whileRunning(stage) : this.whileWaiting(stage);
    for (const { kind, step, number, dueMs, ...each } of coming) {
      const isAlways = kind === "pour-out" || kind === "next-bath";
      const isKept = isAlways || dueMs >= nowMs;
      const isOptional = !isKept && byClock;
      const isOnTheEdge = each.isOnTheEdge === true || (!isAlways && dueMs !== nowMs && isNear(dueMs, nowMs));
      if (isKept || isOptional || isOnTheEdge)
        this.promises.push({
          kind,
          step,
          number,
          dueMs,
          madeMs: nowMs,
          key: undefined,
          takenBackMs: undefined,
          isOptional,
          isOnTheEdge,
        });
    }
  }

  private whileWaiting(stage: Stage): Coming[] {
    if (stage.kind !== "waiting") return [];
    const before = this.plan.steps[stage.step - 1]?.kind;
    if (before !== "develop" && before !== "stop" && before !== "fix") return [];
    return [20, 60, 180].map((seconds, index) => ({
      kind: "nudge",
      step: stage.step,
      number: index + 1,
      dueMs: stage.sinceMs + seconds * 1000,
    }));
  }

  /** Walks through the step second by second, as somebody with a stopwatch would. */
  private whileRunning({ step, startMs, endMs }: Extract<Stage, { kind: "running" }>) {
    const at = this.plan.steps[step] as Step;
    const cues: Coming[] = [];
    let agitations = 0;
    const say = (kind: Promised["kind"], dueMs: number, isOnTheEdge = false): void =>
      void cues.push({ kind, step, number: kind === "agitate" ? (agitations += 1) : 0, dueMs, isOnTheEdge });
    const outMs = endMs - at.pourOutSeconds * 1000;
    for (let second = 0; startMs + second * 1000 < endMs; second += 1) {
      const dueMs = startMs + second * 1000;
      if (second === 0 && (at.agitation?.initialSeconds ?? 0) > 0) say("agitate-first", dueMs);
      if (at.agitation && isTakenUpAgain(at.agitation, second)) {
        const doneMs = dueMs + at.agitation.burstSeconds * 1000;
        if (doneMs <= outMs || isNear(doneMs, outMs)) say("agitate", dueMs, isNear(doneMs, outMs));
      }
    }
    const readyMs = outMs - this.warnSeconds * 1000;
    if (this.warnSeconds > 0 && readyMs > startMs) say("get-ready", readyMs);
    if (at.pourOutSeconds > 0 && outMs > startMs) say("pour-out", outMs);
    say("next-bath", endMs);
    return cues;
  }

  private pourOutSeconds(step: number): number {
    return this.plan.steps[step]?.pourOutSeconds ?? 0;
  }
}

/** After the first agitation the tank stands until a full cycle is over. */
function isTakenUpAgain(agitation: Agitation, second: number): boolean {
  if (agitation.manner === "continuous" || agitation.burstSeconds === 0 || agitation.cycleSeconds === 0)
    return false;
  return second > 0 && second % agitation.cycleSeconds === 0 && second >= agitation.initialSeconds;
}

function isNear(aMs: number, bMs: number): boolean {
  return Math.abs(aMs - bMs) <= SLACK_MS;
}

function isPast({ dueMs }: Promised, nowMs: number): boolean {
  return dueMs < nowMs;
}
