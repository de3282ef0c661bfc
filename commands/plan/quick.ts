import type { Plan } from "../../store/shapes/plan.ts";
import type { Habits } from "../../store/shapes/school.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import { makePlan } from "./process.ts";
import { bareRequest, type PlanRequest } from "./request.ts";

export interface DevelopTime {
  readonly seconds: number;
  /** Null at a row of the sheet. */
  readonly spread: Plan["spread"];
}

/** What else than film, bath and temperature decides how long it is. */
export type TimeAsked = Partial<
  Pick<PlanRequest, "exposureIndex" | "agitation" | "roomTenthsC" | "filmsDone">
>;

/** The developing time a plan would say; null where the sheet has none there. */
export function developTime(
  sheet: Sheet,
  tenthsC: number,
  asked: TimeAsked,
  habits: Habits,
): DevelopTime | null {
  const request = { ...bareRequest(sheet, tenthsC), ...asked };
  const made = makePlan({ ...request, agitation: request.agitation ?? habits.agitation }, habits);
  const seconds = made.ok ? made.value.steps.find(({ kind }) => kind === "develop")?.seconds : null;
  return made.ok && seconds != null ? { seconds, spread: made.value.spread } : null;
}
