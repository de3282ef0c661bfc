import { stateOf } from "../batch/state.ts";
import type { Context } from "../define.ts";
import { parseNumber } from "../speech/wording.ts";
import type { Roll } from "../../store/shapes/roll.ts";
import type { BathFacts } from "./fault/evidence.ts";

/** How the bottle of a roll's bath stood just before this film went in; null: none of the class's is known. */
export function bathBefore(
  { stores, class: { id } }: Pick<Context, "stores" | "class">,
  roll: Roll,
  kind: "developer" | "fixer",
): BathFacts | null {
  const step = roll.body.steps.find((each) => each.kind === (kind === "fixer" ? "fix" : "develop"));
  const atMs = step?.startedAtMs ?? roll.endedAt;
  for (const label of roll.batches.split(" ").filter(Boolean)) {
    const number = parseNumber("batch", label);
    const batch = number === undefined ? undefined : stores.batches.find(id, number);
    if (batch?.kind !== kind) continue;
    const lines = stores.batches.lines(batch.id).filter((line) => line.atMs < atMs);
    const state = stateOf(batch, lines, atMs);
    return { label, standing: state.standing, clearingSeconds: state.predictedSeconds };
  }
  return null;
}
