import type { Action } from "../define.ts";
import type { CueKind } from "../../store/shapes/cue.ts";
import type { CallWords, RunView } from "./run-view.ts";

/* What a run asks of its person at a given moment, read from its view. Pure, and small enough for a page. */

/** From this lateness on a call says that it is late: less, nobody at a sink can tell. */
export const LATE_FROM_MS = 2000;

/** From this age on a word to many says how old it is: less, it is read as said just now, and is. */
export const OLD_FROM_MS = 10_000;

/** A call with the time it is good for; instants in ms since the epoch. */
export interface TimedCall {
  readonly kind: CueKind;
  readonly at: number;
  /** From then on it is of no use; Infinity: until it is answered. */
  readonly until: number;
  /** Its lateness counts from here. */
  readonly lateFrom: number;
  readonly words: CallWords;
}

type Timed = Pick<RunView, "calls" | "sayings" | "knownAt" | "resting" | "speed">;

/** Every call of the view, in order. */
export function timedCalls({ calls, sayings, knownAt, speed }: Timed): TimedCall[] {
  const endsAt = calls.find(({ kind }) => kind === "next-bath")?.at;
  return calls.flatMap(({ kind, at }, index): TimedCall[] => {
    const words = sayings[kind];
    if (!words) return [];
    const until = untilOf(kind, at, words.seconds, calls[index + 1]?.at ?? Infinity, speed);
    // Whoever was not there at the end of a bath is as late as that end, however often they were called since; and
    // a call that a correction has put into the past is nobody's lateness.
    const meantAt = kind === "nudge" ? (endsAt ?? at) : at;
    return [{ kind, at, until, lateFrom: Math.max(meantAt, knownAt), words }];
  });
}

/** Of a trial, whose bursts are over before anybody has read them, a call stays until the next one. */
function untilOf(kind: CueKind, at: number, seconds: number | null, nextAt: number, speed = 1): number {
  if (kind === "next-bath" || kind === "nudge") return Infinity;
  return seconds === null || speed > 1 ? nextAt : at + seconds * 1000;
}

/** What there is to do now: what a call asks for while it lasts, or what holds between calls. */
export function doingNow(view: Timed, nowMs: number): string {
  const open = timedCalls(view).filter(
    ({ at, until, kind }) => at <= nowMs && nowMs < until && kind !== "get-ready" && kind !== "nudge",
  );
  const call = open[open.length - 1];
  if (!call) return view.resting;
  const { does, how } = call.words;
  if (call.kind === "pour-out") return `${does} ${how}`;
  return call.kind === "next-bath" ? how : does;
}

/** The call that comes next by the plan; reminders are none. */
export function comingCall(view: Timed, nowMs: number): TimedCall | undefined {
  return timedCalls(view).find(({ at, kind }) => at > nowMs && kind !== "nudge");
}

/** So long before pour-out the next bath's button is an invitation to press it too early. */
export const EARLY_SECONDS = 20;

/** The buttons at this moment: the next bath's is the main one only once its time is near. */
export function actionsAt(
  { phase, calls, actions, speed = 1 }: Pick<RunView, "phase" | "calls" | "actions" | "speed">,
  nowMs: number,
): readonly Action[] {
  const dueAt = calls.find(({ kind }) => kind === "pour-out" || kind === "next-bath")?.at ?? nowMs;
  return phase === "running" && nowMs < dueAt - (EARLY_SECONDS * 1000) / speed ? actions.map(calm) : actions;
}

/** What is asked for right now stays the main one: that the image is seen. */
const calm = (action: Action): Action =>
  action.line.startsWith("run seen") ? action : withoutWeight(action);

export function withoutWeight(action: Action): Action {
  return action.weight === "main" ? { ...action, weight: "plain" } : action;
}
