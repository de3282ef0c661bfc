import { stateOf } from "../../commands/batch/state.ts";
import { BATCH_KINDS, type BatchKind } from "../../store/shapes/batch.ts";
import type { Stores } from "../../store/index.ts";
import type { Log } from "../process/log.ts";
import type { Clock } from "../process/clock.ts";
import { DEMO_KEY } from "./demo.ts";
import { mixForDemo } from "./evening.ts";

/* Whoever looks at the demo class finds it able to develop, whatever those before them have used up. */

/** As many as most of its tanks take. */
const LEAST_ROLLS = 2;

/** Mixes anew, as its invented aide would, what is nearly used up or out of date. Kinds it never had it goes on without. */
export function refillDemo(stores: Stores, clock: Clock, log: Log): void {
  const demo = stores.classes.find(DEMO_KEY);
  if (!demo) return;
  const has = new Set(stores.batches.list(demo.id).map(({ kind }) => kind));
  for (const kind of BATCH_KINDS)
    if (has.has(kind) && isLow(stores, demo.id, kind, clock.now())) mixForDemo(kind, stores, clock, log);
}

function isLow({ batches }: Stores, classId: number, kind: BatchKind, now: number): boolean {
  return !batches
    .standing(classId)
    .filter((batch) => batch.kind === kind)
    .map((batch) => stateOf(batch, batches.lines(batch.id), now))
    .some(({ standing, leftRolls }) => standing === "ready" && (leftRolls ?? LEAST_ROLLS) >= LEAST_ROLLS);
}
