import { ML_PER_FILM } from "../plan/volume.ts";
import { rollsIn, SQ_IN_PER_ROLL } from "./area.ts";
import { afterCarry, bathOf, densityOf, hasDoubled, predictedSeconds, type Bath } from "./bath.ts";
import type { Batch } from "../../store/shapes/batch.ts";
import type { Carry, LedgerLine } from "../../store/shapes/ledger.ts";

/* What a batch is good for at an instant, worked out from its ledger. */

const HOUR_MS = 3_600_000;
/** Sums of shares end a hair beside the whole number they mean. */
const HAIR = 1e-6;

export const STANDINGS = ["ready", "exhausted", "out-of-date", "discarded"] as const;
export type Standing = (typeof STANDINGS)[number];

export interface BatchState extends Bath {
  readonly standing: Standing;
  /** What used it up, where it is exhausted. */
  readonly exhaustedBy: "capacity" | "volume" | "silver" | "test" | "prediction" | null;
  /** Film it can take in all as it stands, plain film's sq in; null: no limit is known, or it is used once. */
  readonly capacitySqIn: number | null;
  /** Plain film it can still take, sq in. */
  readonly leftSqIn: number | null;
  /** Rolls of plain film left (of 135-36 or 120), by area or by ml; null: no limit is known. */
  readonly leftRolls: number | null;
  /** How far it is used, 0 to 100 and beyond; null: no limit is known. */
  readonly usedPercent: number | null;
  /** Replenisher that the film since the last of it asks for, ml; null: the bath is not replenished. */
  readonly replenishMl: number | null;
  /** ml one film took on average; before the first, what a 135 tank takes. */
  readonly mlPerFilm: number;
  /** Films (80 sq in) each litre has done, whole. */
  readonly filmsPerLitre: number;
  readonly predictedSeconds: number | null;
  readonly expiresAtMs: number | null;
  readonly isPartFull: boolean;
}

export function stateOf(batch: Batch, lines: readonly LedgerLine[], nowMs: number): BatchState {
  const bath = bathOf(batch, lines);
  const left = leftOf(batch, bath);
  const expiresAtMs = expiryOf(batch, bath);
  const exhaustedBy = exhaustedByOf(batch, bath, left.leftRolls);
  const standing =
    bath.discardedAtMs !== null
      ? "discarded"
      : exhaustedBy !== null
        ? "exhausted"
        : expiresAtMs !== null && nowMs >= expiresAtMs
          ? "out-of-date"
          : "ready";
  return {
    ...bath,
    ...left,
    replenishMl: replenishOf(batch, bath),
    standing,
    exhaustedBy,
    predictedSeconds: predictedSeconds(bath),
    filmsPerLitre: Math.floor(densityOf(bath) / SQ_IN_PER_ROLL + HAIR),
    expiresAtMs,
    isPartFull: bath.partFullSinceMs !== null,
  };
}

type Left = Pick<BatchState, "capacitySqIn" | "leftSqIn" | "leftRolls" | "usedPercent" | "mlPerFilm">;

function leftOf(batch: Batch, bath: Bath): Left {
  const mlPerFilm = bath.films > 0 && bath.usedMl > 0 ? bath.usedMl / bath.films : ML_PER_FILM["135"];
  if (batch.usage === "once") {
    const whole = bath.volumeMl + bath.usedMl;
    return {
      capacitySqIn: null,
      leftSqIn: null,
      leftRolls: Math.max(0, Math.floor(bath.volumeMl / mlPerFilm + HAIR)),
      usedPercent: whole > 0 ? (bath.usedMl * 100) / whole : 100,
      mlPerFilm,
    };
  }
  const { capacitySqInPerLitre } = batch;
  if (capacitySqInPerLitre === null)
    return { capacitySqIn: null, leftSqIn: null, leftRolls: null, usedPercent: null, mlPerFilm };
  const capacitySqIn = capacityOf(capacitySqInPerLitre, bath);
  const leftSqIn = Math.floor(capacitySqIn - bath.loadSqIn + HAIR);
  return {
    capacitySqIn,
    leftSqIn,
    leftRolls: rollsAhead(batch, capacitySqInPerLitre, bath) ?? rollsIn(leftSqIn),
    usedPercent: capacitySqIn > 0 ? (bath.loadSqIn * 100) / capacitySqIn : 100,
    mlPerFilm,
  };
}

/** A thinned bath takes as much less film as it has lost of its strength. */
function capacityOf(
  sqInPerLitre: number,
  { volumeMl, strength }: Pick<Bath, "volumeMl" | "strength">,
): number {
  return (sqInPerLitre * strength * Math.max(0, volumeMl)) / 1000;
}

/** As many rolls of plain film as could pass one after the other; null: nobody has said that film carries anything over. */
function rollsAhead(batch: Batch, sqInPerLitre: number, bath: Bath): number | null {
  const carry = carryAhead(batch, bath);
  if (carry === null) return null;
  let ahead: Bath = bath;
  let rolls = 0;
  while (ahead.loadSqIn + SQ_IN_PER_ROLL <= capacityOf(sqInPerLitre, ahead) + HAIR) {
    ahead = afterCarry(batch, { ...ahead, loadSqIn: ahead.loadSqIn + SQ_IN_PER_ROLL }, carry);
    rolls += 1;
  }
  return rolls;
}

/** Of the next roll: as those so far did, before the first as the class had it when the bath was mixed. */
function carryAhead({ kind, carryMlPerRoll }: Batch, bath: Bath): Carry | null {
  const { carriedInMl, carriedOutMl, usedSqIn } = bath;
  // Of what comes in nothing is known but that it was thinner: taken for water, the careful way.
  const water = { inStrength: 0, loadSqIn: 0 };
  if (usedSqIn > 0 && carriedInMl + carriedOutMl > 0) {
    const perRoll = SQ_IN_PER_ROLL / usedSqIn;
    return { ...water, inMl: carriedInMl * perRoll, outMl: carriedOutMl * perRoll };
  }
  if (!carryMlPerRoll || usedSqIn > 0) return null;
  return { ...water, inMl: kind === "developer" ? 0 : carryMlPerRoll, outMl: carryMlPerRoll };
}

function replenishOf({ replenishMlPerRoll: mlPerRoll }: Batch, { loadSqIn }: Bath): number | null {
  return mlPerRoll ? Math.round((loadSqIn / SQ_IN_PER_ROLL) * mlPerRoll) : null;
}

/** A bath poured back is used up when not one more roll fits; one used once, when nothing is left. */
function exhaustedByOf(batch: Batch, bath: Bath, leftRolls: number | null): BatchState["exhaustedBy"] {
  if (bath.volumeMl <= 0) return "volume";
  if (batch.usage === "again" && leftRolls === 0) return "capacity";
  if (isOverSilver(batch, bath)) return "silver";
  if (!hasDoubled(bath)) return null;
  return bath.testedLoadSqIn === bath.loadSqIn ? "test" : "prediction";
}

/** By strip, as last tested: more silver than this bath may carry. */
function isOverSilver({ silverCapMgPerLitre: cap }: Batch, { silverMgPerLitre }: Bath): boolean {
  return cap != null && silverMgPerLitre !== null && silverMgPerLitre >= cap;
}

function expiryOf(batch: Batch, bath: Bath): number | null {
  const ends: number[] = [];
  if (batch.fullHours !== null) ends.push(batch.mixedAtMs + batch.fullHours * HOUR_MS);
  if (batch.partHours !== null && bath.partFullSinceMs !== null)
    ends.push(bath.partFullSinceMs + batch.partHours * HOUR_MS);
  return ends.length > 0 ? Math.min(...ends) : null;
}
