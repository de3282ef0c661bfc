import { makePlan } from "../plan/process.ts";
import { bareRequest } from "../plan/request.ts";
import { ok, type Result } from "../result.ts";
import type { PlanFault } from "../plan/request.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import type { Habits } from "../../store/shapes/school.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";

/* What a trial goes through: a plan as any other, that takes no tank and nothing from a bottle. */

/** The usual bath; of a sheet's times the nearest to it is tried. */
const USUAL_TENTHS_C = 200;

/** The plan of a sheet at its own time nearest 20 °C. */
export function trialPlanOf(sheet: Sheet, habits: Habits): Result<Plan, PlanFault> {
  const far = ({ tenthsC }: Sheet["points"][number]): number => Math.abs(tenthsC - USUAL_TENTHS_C);
  const [point] = sheet.points.toSorted((a, b) => far(a) - far(b));
  const { tenthsC, exposureIndex } = point ?? { tenthsC: USUAL_TENTHS_C, exposureIndex: sheet.boxSpeed };
  const made = makePlan({ ...bareRequest(sheet, tenthsC), exposureIndex }, habits);
  return made.ok ? ok(bare(made.value)) : made;
}

/** The same without tank and bottles. */
export function bare(plan: Plan): Plan {
  return { ...plan, tank: null, steps: plan.steps.map((step) => ({ ...step, batch: null })) };
}
