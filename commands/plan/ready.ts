import { speaking } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { formatDilution, formatSeconds, formatTenthsC, makeNumber } from "../speech/wording.ts";
import type { Stores } from "../../store/index.ts";
import type { StoredPlan } from "../../store/plans.ts";

/* The plan that waits to be started, for its owner's panel. */

/** A plan of one's own that no run was started from yet. */
export interface ReadyPlan {
  /** `P1`. */
  readonly plan: string;
  /** The developing time: `9:00`. */
  readonly time: string;
  /** `House MQ 1+1`. */
  readonly bath: string;
  /** `20 °C`. */
  readonly temperature: string;
  readonly film: string;
  readonly tank: number | null;
  /** What starts it. */
  readonly line: string;
}

/** An older plan is no invitation any more: the water has another temperature by then. */
const STILL_READY_MS = 12 * 3600_000;

/** This person's newest plan in their language, where no run of theirs is newer and it was made today; null otherwise. */
export function readyPlanOf(
  { plans, runs, members }: Pick<Stores, "plans" | "runs" | "members">,
  classId: number,
  personId: string,
  nowMs: number,
): ReadyPlan | null {
  const newest = plans.latest(classId, personId);
  if (!newest || newest.madeAt < nowMs - STILL_READY_MS) return null;
  const run = runs.latest(classId, personId);
  if (run && run.startedAtMs >= newest.madeAt) return null;
  return speaking(members.languageOf(classId, personId), () => worded(newest));
}

function worded({ number, plan: { sheet, steps, tenthsC, tank } }: StoredPlan): ReadyPlan {
  return {
    plan: makeNumber("plan", number),
    time: formatSeconds(steps.find(({ kind }) => kind === "develop")?.seconds ?? 0),
    bath: `${sheet.developer} ${formatDilution(sheet.dilution)}`,
    temperature: formatTenthsC(tenthsC),
    film: sheet.film,
    tank,
    line: makeLine("run start", { plan: number }),
  };
}
