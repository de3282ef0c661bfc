import type { UnderWay } from "../under-way.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { formatMl, formatNumber, formatSeconds, plain } from "../../speech/wording.ts";
import { isFixer, type Batch } from "../../../store/shapes/batch.ts";
import { mayGo } from "../ways.ts";
import {
  clearingWords,
  labelOf,
  leftWords,
  nameOf,
  slowWords,
  standingWord,
  wornWords,
} from "../batch-words.ts";
import { formatRolls } from "../batch-words.ts";
import { EXHAUSTED_TIMES } from "../clearing.ts";
import { fieldsOf } from "../fields.ts";
import type { Destination } from "../../../store/shapes/ledger.ts";
import type { BatchState } from "../state.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

/* What is said to somebody who changed a batch. */

const words = inEach({ en, de });

export const discarded = (batch: Batch): string => words().fault.discarded(labelOf(batch));
export const noReading = (): string => words().fault.noReading;
export const notAFixer = (batch: Batch): string => words().fault.notAFixer(nameOf(batch), batch.kind);
export const notSoMuch = (batch: Batch, leftMl: number): string =>
  words().fault.notSoMuch(labelOf(batch), formatMl(Math.max(0, leftMl)));
export const whereTo = (): string => words().fault.whereTo;
/** `tooMuchMl`: what has to be taken out first. */
export const overflow = (batch: Batch, leftMl: number, tooMuchMl: number): string =>
  words().fault.overflow(
    labelOf(batch),
    formatMl(batch.bottleMl),
    formatMl(leftMl),
    tooMuchMl,
    mayGo(batch.kind, "silver") ? "silver" : "waste",
  );
export const notReplenished = (batch: Batch): string => words().fault.notReplenished(labelOf(batch));
export const correctedOverflow = (batch: Batch, ml: number): string =>
  words().fault.correctedOverflow(labelOf(batch), formatMl(batch.bottleMl), formatMl(ml));
export const nothingToCorrect = (): string => words().fault.nothingToCorrect;
export const belowZeroMl = (batch: Batch, ml: number): string =>
  words().fault.belowZeroMl(labelOf(batch), formatMl(Math.max(0, ml)));
export const belowZeroRolls = (batch: Batch, sqIn: number): string =>
  words().fault.belowZeroRolls(labelOf(batch), formatRolls(sqIn, batch.kind));
export const quarters = (): string => words().fault.quarters;
export const noSuchLine = (batch: Batch, line: number, lines: number): string =>
  words().fault.noSuchLine(labelOf(batch), line, lines);
export const lineStays = (): string => words().fault.lineStays;
export const takenBack = (): string => words().fault.takenBack;
export const notWorn = (batch: Batch): string => words().fault.notWorn(labelOf(batch));
export const unknownPerson = (name: string): string => words().fault.unknownPerson(plain(name));

function reply(batch: Batch, state: BatchState, lines: readonly string[]): Reply {
  return { text: lines.filter(Boolean).join("\n"), fields: fieldsOf(batch, state) };
}

const summary = (batch: Batch, state: BatchState): string =>
  state.standing === "ready"
    ? words().fit(nameOf(batch), [leftWords(batch, state), clearingWords(state)].filter(Boolean).join(", "))
    : words().unfit(nameOf(batch), standingWord(state.standing), wornWords(batch, state));

export function testedReply(
  batch: Batch,
  before: BatchState,
  after: BatchState,
  { clearing, hasSilver, underWay }: { clearing: number | null; hasSilver: boolean; underWay: UnderWay },
): Reply {
  const { noted, reckoned, exhausted, cleared } = words();
  const silver = hasSilver ? silverVerdict(batch, after) : [];
  if (clearing === null) return reply(batch, after, silver.length > 0 ? silver : [noted(nameOf(batch))]);
  const fresh = after.clearing?.freshSeconds ?? clearing;
  const predicted = before.predictedSeconds === null ? "" : reckoned(formatSeconds(before.predictedSeconds));
  const isOut = clearing >= EXHAUSTED_TIMES * fresh;
  const [label, times] = [labelOf(batch), (count: number): string => formatSeconds(count * clearing)];
  const verdict = isOut
    ? exhausted(label, times(1), formatSeconds(fresh), times(2), times(3))
    : cleared(label, times(1), times(2), times(3), formatSeconds(EXHAUSTED_TIMES * fresh));
  return reply(batch, after, [
    `${verdict}${predicted}`,
    underWay.longer > 0 ? words().longer(underWay.longer) : "",
    underWay.again > 0 ? words().again(underWay.again) : "",
    isOut ? "" : summary(batch, after),
    isOut ? "" : slowWords(clearing),
    ...silver,
  ]);
}

/** What the strip says of a fixer that has a limit. */
function silverVerdict(batch: Batch, { silverMgPerLitre }: BatchState): string[] {
  const cap = batch.silverCapMgPerLitre ?? null;
  if (cap === null || silverMgPerLitre === null) return [];
  const [grams, limit] = [formatNumber(silverMgPerLitre / 1000), formatNumber(cap / 1000)];
  const verdict = silverMgPerLitre >= cap ? words().silverOut : words().silverWithin;
  return [verdict(labelOf(batch), grams, limit), words().silverSources];
}

export function toppedReply(batch: Batch, before: BatchState, after: BatchState): Reply {
  return reply(batch, after, [
    words().topped(labelOf(batch), formatMl(after.volumeMl), formatMl(Math.max(0, before.volumeMl))),
    summary(batch, after),
    isFixer(batch.kind) ? words().testNext : "",
    after.replenishMl ? words().stillToReplenish(formatMl(after.replenishMl)) : "",
    words().noRevival,
  ]);
}

export function discardedReply(
  batch: Batch,
  state: BatchState,
  { ml, to, inTanks }: { ml: number; to: Destination; inTanks: number },
): Reply {
  const { went, gone, stays, cautions, rulesFirst } = words();
  const rest = state.standing === "discarded" ? gone(labelOf(batch)) : stays(formatMl(state.volumeMl));
  return reply(batch, state, [
    `${went[to](formatMl(ml), nameOf(batch))}${rest}`,
    inTanks > 0 ? words().stillInTanks(inTanks) : "",
    cautions[to],
    rulesFirst,
  ]);
}

export function correctedReply(batch: Batch, before: BatchState, after: BatchState): Reply {
  return reply(batch, after, [
    words().corrected,
    words().beforeAndNow(leftWords(batch, before), summary(batch, after)),
  ]);
}

export function allowedReply(batch: Batch, state: BatchState, name: string): Reply {
  return reply(batch, state, [
    words().allowed(plain(name), labelOf(batch), wornWords(batch, state)),
    isFixer(batch.kind) ? words().fixLonger : "",
  ]);
}
