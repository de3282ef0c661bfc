import type { Stores } from "../../store/index.ts";
import type { Batch } from "../../store/shapes/batch.ts";
import type { Carry } from "../../store/shapes/ledger.ts";
import { stepAt, type Run } from "../../store/shapes/run.ts";
import { isTrayPlan } from "../../store/shapes/tray.ts";
import { parseNumber } from "../speech/wording.ts";
import { SQ_IN_PER_ROLL } from "./area.ts";
import type { Need } from "./choose.ts";
import { stateOf } from "./state.ts";

/** What film carries from one bath into the next, by its area, to 0.1 ml. */
export function carriedMl(mlPerRoll: number, areaSqIn: number): number {
  return Math.round((mlPerRoll * areaSqIn * 10) / SQ_IN_PER_ROLL) / 10;
}

/**
 * What the film of this step brings into a bath that is poured back, and takes away from it. Only the first bath gets dry
 * film; what comes from a fixing bath is fixer, everything else thins. null: the class has not said how much film carries.
 */
export function carryInto(
  stores: Stores,
  run: Run,
  step: number,
  batch: Batch,
  need: Need,
  now: number,
): Carry | null {
  const mlPerRoll = stores.classes.get(run.classId)?.habits.carryMlPerRoll ?? null;
  // Paper carries otherwise than film, and trays keep their baths: nobody has said how much.
  if (mlPerRoll === null || batch.usage === "once" || isTrayPlan(run.plan)) return null;
  const ml = carriedMl(mlPerRoll, need.areaSqIn);
  const before = stepAt(run, step - 1);
  if (!before) return { inMl: 0, outMl: ml, inStrength: 0, loadSqIn: 0 };
  const number = before.kind === "fix" ? parseNumber("batch", before.batch ?? "") : undefined;
  const fixer = number === undefined ? undefined : stores.batches.find(run.classId, number);
  const state = fixer && batch.kind === "fixer" ? stateOf(fixer, stores.batches.lines(fixer.id), now) : null;
  return {
    inMl: ml,
    outMl: ml,
    inStrength: state?.strength ?? 0,
    loadSqIn: state && state.volumeMl > 0 ? (state.loadSqIn * ml) / state.volumeMl : 0,
  };
}
