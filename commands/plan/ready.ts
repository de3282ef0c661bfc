import { inEach, speaking } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { formatDilution, formatSeconds, formatTenthsC, makeNumber } from "../speech/wording.ts";
import type { Stores } from "../../store/index.ts";
import type { StoredPlan } from "../../store/plans.ts";
import { PLAN_LIVES_MS } from "../../store/shapes/plan.ts";
import { isLampPlan, isStripPlan, isTrayPlan, kindOf } from "../../store/shapes/tray.ts";
import { de } from "./words/ready.de.ts";
import { en } from "./words/ready.en.ts";

/* The plan that waits to be started, for its owner's panel. */

/** A plan of one's own that no run was started from yet. */
export interface ReadyPlan {
  /** `P1`. */
  readonly plan: string;
  /** The developing time: `9:00`. */
  readonly time: string;
  /** `House MQ 1+1`; empty where it goes through no bath by a temperature. */
  readonly bath: string;
  /** `20 °C`. */
  readonly temperature: string;
  readonly film: string;
  readonly tank: number | null;
  /** What starts it. */
  readonly line: string;
}

const words = inEach({ en, de });

/**
 * This person's newest plan of today, of a film, of prints, of a lamp's test and of a strip each, in any class evening that runs past
 * midnight too, where no run of its kind is newer: prints that go along the trays leave the film waiting for its tank. The
 * newest first.
 */
export function waitingPlansOf(
  { plans, runs }: Pick<Stores, "plans" | "runs">,
  classId: number,
  personId: string,
  nowMs: number,
): StoredPlan[] {
  const newest = plans.newestOfEach(classId, personId, nowMs - PLAN_LIVES_MS);
  const oldest = newest.at(-1);
  if (!oldest) return [];
  const begun = runs.newestOfEach(classId, personId, oldest.madeAt);
  return newest.filter(
    ({ plan, madeAt }) =>
      !begun.some((run) => kindOf(run.plan) === kindOf(plan) && run.startedAtMs >= madeAt),
  );
}

/** The newest of them. */
export const waitingPlanOf = (...asked: Parameters<typeof waitingPlansOf>): StoredPlan | undefined =>
  waitingPlansOf(...asked)[0];

/** The same in their language, for their panel. */
export function readyPlanOf(
  stores: Pick<Stores, "plans" | "runs" | "members">,
  classId: number,
  personId: string,
  nowMs: number,
): ReadyPlan | null {
  const waiting = waitingPlanOf(stores, classId, personId, nowMs);
  if (!waiting) return null;
  return speaking(stores.members.languageOf(classId, personId), () => worded(waiting));
}

function worded({ number, plan }: StoredPlan): ReadyPlan {
  if (isLampPlan(plan))
    return {
      plan: makeNumber("plan", number),
      time: formatSeconds(60 * Math.max(...plan.minutes)),
      bath: "",
      temperature: "",
      film: words().lampTest(plan.lamp),
      tank: null,
      line: makeLine("run start", { plan: number }),
    };
  if (isStripPlan(plan))
    return {
      plan: makeNumber("plan", number),
      time: formatSeconds(plan.steps.reduce((sum, { seconds }) => sum + (seconds ?? 0), 0)),
      bath: "",
      temperature: "",
      film: words().strip(plan.strip.bars),
      tank: null,
      line: makeLine("run start", { plan: number }),
    };
  const { developer, dilution, film } = isTrayPlan(plan)
    ? { ...plan, film: words().prints(plan.prints) }
    : plan.sheet;
  return {
    plan: makeNumber("plan", number),
    time: formatSeconds(plan.steps.find(({ kind }) => kind === "develop")?.seconds ?? 0),
    bath: `${developer} ${formatDilution(dilution)}`,
    temperature: formatTenthsC(plan.tenthsC),
    film,
    tank: plan.tank,
    line: makeLine("run start", { plan: number }),
  };
}
