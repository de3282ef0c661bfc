import { countOf, formatDilution, formatMl, formatSeconds, instant, makeNumber, plain } from "../wording.ts";
import { formatRolls } from "./area.ts";
import type { Batch, BatchKind } from "./batch.ts";
import type { BatchState, Standing } from "./state.ts";

/* The words for a batch, shared by everything that speaks of one. */

export const KIND_WORDS = {
  developer: "developer",
  stop: "stop bath",
  fixer: "fixer",
  "wash-aid": "wash aid",
  "wetting-agent": "wetting agent",
} as const satisfies Record<BatchKind, string>;

export const STANDING_WORDS = {
  ready: "ready",
  exhausted: "exhausted",
  "out-of-date": "out of date",
  discarded: "discarded",
} as const satisfies Record<Standing, string>;

export function labelOf({ number }: Pick<Batch, "number">): string {
  return makeNumber("batch", number);
}

/** `B3, Pier Fix 1+4`. */
export function nameOf(batch: Pick<Batch, "number" | "product" | "dilution">): string {
  return `${labelOf(batch)}, ${plain(batch.product)} ${formatDilution(batch.dilution)}`;
}

/** `12 rolls left`, `1.5 l left`; for a bath without a limit only its volume. */
export function leftWords(batch: Batch, state: BatchState): string {
  if (batch.usage === "once") return `${formatMl(Math.max(0, state.volumeMl))} left`;
  return state.leftRolls === null ? formatMl(Math.max(0, state.volumeMl)) : `${rollsLeft(state)} left`;
}

/** Never below none: a bath that has done more than its capacity has none left. */
function rollsLeft({ leftSqIn, leftRolls }: BatchState): string {
  if (leftSqIn === null || leftRolls === null) return "";
  return countOf(leftRolls, "roll");
}

/** `clears in about 0:52 (fresh 0:45)`; empty where nobody has tested. */
export function clearingWords({ clearing, predictedSeconds, testedLoadSqIn, loadSqIn }: BatchState): string {
  if (clearing === null || predictedSeconds === null) return "";
  const about = testedLoadSqIn === loadSqIn ? "" : "about ";
  const fresh =
    testedLoadSqIn === 0 && loadSqIn === 0 ? "" : ` (fresh ${formatSeconds(clearing.freshSeconds)})`;
  return `clears in ${about}${formatSeconds(predictedSeconds)}${fresh}`;
}

/** Why a bath must not be used, as a clause: `it has done its 40 rolls`. */
export function wornWords(state: BatchState): string {
  if (state.standing === "discarded") return "it was thrown away";
  switch (state.exhaustedBy) {
    case "capacity":
      return `it has done ${formatRolls(state.usedSqIn)}, and not one more fits`;
    case "volume":
      return "nothing is left in it";
    case "test":
      return `it clears in ${formatSeconds(state.predictedSeconds ?? 0)}, twice its fresh time of ${formatSeconds(state.clearing?.freshSeconds ?? 0)} or more`;
    case "prediction":
      return `by its ledger it now clears in about ${formatSeconds(state.predictedSeconds ?? 0)}, twice its fresh time; a test can show otherwise`;
    default:
      return state.expiresAtMs === null
        ? "it is worn out"
        : `it kept until ${instant(state.expiresAtMs, "date")}`;
  }
}

/** One line for a list or a completion: `B3, Pier Fix 1+4: 12 rolls left`. */
export function stateLine(batch: Batch, state: BatchState): string {
  const parts = [
    state.standing === "ready" ? "" : STANDING_WORDS[state.standing].toUpperCase(),
    leftWords(batch, state),
    clearingWords(state),
  ];
  return `${nameOf(batch)}: ${parts.filter(Boolean).join(", ")}`;
}
