import { SQ_IN_PER_ROLL } from "./area.ts";
import { type Bath, bathOf } from "./bath.ts";
import { isForPaper, type Batch } from "../../store/shapes/batch.ts";
import { countingLines, type LedgerLine } from "../../store/shapes/ledger.ts";
import type { Collected } from "../../store/shapes/shelf.ts";

/*
 * How much silver the collected fixer carries. Measured where somebody measured it; else a rule of thumb, and said so.
 */

/**
 * Grams one roll gives to the fixer: from memory, 0.1 to 0.3. Checked against spent fixer as published: 24 rolls in a
 * litre come to 2.4 to 7.2 g/l; Harvard EHS has 3 to 4, printers' guidance 3 to 5, Weill Cornell EHS up to 12.
 */
const MG_PER_ROLL = { low: 100, high: 300 } as const;
/**
 * The same for a print of 8x10 in: from memory, 25 to 75; with 20 in a litre it comes to 0.5 to 1.5 g/l, and 0.5 is where a
 * print maker's page ends a single bath for prints that last.
 */
const MG_PER_PRINT = { low: 25, high: 75 } as const;
const MOST_MG_PER_LITRE = 12_000;

export const NOTHING: Collected = { ml: 0, lowMg: 0, highMg: 0, measuredMl: 0 };

export function addCollected(a: Collected, b: Collected): Collected {
  return {
    ml: a.ml + b.ml,
    lowMg: a.lowMg + b.lowMg,
    highMg: a.highMg + b.highMg,
    measuredMl: a.measuredMl + b.measuredMl,
  };
}

/** What this batch has given to the silver collection: whole discards, parts of it, and what top-ups took out. */
export function collectedFrom(batch: Batch, lines: readonly LedgerLine[]): Collected {
  const counting = countingLines(lines);
  return counting.reduce((sum, { body }, index) => {
    const ml =
      body.kind === "discarded" && body.to === "silver"
        ? body.ml
        : body.kind === "topped" && body.to === "silver"
          ? body.removedMl
          : 0;
    return ml === 0 ? sum : addCollected(sum, silverIn(batch, bathOf(batch, counting.slice(0, index)), ml));
  }, NOTHING);
}

/** Silver in `ml` of a bath. */
export function silverIn({ kind }: Pick<Batch, "kind">, bath: Bath, ml: number): Collected {
  if (bath.silverMgPerLitre !== null) {
    const mg = Math.round((bath.silverMgPerLitre * ml) / 1000);
    return { ml, lowMg: mg, highMg: mg, measuredMl: ml };
  }
  const rolls = bath.volumeMl > 0 ? (bath.heldSqIn / SQ_IN_PER_ROLL) * Math.min(1, ml / bath.volumeMl) : 0;
  const most = (MOST_MG_PER_LITRE * ml) / 1000;
  const mg = (each: number): number => Math.round(Math.min(most, each * rolls));
  const { low, high } = isForPaper(kind) ? MG_PER_PRINT : MG_PER_ROLL;
  return { ml, lowMg: mg(low), highMg: mg(high), measuredMl: 0 };
}
