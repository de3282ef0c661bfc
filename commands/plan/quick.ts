import type { Habits } from "../../store/shapes/school.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import { makePlan } from "./process.ts";
import { bareRequest } from "./request.ts";

/** The developing time a plan would say, in seconds; null where the sheet has none there. */
export function developSeconds(
  sheet: Sheet,
  tenthsC: number,
  exposureIndex: number | null,
  habits: Habits,
): number | null {
  const request = { ...bareRequest(sheet, tenthsC), exposureIndex, agitation: habits.agitation };
  const made = makePlan(request, habits);
  return made.ok ? (made.value.steps.find(({ kind }) => kind === "develop")?.seconds ?? null) : null;
}
