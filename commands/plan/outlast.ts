import type { Run } from "../../store/shapes/run.ts";
import { type Staged, type Stages, stagesLeft, stagesOf } from "./stages.ts";

/* Whether a run begun now is done by the bell, and if not, what of it can be left for tomorrow. */

export type OutlastVerdict =
  /** Cut and sleeved by the bell. */
  | "fits"
  /** Dry by the bell: only cutting is left. */
  | "cut-later"
  /** Hung up by the bell: it dries overnight. */
  | "dry-later"
  /** Fixed by the bell, but not washed: it may lie in water. */
  | "wash-later"
  /** Not even fixed: a film can't be left in the developer or the fixer. */
  | "not-fixed";

export interface Outlast {
  readonly verdict: OutlastVerdict;
  readonly bellAtMs: number;
  readonly fixedAtMs: number;
  readonly hungAtMs: number;
  readonly doneAtMs: number;
  /** The latest pour-in after which the film still hangs by the bell. */
  readonly latestAtMs: number;
}

export const outlast = (plan: Staged, pourInAtMs: number, bellAtMs: number): Outlast =>
  outlastFrom(stagesOf(plan), pourInAtMs, bellAtMs);

/** The same for what is left of a run. */
export const outlastLeft = (run: Run, nowMs: number, bellAtMs: number): Outlast =>
  outlastFrom(stagesLeft(run, nowMs), nowMs, bellAtMs);

function outlastFrom(
  { sinkSeconds, washSeconds, drySeconds, cutSeconds }: Stages,
  fromMs: number,
  bellAtMs: number,
): Outlast {
  const fixedAtMs = fromMs + sinkSeconds * 1000;
  const hungAtMs = fixedAtMs + washSeconds * 1000;
  const dryAtMs = hungAtMs + drySeconds * 1000;
  const doneAtMs = dryAtMs + cutSeconds * 1000;
  const verdict =
    doneAtMs <= bellAtMs
      ? "fits"
      : dryAtMs <= bellAtMs
        ? "cut-later"
        : hungAtMs <= bellAtMs
          ? "dry-later"
          : fixedAtMs <= bellAtMs
            ? "wash-later"
            : "not-fixed";
  const latestAtMs = bellAtMs - (sinkSeconds + washSeconds) * 1000;
  return { verdict, bellAtMs, fixedAtMs, hungAtMs, doneAtMs, latestAtMs };
}
