import type { Batch } from "../../store/shapes/batch.ts";
import { silverIn } from "../batch/silver.ts";
import type { BatchState } from "../batch/state.ts";

/* How much silver a fixer may carry for prints that last: far less than one that still fixes. */

/** A single bath ends at 0.5 g/l, the first of two at 2 g/l: a print maker's page. */
export const LASTING_SILVER_MG_PER_LITRE = { one: 500, firstOfTwo: 2000 } as const;

export interface SilverFact {
  readonly label: string;
  /** By strip, or between these by the prints that went through; mg in a litre. */
  readonly lowMg: number;
  readonly highMg: number;
  readonly isMeasured: boolean;
}

export function silverOf(batch: Batch, state: BatchState): Omit<SilverFact, "label"> {
  if (state.volumeMl <= 0) return { lowMg: 0, highMg: 0, isMeasured: false };
  const { lowMg, highMg, measuredMl } = silverIn(batch, state, state.volumeMl);
  const perLitre = (mg: number): number => Math.round((mg * 1000) / state.volumeMl);
  return { lowMg: perLitre(lowMg), highMg: perLitre(highMg), isMeasured: measuredMl > 0 };
}

/** What this bath may carry, by its place; of two the second is as clean as a single one. */
export function silverLimit(place: number, baths: number): number {
  const { one, firstOfTwo } = LASTING_SILVER_MG_PER_LITRE;
  return baths === 2 && place === 0 ? firstOfTwo : one;
}

export type SilverVerdict = "fit" | "unknown" | "over";

/** Over: measured, or even by the lowest reckoning. Unknown: it may be over, and nobody has tested. */
export function judgeSilver(fact: SilverFact, place: number, baths: number): SilverVerdict {
  const limit = silverLimit(place, baths);
  if (fact.lowMg >= limit) return "over";
  return fact.highMg >= limit ? "unknown" : "fit";
}
