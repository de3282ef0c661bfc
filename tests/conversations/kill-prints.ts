import { join } from "node:path";
import { keepRun } from "../../commands/run/keep.ts";
import { washOthersAnew } from "../../commands/run/rewash.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import type { Step } from "../../store/shapes/plan.ts";
import { isTrayRun, type Run, type TrayRun } from "../../store/shapes/run.ts";
import type { TrayPlan } from "../../store/shapes/tray.ts";
import { movedEach } from "../support/developing.ts";
import { aStep } from "../support/make.ts";
import { aTrayPlan, aTrayRun } from "../support/trays.ts";
import type { Film } from "./kill-films.ts";
import type { OwedCall } from "./kill-heard.ts";

/*
 * Prints in trays under kills: one kind is called while it is in a bath and lifted out of it to drain, the other lies in the
 * wash, which begins again for all when a wet print comes in.
 */

/** A print has only just gone in: nobody is told to get ready at once. */
export const PRINT_QUIET_SECONDS = 10;
/** A wash is not begun again so shortly before it would have called. */
const SPARE_MS = 3000;

const onPaper = (step: Partial<Step>): Step => aStep({ medium: "paper", ...step });
const printsIn = (steps: readonly Step[]): TrayPlan => ({ ...aTrayPlan(), steps: [...steps] });

/** A fixing bath that is moved each `cycleSeconds`, and drained at its end. */
export function aQuickBath(seconds: number, cycleSeconds: number, drainSeconds: number): TrayPlan {
  return printsIn([
    onPaper({ kind: "fix", seconds, agitation: movedEach(cycleSeconds), pourOutSeconds: drainSeconds }),
    onPaper({ kind: "wash", seconds }),
  ]);
}

export const aWash = (seconds: number): TrayPlan =>
  printsIn([
    onPaper({ kind: "wash", seconds, agitation: null, pourOutSeconds: 0 }),
    onPaper({ kind: "dry", seconds: null }),
  ]);

/** Keeps a run that lies in the wash from `atMs` on. */
export function putToWash(stores: OpenedStores, draft: Partial<Run>, now: number, atMs = now): TrayRun {
  const {
    id: _id,
    number: _number,
    ...waiting
  } = aTrayRun({ startedAtMs: now, ...draft } as Partial<TrayRun>);
  const seconds = waiting.plan.steps[0]?.seconds ?? 0;
  const run = {
    ...stores.runs.add(waiting),
    phase: { kind: "running", step: 0, startedAtMs: atMs, endsAtMs: atMs + seconds * 1000 },
    marks: [{ step: 0, plannedSeconds: seconds, startedAtMs: atMs, endedAtMs: null }],
    schedule: 1,
  } as const;
  if (!isTrayRunOf(run)) throw new Error("these are no prints");
  stores.atomically(() => keepRun(stores, run, now));
  return run;
}

const isTrayRunOf = (run: unknown): run is TrayRun => isTrayRun(run as Run);

export interface Washing {
  readonly pouredAt: number;
  readonly seconds: number;
  readonly warnSeconds: number;
  readonly quietSeconds: number;
}

/** Nothing is moved in a wash: a word before its end, and the end. */
export function washCallsOf({ pouredAt, seconds, warnSeconds, quietSeconds }: Washing): OwedCall[] {
  const endsAt = pouredAt + seconds * 1000;
  const readyAt = endsAt - warnSeconds * 1000;
  const isTold = warnSeconds > 0 && readyAt > pouredAt + quietSeconds * 1000;
  return [...(isTold ? [{ kind: "get-ready", dueAt: readyAt }] : []), { kind: "next-bath", dueAt: endsAt }];
}

/**
 * While no process lives, a wet print comes into the wash: each washing print's owner is told so, and its calls move. False
 * where that would be too near to a call of the wash as it was.
 */
export function wetPrintComes(data: string, films: Film[]): boolean {
  const washing = films.filter(({ kind }) => kind === "wash");
  const now = Date.now();
  const soonest = Math.min(...washing.flatMap(({ calls }) => calls.map(({ dueAt }) => dueAt)));
  if (washing.length === 0 || soonest < now + SPARE_MS) return false;
  const stores = openStores(join(data, "sinkside.db"));
  try {
    stores.atomically(() => {
      const first = stores.runs.get(washing[0]?.runId ?? 0);
      if (!first || !isTrayRun(first)) throw new Error("there is no print in the wash");
      const { classId, plan, warnSeconds } = first;
      const personId = "room:wet";
      stores.members.see(classId, { id: personId, name: "Wet hands" }, "student", now);
      const wet = putToWash(stores, { classId, personId, plan, warnSeconds }, now);
      washOthersAnew(stores, wet, now);
      const seconds = plan.steps[0]?.seconds ?? 0;
      const calls = washCallsOf({
        pouredAt: now,
        seconds,
        warnSeconds,
        quietSeconds: PRINT_QUIET_SECONDS,
      });
      for (const film of washing) film.calls = [{ kind: "wash-anew", dueAt: now }, ...calls];
      films.push({ kind: "wash", runId: wet.id, personId, token: "", calls });
    });
  } finally {
    stores.close();
  }
  return true;
}
