import { inEach } from "../speech/language.ts";
import {
  formatDilution,
  formatMl,
  formatNumber,
  formatSeconds,
  instant,
  makeNumber,
  plain,
} from "../speech/wording.ts";

import { USUAL_CLEARING_SECONDS } from "../plan/fix.ts";
import { isForPaper, type Batch, type BatchKind } from "../../store/shapes/batch.ts";
import type { BatchState, Standing } from "./state.ts";
import { de } from "./words/batch.de.ts";
import { en } from "./words/batch.en.ts";
import { SQ_IN_PER_ROLL } from "./area.ts";

/* The words for a batch, shared by everything that speaks of one. */

const words = inEach({ en, de });

/** `fixer`, in the middle of a sentence. */
export function kindWord(kind: BatchKind): string {
  return words().kind[kind];
}

export function standingWord(standing: Standing): string {
  return words().standing[standing];
}

export function labelOf({ number }: Pick<Batch, "number">): string {
  return makeNumber("batch", number);
}

/** `Pier Fix 1+4`. */
export function bathName(batch: Pick<Batch, "product" | "dilution">): string {
  return `${plain(batch.product)} ${formatDilution(batch.dilution)}`;
}

/** `B3, Pier Fix 1+4`. */
export function nameOf(batch: Pick<Batch, "number" | "product" | "dilution">): string {
  return `${labelOf(batch)}, ${bathName(batch)}`;
}

/** `12 rolls left`, `1.5 l left`; for a bath without a limit only its volume. */
export function leftWords(batch: Batch, { volumeMl, leftRolls }: BatchState): string {
  const ml = formatMl(Math.max(0, volumeMl));
  if (batch.usage === "once") return words().mlLeft(ml);
  return leftRolls === null ? ml : rollsLeftWords(leftRolls, batch.kind);
}

export function rollsLeftWords(rolls: number, kind: BatchKind): string {
  return words().rollsLeft(rolls, isForPaper(kind));
}

/** `clears in about 0:52 (fresh 0:45)`; empty where nobody has tested. */
export function clearingWords({ clearing, predictedSeconds, testedLoadSqIn, loadSqIn }: BatchState): string {
  if (clearing === null || predictedSeconds === null) return "";
  const isFresh = testedLoadSqIn === 0 && loadSqIn === 0;
  return words().clears(
    formatSeconds(predictedSeconds),
    testedLoadSqIn !== loadSqIn,
    isFresh ? null : formatSeconds(clearing.freshSeconds),
  );
}

/** `at 88 % of its strength`; empty for a bath that nothing has thinned. */
export function strengthWords({ strength }: Pick<BatchState, "strength">): string {
  const percent = Math.round(strength * 100);
  return percent >= 100 ? "" : words().strength(percent);
}

/** A word on a clearing time that no fresh fixer has; empty for a usual one. */
export function slowWords(seconds: number): string {
  return seconds > USUAL_CLEARING_SECONDS ? words().slow(formatSeconds(seconds)) : "";
}

/** Why a bath must not be used, as a clause: `it has done its 40 rolls`. */
export function wornWords({ kind }: Pick<Batch, "kind">, state: BatchState): string {
  const { worn } = words();
  const predicted = formatSeconds(state.predictedSeconds ?? 0);
  if (state.standing === "discarded") return worn.discarded;
  switch (state.exhaustedBy) {
    case "capacity":
      return worn.capacity(formatRolls(state.usedSqIn, kind));
    case "volume":
      return worn.volume;
    case "silver":
      return worn.silver(formatNumber((state.silverMgPerLitre ?? 0) / 1000));
    case "test":
      return worn.test(predicted, formatSeconds(state.clearing?.freshSeconds ?? 0));
    case "prediction":
      return worn.prediction(predicted);
    default:
      return state.expiresAtMs === null ? worn.unknown : worn.kept(instant(state.expiresAtMs, "date"));
  }
}

/** One line for a list or a completion: `B3, Pier Fix 1+4: 12 rolls left`. */
export function stateLine(batch: Batch, state: BatchState): string {
  const parts = [
    state.standing === "ready" ? "" : standingWord(state.standing).toUpperCase(),
    leftWords(batch, state),
    strengthWords(state),
    clearingWords(state),
  ];
  return `${nameOf(batch)}: ${parts.filter(Boolean).join(", ")}`;
}

/** A sentence may begin with a clause of these. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function unknownBatch(typed: string): string {
  return words().unknownBatch(plain(typed));
}

/** `12 rolls`, `2.25 rolls`; of a bath for paper `12 prints of 8x10 in`. */
export function formatRolls(sqIn: number, kind: BatchKind): string {
  const rolls = Math.round((sqIn / SQ_IN_PER_ROLL) * 100) / 100;
  return words().rolls(rolls, isForPaper(kind));
}
