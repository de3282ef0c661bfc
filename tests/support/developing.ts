import { keepRun } from "../../commands/run/keep.ts";
import { advance } from "../../commands/run/machine.ts";
import type { Plan, Step } from "../../store/shapes/plan.ts";
import type { Run } from "../../store/shapes/run.ts";
import type { Agitation } from "../../store/shapes/sheet.ts";
import type { OpenedStores } from "../../store/index.ts";
import { aPlan, aRun, aStep } from "./make.ts";

/* Films in the developer, for those who want to see them called. */

/** Moved for a second, at once and each `cycleSeconds`. */
export const movedEach = (cycleSeconds: number): Agitation => ({
  initialSeconds: 1,
  cycleSeconds,
  burstSeconds: 1,
  manner: "inversion",
  taps: 0,
});

/** A plan of one short development, called each `cycleSeconds`, and a rinse. */
export function aQuickPlan(seconds: number, cycleSeconds: number, develop: Partial<Step> = {}): Plan {
  const steps = [
    aStep({ kind: "develop", seconds, agitation: movedEach(cycleSeconds), ...develop }),
    aStep({ kind: "rinse", ordinal: 1 }),
  ];
  return aPlan({ steps });
}

/** Keeps a run whose developer is poured in at `atMs`; `now` is when it is kept. Its person must be known to the class. */
export function pourIn(stores: OpenedStores, run: Partial<Run>, now: number, atMs = now): Run {
  const { id: _id, number: _number, ...draft } = aRun({ startedAtMs: now, ...run });
  const begun = advance(stores.runs.add(draft), { kind: "next", step: 0, sure: false, atMs });
  if (!begun.ok) throw new Error(begun.fault.code);
  stores.atomically(() => keepRun(stores, begun.value, now));
  return begun.value;
}
