import { fail, ok, type Result } from "../result.ts";
import { coolingPath, doseBetween, secondsForDose, type Path } from "./drift.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import { temperatureRange, timeFor, type TimeFault } from "../sheet/time.ts";

/* What a temperature measured in mid-step changes: the dose given so far stays, the rest goes on at the new rate. */

/** A temperature measured in the developer, seconds after the tank was full. */
export interface Reading {
  readonly atSeconds: number;
  readonly tenthsC: number;
}

export type RetemperFault = TimeFault | { readonly code: "ERR_NO_DEVELOPER" };

/**
 * Whole seconds of development left when the developer is found at `tenthsC`, `elapsedSeconds` after its start.
 * `earlier` are readings already acted on. 0 when the dose is given. Refuses temperatures beyond the sheet's range.
 */
export function secondsLeftAt(
  plan: Plan,
  elapsedSeconds: number,
  tenthsC: number,
  earlier: readonly Reading[] = [],
): Result<number, RetemperFault> {
  const full = fullDose(plan);
  if (!full.ok) return full;
  const { dose, secondsAt } = full.value;
  const range = temperatureRange(plan.sheet);
  if (tenthsC < range.min) return fail({ code: "ERR_TOO_COLD", tenthsC, nearestTenthsC: range.min });
  if (tenthsC > range.max) return fail({ code: "ERR_TOO_HOT", tenthsC, nearestTenthsC: range.max });
  const done = doseByLegs(plan, earlier, elapsedSeconds, secondsAt);
  return ok(Math.round(secondsForDose(secondsAt, pathFrom(plan, tenthsC), dose - done)));
}

/** The dose the plan means to give, in the sheet's own measure. */
export function fullDose(
  plan: Plan,
): Result<{ dose: number; developSeconds: number; secondsAt: (celsius: number) => number }, RetemperFault> {
  const developSeconds = plan.steps.find(({ kind }) => kind === "develop")?.seconds;
  if (!developSeconds) return fail({ code: "ERR_NO_DEVELOPER" });
  const time = timeFor(plan.sheet, plan.tenthsC, plan.exposureIndex);
  if (!time.ok) return time;
  const { secondsAt } = time.value;
  const dose = doseBetween(secondsAt, pathFrom(plan, plan.tenthsC), 0, developSeconds);
  return ok({ dose, developSeconds, secondsAt });
}

/** How the tank goes on from a temperature: towards the room where the plan allows for it, else unchanged. */
export function pathFrom(plan: Pick<Plan, "drift">, tenthsC: number): Path {
  if (!plan.drift) return () => tenthsC / 10;
  return coolingPath(tenthsC / 10, plan.drift.roomTenthsC / 10, plan.drift.timeConstantSeconds);
}

/** The dose given so far: by the plan's own path, taken up anew at each reading that was acted on. */
function doseByLegs(
  plan: Plan,
  readings: readonly Reading[],
  elapsedSeconds: number,
  secondsAt: (celsius: number) => number,
): number {
  const legs = [{ atSeconds: 0, tenthsC: plan.tenthsC }, ...readings]
    .filter(({ atSeconds }) => atSeconds <= elapsedSeconds)
    .toSorted((a, b) => a.atSeconds - b.atSeconds);
  return legs.reduce((dose, { atSeconds, tenthsC }, at) => {
    const until = legs[at + 1]?.atSeconds ?? elapsedSeconds;
    return dose + doseBetween(secondsAt, pathFrom(plan, tenthsC), 0, until - atSeconds);
  }, 0);
}
