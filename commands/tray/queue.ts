import type { StoredPlan } from "../../store/plans.ts";
import { isTrayPlan } from "../../store/shapes/tray.ts";
import type { TrayLine } from "../../store/shapes/tray-line.ts";
import type { TrayRun } from "../../store/shapes/run.ts";
import { makeNumber } from "../speech/wording.ts";
import { atLine, firstStart, hasGivenWay, washedAtMs } from "./places.ts";

/* Who is in the trays of a line and who waits for them, in order. Pure. */

export interface InLine {
  /** `R5`; of a plan that no run was started from yet `P7`. */
  readonly label: string;
  readonly personId: string;
  /** When there is room for these prints; null: never, a tray is too small. */
  readonly fromMs: number | null;
  /** Washed only when the class is over. */
  readonly isAfterBell: boolean;
}

export interface LineQueue {
  readonly inTrays: readonly TrayRun[];
  readonly waiting: readonly InLine[];
}

/** Runs that wait come first, the longest waiting before the others; then plans, as they were made. */
export function queueAt(
  line: TrayLine,
  runs: readonly TrayRun[],
  planned: readonly StoredPlan[],
  nowMs: number,
  bellAtMs: number | null,
): LineQueue {
  const { inTrays, waiting } = atLine(runs, line.number);
  const begun = waiting.map((run) => ({
    plan: run.plan,
    personId: run.personId,
    label: makeNumber("run", run.number),
    isAhead: !hasGivenWay(run, nowMs),
  }));
  const plans = planned
    .toSorted((a, b) => a.madeAt - b.madeAt || a.number - b.number)
    .flatMap(({ plan, personId, number }) =>
      isTrayPlan(plan) && plan.line === line.number
        ? [{ plan, personId, label: makeNumber("plan", number), isAhead: true }]
        : [],
    );
  const all = [...begun, ...plans];
  return {
    inTrays,
    waiting: all.map(({ plan, personId, label }, at): InLine => {
      const ahead = all
        .slice(0, at)
        .filter(({ isAhead }) => isAhead)
        .map((each) => each.plan);
      const fromMs = firstStart(line, plan, inTrays, ahead, nowMs);
      const isAfterBell = bellAtMs !== null && fromMs !== null && washedAtMs(plan, fromMs) > bellAtMs;
      return { label, personId, fromMs, isAfterBell };
    }),
  };
}
