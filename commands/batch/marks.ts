import { isForPaper, type Batch } from "../../store/shapes/batch.ts";
import { countingLines, type LedgerLine } from "../../store/shapes/ledger.ts";
import { stateOf, type BatchState } from "./state.ts";

/* The marks at which a batch warns, each once, until a top-up (or a test that shows it good again) re-arms it. */

export const MARKS = [
  "tired",
  "last-films",
  "exhausted",
  "out-of-date-soon",
  "out-of-date",
  "test-overdue",
  "replenish-due",
] as const;
export type Mark = (typeof MARKS)[number];

export interface Reached {
  readonly mark: Mark;
  /** A mark is said once for each arming. */
  readonly arm: number;
}

/** Marks of one track stand for those before them: what is exhausted is not also called tired. */
const TRACKS: readonly (readonly Mark[])[] = [
  ["tired", "last-films", "exhausted"],
  ["out-of-date-soon", "out-of-date"],
  ["test-overdue"],
  ["replenish-due"],
];

// House rules, no source: they only decide when to speak, never whether a bath may be used.
export const TIRED_PERCENT = 75;
const TIRED_CLEARING_TIMES = 1.5;
export const LAST_ROLLS = 2;
/** Of 8x10 in: prints go through by the handful. */
export const LAST_PRINTS = 5;
export const SOON_MS = 2 * 24 * 3_600_000;
/** Thinned to this share of its strength by what film carried in. */
const TIRED_STRENGTH = 0.8;
const TEST_EVERY_MS = 14 * 24 * 3_600_000;
const TEST_EVERY_SHARE = 0.25;

/** Every mark this batch is past at `nowMs`. */
export function reachedMarks(batch: Batch, lines: readonly LedgerLine[], nowMs: number): Reached[] {
  const state = stateOf(batch, lines, nowMs);
  if (state.standing === "discarded") return [];
  const arm = armOf(batch, lines, nowMs);
  const marks: Reached[] = usageMarks(batch, state).map((mark) => ({ mark, arm }));
  const leftMs = state.expiresAtMs === null ? Infinity : state.expiresAtMs - nowMs;
  if (leftMs <= SOON_MS && hasLongLife(batch)) marks.push({ mark: "out-of-date-soon", arm: state.topUps });
  if (leftMs <= 0) marks.push({ mark: "out-of-date", arm: state.topUps });
  if (state.standing === "ready" && isTestOverdue(batch, state, nowMs))
    marks.push({ mark: "test-overdue", arm: state.tests });
  if (state.standing === "ready" && (state.replenishMl ?? 0) > 0)
    marks.push({ mark: "replenish-due", arm: state.topUps });
  return marks;
}

function usageMarks({ kind }: Batch, state: BatchState): Mark[] {
  const { usedPercent, leftRolls, clearing, predictedSeconds } = state;
  const isSlow =
    clearing !== null &&
    predictedSeconds !== null &&
    predictedSeconds >= TIRED_CLEARING_TIMES * clearing.freshSeconds;
  const marks: Mark[] = [];
  if ((usedPercent !== null && usedPercent >= TIRED_PERCENT) || isSlow || state.strength <= TIRED_STRENGTH)
    marks.push("tired");
  if (leftRolls !== null && leftRolls <= (isForPaper(kind) ? LAST_PRINTS : LAST_ROLLS))
    marks.push("last-films");
  if (state.exhaustedBy !== null || leftRolls === 0) marks.push("exhausted");
  return marks;
}

/** What lives for days only is always about to go out of date: that is no news. */
function hasLongLife(batch: Batch): boolean {
  return (batch.fullHours ?? Infinity) * 3_600_000 > 2 * SOON_MS;
}

function isTestOverdue(batch: Batch, state: BatchState, nowMs: number): boolean {
  if (batch.kind !== "fixer") return false;
  if (state.testedAtMs === null || state.testedLoadSqIn === null) return state.usedSqIn > 0;
  const share = state.capacitySqIn ? (state.loadSqIn - state.testedLoadSqIn) / state.capacitySqIn : 0;
  const isUsedSince = state.loadSqIn > state.testedLoadSqIn;
  return isUsedSince && (share >= TEST_EVERY_SHARE || nowMs - state.testedAtMs >= TEST_EVERY_MS);
}

/** Counts what re-arms the marks of use: top-ups, and tests or corrections that brought an exhausted bath back. */
function armOf(batch: Batch, lines: readonly LedgerLine[], nowMs: number): number {
  const counting = new Set(countingLines(lines).map(({ id }) => id));
  return lines.filter((line, index) => {
    if (!counting.has(line.id)) return false;
    if (line.body.kind === "topped") return true;
    if (line.body.kind !== "tested" && line.body.kind !== "corrected") return false;
    const before = stateOf(batch, lines.slice(0, index), nowMs);
    return (
      before.exhaustedBy !== null && stateOf(batch, lines.slice(0, index + 1), nowMs).exhaustedBy === null
    );
  }).length;
}

export interface News {
  /** To be said. */
  readonly say: readonly Reached[];
  /** To be remembered as said: what is said, and what it stands for. */
  readonly remember: readonly Reached[];
}

/** What of the reached marks is new. Of each track only the furthest is said, and only if it was not said before. */
export function newsOf(reached: readonly Reached[], isKnown: (mark: Reached) => boolean): News {
  const fresh = reached.filter((mark) => !isKnown(mark));
  const say = TRACKS.flatMap((track) => {
    const furthest = track.flatMap((mark) => reached.filter((each) => each.mark === mark)).at(-1);
    return furthest && fresh.includes(furthest) ? [furthest] : [];
  });
  return { say, remember: fresh };
}
