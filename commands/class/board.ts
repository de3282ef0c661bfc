import { cuesOf } from "../run/cues.ts";
import { titleOf } from "../sheet/step-words.ts";
import { isTankless, isTrial, stepAt, type Run } from "../../store/shapes/run.ts";
import { cueWords } from "../run/view.ts";
import { inEach } from "../speech/language.ts";
import { makeNumber } from "../speech/wording.ts";
import { de } from "./words/board.de.ts";
import { en } from "./words/board.en.ts";

/* Every tank now: the rows of the board, for a message and for a page. Pure. */

const words = inEach({ en, de });

/** A bath that acts on is late this long after its time: the first call whether the next one is in. */
const LATE_FROM_SECONDS = 20;

export interface BoardRow {
  readonly run: string;
  readonly tank: number | null;
  /** That it waits for, while another film is in it. */
  readonly waitsForTank: number | null;
  readonly person: string;
  /** `Developer`, `Rinse 2`. */
  readonly step: string;
  /** From 1. */
  readonly stepNumber: number;
  readonly stepCount: number;
  /**
   * `loading`: the first bath is not in yet; `running`: by the clock; `waiting`: for the next bath, which can wait;
   * `late`: for the next bath, while the one before acts on.
   */
  readonly state: "loading" | "running" | "waiting" | "late";
  /** When the running step ends. */
  readonly endsAtMs: number | null;
  /** Since when it waits. */
  readonly sinceMs: number | null;
  readonly lateSeconds: number;
  /** Calls of this run reach nobody. */
  readonly isUnreached: boolean;
  /** The next thing this person is called for. */
  readonly nextCue: { readonly text: string; readonly atMs: number } | null;
}

/** The most urgent first: late ones, then by what ends next, then what can wait. */
export function boardOf(
  runs: readonly Run[],
  members: readonly { readonly personId: string; readonly name: string }[],
  nowMs: number,
  unreached: ReadonlySet<number> = new Set(),
): BoardRow[] {
  const names = new Map(members.map(({ personId, name }) => [personId, name]));
  return runs
    .filter((run) => !isTrial(run))
    .flatMap((run) => rowOf(run, names.get(run.personId) ?? words().somebody, nowMs, unreached.has(run.id)))
    .sort((a, b) => urgency(a) - urgency(b) || keyOf(a) - keyOf(b) || (a.tank ?? 0) - (b.tank ?? 0));
}

function rowOf(run: Run, person: string, nowMs: number, isUnreached: boolean): BoardRow[] {
  const { phase, plan } = run;
  if (phase.kind !== "waiting" && phase.kind !== "running") return [];
  const step = stepAt(run, phase.step);
  if (!step) return [];
  const ahead = cuesOf(run).find(({ dueAtMs, kind }) => dueAtMs > nowMs && kind !== "nudge");
  const shared = {
    run: makeNumber("run", run.number),
    // Whose film is not in it yet has no tank.
    tank: isTankless(run) ? null : plan.tank,
    waitsForTank: isTankless(run) ? plan.tank : null,
    person,
    step: titleOf(step),
    stepNumber: phase.step + 1,
    stepCount: plan.steps.length,
    isUnreached,
    nextCue: ahead ? { text: cueWords(run, ahead), atMs: ahead.dueAtMs } : null,
  };
  if (phase.kind === "running")
    return [{ ...shared, state: "running", endsAtMs: phase.endsAtMs, sinceMs: null, lateSeconds: 0 }];
  const waits = { ...shared, endsAtMs: null, sinceMs: phase.sinceMs };
  if (phase.step === 0) return [{ ...waits, state: "loading", lateSeconds: 0 }];
  const over = Math.floor((nowMs - phase.sinceMs) / 1000);
  // Only a developer, a stop or a fixer left in the tank does harm; a film in the wash or the dryer can wait.
  const acts = ["develop", "stop", "fix"].includes(stepAt(run, phase.step - 1)?.kind ?? "");
  const isLate = acts && over >= LATE_FROM_SECONDS;
  return [{ ...waits, state: isLate ? "late" : "waiting", lateSeconds: isLate ? over : 0 }];
}

const ORDER = { late: 0, running: 1, waiting: 2, loading: 3 } as const;

function urgency({ state }: BoardRow): number {
  return ORDER[state];
}

function keyOf({ endsAtMs, sinceMs }: BoardRow): number {
  return endsAtMs ?? sinceMs ?? 0;
}
