import type { Habits } from "../../store/shapes/school.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import { makePlan } from "./process.ts";
import { bareRequest, type PlanRequest } from "./request.ts";

/** What else than film, bath and temperature decides how long it is. */
export type TimeAsked = Partial<
  Pick<PlanRequest, "exposureIndex" | "agitation" | "roomTenthsC" | "filmsDone">
>;

/** The developing time a plan would say, in seconds; null where the sheet has none there. */
export function developSeconds(
  sheet: Sheet,
  tenthsC: number,
  asked: TimeAsked,
  habits: Habits,
): number | null {
  const request = { ...bareRequest(sheet, tenthsC), ...asked };
  const made = makePlan({ ...request, agitation: request.agitation ?? habits.agitation }, habits);
  return made.ok ? (made.value.steps.find(({ kind }) => kind === "develop")?.seconds ?? null) : null;
}
