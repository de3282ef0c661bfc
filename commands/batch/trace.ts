import { SQ_IN_PER_ROLL } from "./area.ts";
import { bathOf, predictedSeconds } from "./bath.ts";
import type { Batch } from "../../store/shapes/batch.ts";
import { countingLines, type LedgerLine } from "../../store/shapes/ledger.ts";
import { stateOf, type BatchState } from "./state.ts";

/* A batch as a picture shows it: its state, and how its clearing time went over the films. */

export interface ClearingPoint {
  readonly rolls: number;
  readonly seconds: number;
  /** Measured, not reckoned. */
  readonly isTest: boolean;
}

export interface Trace {
  readonly batch: Batch;
  readonly state: BatchState;
  readonly clearing: readonly ClearingPoint[];
}

export function traceOf(batch: Batch, lines: readonly LedgerLine[], nowMs: number): Trace {
  const state = stateOf(batch, lines, nowMs);
  if (batch.kind !== "fixer") return { batch, state, clearing: [] };
  const counting = countingLines(lines);
  const clearing = counting.flatMap(({ body }, index): ClearingPoint[] => {
    const bath = bathOf(batch, counting.slice(0, index + 1));
    const seconds = predictedSeconds(bath);
    const isTest = (body.kind === "mixed" || body.kind === "tested") && body.clearingSeconds !== null;
    const isMoved = isTest || body.kind === "used" || body.kind === "topped";
    return seconds === null || !isMoved ? [] : [{ rolls: bath.usedSqIn / SQ_IN_PER_ROLL, seconds, isTest }];
  });
  return { batch, state, clearing };
}
