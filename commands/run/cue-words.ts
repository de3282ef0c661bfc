import type { Action } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { cardMove, doingOf, leavingOf, stripCalls, titleOf } from "../sheet/step-words.ts";
import type { Step } from "../../store/shapes/plan.ts";
import type { Cue, CueKind } from "../../store/shapes/cue.ts";
import { nextAction } from "./reply.ts";
import { titled } from "./where.ts";
import { type Run, secondsIn, stepAt } from "../../store/shapes/run.ts";
import { instant } from "../speech/wording.ts";
import type { Said } from "./settle.ts";
import { de } from "./words/cue.de.ts";
import { en } from "./words/cue.en.ts";
import type { CallParts } from "./run-view.ts";

/* What a run says unasked: the action first, then how, a word on lateness where there is any. */

const words = inEach({ en, de });

export interface CueMessage {
  /** Without a word on lateness: that is added as it is said. */
  readonly text: string;
  readonly actions: readonly Action[];
}

/** `run` is as it was when the cue fell due; `nowMs` is when it is decided. */
export function cueMessage(
  run: Run,
  { cue, merged = [] }: Pick<Said, "cue"> & Partial<Said>,
  nowMs: number,
): CueMessage {
  const step = stepAt(run, cue.step);
  if (!step) return { text: "", actions: [] };
  const { does, how, first = "" } = partsOf(run, cue);
  // Whoever was not told to pour out has the old bath in the tank.
  const before = merged.some(({ kind }) => kind === "pour-out") ? first : "";
  // A cue may be decided ahead of its moment; what it says is true at the moment itself.
  const position = isAgitation(cue.kind) ? positionOf(run, Math.max(nowMs, cue.dueAtMs)) : "";
  // The action first: who has wet hands reads no further.
  return { text: inOneLine(`**${does}**`, before, how, position), actions: actionsFor(run, cue) };
}

const isAgitation = (kind: CueKind): boolean => kind === "agitate" || kind === "agitate-first";

/** The button a call comes with: the one that begins the next bath. */
export function actionsFor(run: Run, { kind, step }: Pick<Cue, "kind" | "step">): Action[] {
  if (kind === "nudge") return nextAction(run, step);
  return kind === "next-bath" || kind === "pour-out" ? nextAction(run, step + 1) : [];
}

export interface Lateness {
  readonly lateMs: number;
  readonly dueAtMs: number;
  /** Calls before it that nobody heard. */
  readonly missed: number;
  /** null: no call of a run's schedule. */
  readonly kind: CueKind | null;
  /** Until it is of no use any more; null: it always is. */
  readonly leftMs: number | null;
}

/** Said after a call that is heard late: how late, and what that means for the doing. Nobody is to work by a wrong moment. */
export function lateWords({ lateMs, dueAtMs, missed, kind, leftMs }: Lateness): string {
  const { late, missedBefore, doItNow, leftOf } = words();
  const asks = {
    "agitate-first": doItNow,
    agitate: doItNow,
    "get-ready": leftMs === null ? "" : leftOf(Math.max(0, Math.ceil(leftMs / 1000))),
    "pour-out": doItNow,
    "next-bath": doItNow,
    // It asks whether it is done.
    nudge: "",
  } satisfies Record<CueKind, string>;
  return inOneLine(
    late(Math.round(lateMs / 1000), dueAtMs),
    missed > 0 ? missedBefore(missed) : "",
    kind === null ? "" : asks[kind],
  );
}

/** Said in front of a word that reaches its reader long after it was said; as old as it is when it is read. */
export const agoWords = (saidAtMs: number): string =>
  `**${instant(saidAtMs, "relative")}** (${instant(saidAtMs, "time")}):`;

function positionOf(run: Run, nowMs: number): string {
  const { phase } = run;
  if (phase.kind !== "running") return "";
  const gone = Math.max(0, Math.round(secondsIn(run, nowMs - phase.startedAtMs)));
  return words().position(gone, Math.round(secondsIn(run, phase.endsAtMs - phase.startedAtMs)));
}

const inOneLine = (...sentences: readonly string[]): string => sentences.filter(Boolean).join(" ");

/** The parts of a cue's call; all cues of one kind and step have the same. */
export function partsOf(run: Run, { kind, step: index }: Pick<Cue, "kind" | "step">): CallParts {
  const step = stepAt(run, index);
  if (!step) return { does: "", how: "", spoken: "", seconds: null };
  const parts = PARTS[kind](run, step, index);
  return { spoken: parts.does, seconds: null, ...parts };
}

type Parts = Pick<CallParts, "does" | "how"> & Partial<CallParts>;

/** What comes first where the call to pour out was not heard. */
const stillIn = (step: Step): Pick<Parts, "first"> =>
  step.pourOutSeconds > 0 ? { first: words().stillIn(leavingOf(step)) } : {};

function agitate({ agitation, medium }: Step, seconds: number): Parts {
  if (!agitation) return { does: words().agitateSome, how: "" };
  const isPrint = medium === "paper";
  if (agitation.manner === "continuous" && isPrint)
    return { does: words().tray.keepRocking, how: words().tray.untilLift, seconds };
  if (isPrint)
    return {
      does: words().tray.rock(seconds),
      how: "",
      spoken: words().tray.spokenRock(seconds),
      seconds,
    };
  if (agitation.manner === "continuous")
    return { does: words().keepMoving, how: words().untilPourOut, seconds };
  return {
    does: words().agitate(seconds),
    how: words().move(agitation),
    spoken: words().spokenAgitate(seconds),
    seconds,
  };
}

/** Of a test strip: what the card does meanwhile is told with it, since the next call comes with the lamp off. */
function lampOffIn(seconds: number, next: Step | undefined): Parts {
  const how = next?.kind === "expose" ? stripCalls().thenMove(cardMove(next)) : "";
  return { does: stripCalls().lampOffIn(seconds), how };
}

const PARTS = {
  "agitate-first": (_run, step) => agitate(step, step.agitation?.initialSeconds ?? 0),
  agitate: (_run, step) => agitate(step, step.agitation?.burstSeconds ?? 0),
  "get-ready": (run, step, index) => {
    const next = stepAt(run, index + 1);
    if (step.kind === "expose") return lampOffIn(run.warnSeconds, next);
    const { toEnd, getReady, spokenToEnd } = words();
    const { toPourOut, spokenToPourOut } = step.medium === "paper" ? words().tray : words();
    const how = next ? getReady(titled(next)) : "";
    const left = run.warnSeconds;
    return step.pourOutSeconds > 0
      ? { does: toPourOut(left), how, spoken: spokenToPourOut(left) }
      : { does: toEnd(left, titled(step)), how, spoken: spokenToEnd(left, titled(step)) };
  },
  "pour-out": (run, step, index) => {
    const next = stepAt(run, index + 1);
    const { pourOut, spokenPourOut } = step.medium === "paper" ? words().tray : words();
    return {
      does: pourOut(step.pourOutSeconds),
      how: inOneLine(leavingOf(step), next ? words().andThen(titled(next)) : ""),
      spoken: spokenPourOut,
      seconds: step.pourOutSeconds,
    };
  },
  "next-bath": (run, step, index) => {
    const next = stepAt(run, index + 1);
    if (!next) return { does: words().done(titleOf(step)), how: leavingOf(step) };
    if (step.kind === "expose") return { does: leavingOf(step), how: doingOf(next) };
    const leaving = step.pourOutSeconds > 0 ? "" : leavingOf(step);
    return {
      does: words().nextBath(titled(next)),
      how: inOneLine(leaving, doingOf(next)),
      ...stillIn(step),
    };
  },
  nudge: (run, step, index) => {
    const before = stepAt(run, index - 1);
    const works = before ? words().goesOn(titled(before)) : "";
    const asks =
      step.medium === "paper"
        ? words().tray.isItIn(titled(step), step.kind === "dry")
        : words().isItIn(titled(step), step.kind === "wash");
    return { does: asks, how: inOneLine(works, doingOf(step)), ...(before ? stillIn(before) : {}) };
  },
} as const satisfies Record<CueKind, (run: Run, step: Step, index: number) => Parts>;

/** Said in front of a call on time, of those before it that nobody heard. */
export function missedWords(missed: number): string {
  return words().missed(missed);
}

/** Said where a message leaves before its moment, since many are due together. */
export function deliveredEarly(dueAtMs: number): string {
  return words().early(dueAtMs);
}
