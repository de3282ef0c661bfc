import type { Plan } from "../plan/plan.ts";
import { instant } from "../wording.ts";
import { sittingNow } from "./bell.ts";
import type { SchoolClass } from "./habits.ts";
import { outlast, type Outlast, type OutlastVerdict } from "./outlast.ts";

const WORDS = {
  fits: () => "",
  "cut-later": ({ doneAtMs }) =>
    `This run ends at ${instant(doneAtMs, "time")}. The film is dry before that: leave it hanging, cut and sleeve it next time.`,
  "dry-later": ({ hungAtMs }) =>
    `The film hangs at ${instant(hungAtMs, "time")} and will not be dry by then: let it dry overnight, cut and sleeve it next time.`,
  "wash-later": ({ fixedAtMs }) =>
    `The film is out of the fixer at ${instant(fixedAtMs, "time")} but not washed by then. Ask the teacher before you pour: it may lie in clean water for a while, never in the developer or the fixer.`,
  "not-fixed": ({ latestAtMs }) =>
    `**Don't pour in.** The film would still be in the developer or the fixer at the bell. The latest pour-in was ${instant(latestAtMs, "time")}. Leave the film in its tank or its can, in the dark, for next time.`,
} as const satisfies Record<OutlastVerdict, (given: Outlast) => string>;

/** A warning for a run that would outlast the bell; empty where it fits. */
export function outlastWords(given: Outlast): string {
  const words = WORDS[given.verdict](given);
  return words === "" ? "" : `**The bell rings at ${instant(given.bellAtMs, "time")}.** ${words}`;
}

/** The same for a plan that is about to be started; empty outside the class's periods. */
export function bellWarning(
  plan: Pick<Plan, "steps" | "rolls">,
  { habits, zone }: Pick<SchoolClass, "habits" | "zone">,
  nowMs: number,
): string {
  const sitting = sittingNow(habits.periods, zone, nowMs);
  return sitting === null ? "" : outlastWords(outlast(plan, nowMs, sitting.endsAtMs));
}
