import type { Habits } from "../../store/shapes/school.ts";
import { BATCH_KINDS, type BatchKind } from "../../store/shapes/batch.ts";

/** The baths a class needs by its habits. */
export function kindsKept(habits: Pick<Habits, "stop" | "washAid">): BatchKind[] {
  return BATCH_KINDS.filter(
    (kind) => (kind !== "stop" || habits.stop === "acid") && (kind !== "wash-aid" || habits.washAid),
  );
}
