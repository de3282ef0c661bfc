import { ok, type Result } from "../result.ts";
import { doseBetween } from "./drift.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import { fullDose, pathFrom, type Reading, type RetemperFault } from "./retemper.ts";

/**
 * The dose really given, as a per cent of the plan's: 100 is the plan, 88 is "12 % less than planned". `seconds` run from
 * the tank full to the next bath in; the readings were taken along the way, seconds after the start. Between two
 * temperatures the tank is taken to have changed evenly, after the last one as the plan allows for.
 */
export function dosePercent(
  plan: Plan,
  seconds: number,
  readings: readonly Reading[] = [],
): Result<number, RetemperFault> {
  const full = fullDose(plan);
  if (!full.ok) return full;
  const given = doseAlong(plan, seconds, readings, full.value.secondsAt);
  return ok(Math.round((given / full.value.dose) * 1000) / 10);
}

function doseAlong(
  plan: Plan,
  seconds: number,
  readings: readonly Reading[],
  secondsAt: (celsius: number) => number,
): number {
  const marks = readings
    .filter(({ atSeconds }) => atSeconds >= 0 && atSeconds <= seconds)
    .toSorted((a, b) => a.atSeconds - b.atSeconds);
  let [from, tenthsC, dose] = [0, plan.tenthsC, 0];
  for (const mark of marks) {
    const [start, startTenths] = [from, tenthsC];
    const rise = (mark.tenthsC - startTenths) / Math.max(1, mark.atSeconds - start);
    dose += doseBetween(secondsAt, (at) => (startTenths + rise * (at - start)) / 10, start, mark.atSeconds);
    [from, tenthsC] = [mark.atSeconds, mark.tenthsC];
  }
  const path = pathFrom(plan, tenthsC);
  const last = from;
  return dose + doseBetween(secondsAt, (at) => path(at - last), last, seconds);
}
