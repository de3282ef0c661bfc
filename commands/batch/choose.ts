import type { Step } from "../../store/shapes/plan.ts";
import { isFilmPlan, isTrayPlan, type AnyPlan, type TrayPlan } from "../../store/shapes/tray.ts";
import { fail, ok, type Result } from "../result.ts";
import { minusMl } from "../speech/tenths.ts";
import { foldName } from "../sheet/names.ts";
import type { Dilution } from "../../store/shapes/sheet.ts";
import { areaOf, printsSqIn, SQ_IN_PER_ROLL } from "./area.ts";
import { densityOf, loadOf } from "./bath.ts";
import { clearingAt } from "./clearing.ts";
import { isFixer, kindOfStep, type Batch, type BatchKind } from "../../store/shapes/batch.ts";
import type { Place } from "../../store/shapes/ledger.ts";
import type { BatchState, Standing } from "./state.ts";

/* Which batch a bath of a plan is to come from. */

export interface Need {
  readonly kind: BatchKind;
  /** Only a developer must be this product, at this strength or as stock for it. */
  readonly product: string | null;
  readonly dilution: Dilution | null;
  /** Working strength, ml. */
  readonly ml: number;
  readonly concentrateMl: number | null;
  readonly areaSqIn: number;
  readonly isTabular: boolean;
  readonly films: number;
  /** Which of two fixing baths; null: the only one. */
  readonly place: Place | null;
}

export interface Candidate {
  readonly batch: Batch;
  readonly state: BatchState;
  /** Promised to runs that are going and have not poured it in yet. */
  readonly reservedMl: number;
  /** In plain film's sq in. */
  readonly reservedSqIn: number;
  /** It stands as first or second of two fixing baths; null: in no pair. */
  readonly place: Place | null;
  /** This person may use it worn out as it is. */
  readonly isAllowed: boolean;
}

export interface Choice {
  readonly batch: Batch;
  /** Expected at its turn, the runs before it included; null: not tested. */
  readonly clearingSeconds: number | null;
  /** What that time was when the bath was fresh; null: not known. */
  readonly freshSeconds: number | null;
  /** In the bottle now, ml. */
  readonly volumeMl: number;
  /** Films each litre of a developer used again has done before. */
  readonly filmsDone: number;
  /** It is worn out, and an aide or the teacher has allowed it. */
  readonly isOverride: boolean;
}

export type ChoiceFault =
  | {
      readonly code: "ERR_NO_BATCH_READY";
      readonly kind: BatchKind;
      readonly product: string | null;
      readonly place: Place | null;
    }
  | { readonly code: "ERR_UNKNOWN_BATCH"; readonly typed: string }
  | {
      readonly code: "ERR_WRONG_BATCH";
      readonly batch: Batch;
      readonly need: Need;
      readonly instead: number | null;
    }
  | {
      readonly code: "ERR_BATCH_WORN";
      readonly batch: Batch;
      readonly standing: Exclude<Standing, "ready">;
      readonly instead: number | null;
    }
  | {
      readonly code: "ERR_BATCH_ROOM";
      readonly batch: Batch;
      /** What is left when everything promised is taken off, plain film's sq in, or ml where it is used once. */
      readonly left: number;
      readonly needed: number;
      readonly instead: number | null;
    };

/** What a step takes; undefined where it is no bath that comes from a batch. */
export function needOf(plan: AnyPlan, step: Step, isTabular: boolean): Need | undefined {
  const kind = kindOfStep(step);
  if (!kind) return undefined;
  if (isTrayPlan(plan)) return needOfPrints(plan, step, kind, isTabular);
  if (!isFilmPlan(plan)) return undefined;
  const isDeveloper = kind === "developer";
  return {
    kind,
    product: isDeveloper ? plan.sheet.developer : null,
    dilution: isDeveloper ? plan.sheet.dilution : null,
    ml: step.ml ?? plan.volumeMl,
    concentrateMl: step.concentrateMl,
    areaSqIn: areaOf([
      { format: plan.format, films: plan.rolls, frames: plan.frames, frame: plan.frame ?? null },
    ]),
    isTabular,
    films: plan.rolls,
    place: placeOf(step),
  };
}

/** A tray keeps its bath: what passes is counted in paper. */
function needOfPrints(plan: TrayPlan, step: Step, kind: BatchKind, isHeavy: boolean): Need {
  const isDeveloper = kind === "paper-developer";
  return {
    kind,
    product: isDeveloper ? plan.developer : null,
    dilution: isDeveloper ? plan.dilution : null,
    ml: 0,
    concentrateMl: null,
    areaSqIn: printsSqIn(plan.size, plan.prints),
    isTabular: isHeavy,
    films: plan.prints,
    place: placeOf(step),
  };
}

/** First or second of two fixing baths; null: the only one, or no fixing bath. */
export function placeOf({ kind, ordinal }: Pick<Step, "kind" | "ordinal">): Place | null {
  return kind === "fix" && (ordinal === 1 || ordinal === 2) ? ordinal : null;
}

interface Measured {
  readonly ml: number | null;
  readonly concentrateMl: number | null;
}

/** Water that is mixed in the tank's measure with what a bottle of stock gives; 0: it is poured as it is. null: no bottle. */
export function waterWith(batch: Batch | null, { ml, concentrateMl }: Measured): number {
  if (ml === null || concentrateMl === null || (batch && batch.dilution.waterParts > 0)) return 0;
  return minusMl(ml, concentrateMl);
}

/** Whether a bath goes back into its bottle: never one that was mixed in the tank from stock, for it is no stock any more. */
export function goesBack(batch: Batch, measured: Measured): boolean {
  return batch.usage === "again" && waterWith(batch, measured) === 0;
}

/** ml that leave the bottle for good: of stock only the concentrate's part, nothing where it is poured back. */
export function takenMl(batch: Batch, need: Pick<Need, "ml" | "concentrateMl">): number {
  if (goesBack(batch, need)) return 0;
  return batch.dilution.waterParts === 0 ? (need.concentrateMl ?? need.ml) : need.ml;
}

/**
 * The batch for a need: the one asked for, or the fitting one that is to be used up first. null where none is on the
 * shelf and none need be: a developer can be diluted straight from its bottle. `isKept`: the class has mixed this kind
 * before; a fixer that was counted once is counted always.
 */
export function chooseBatch(
  need: Need,
  candidates: readonly Candidate[],
  named: number | null,
  isKept: boolean,
): Result<Choice | null, ChoiceFault> {
  const fitting = candidates.filter((each) => isFit(each, need)).sort(byTurn(need));
  const best = fitting.find((each) => each.state.standing === "ready" && hasRoom(each, need));
  if (named !== null) return judgeNamed(need, candidates, named, best?.batch.number ?? null);
  if (best) return ok(choiceOf(best, need));
  const allowed = fitting.find((each) => each.isAllowed && each.state.standing !== "discarded");
  if (allowed) return ok(choiceOf(allowed, need));
  const onShelf = fitting.filter(({ state }) => state.standing !== "discarded");
  if (onShelf.length === 0 && !(isKept && isFixer(need.kind))) return ok(null);
  const tight = onShelf.find(({ state }) => state.standing === "ready");
  if (tight)
    return fail({ code: "ERR_BATCH_ROOM", batch: tight.batch, ...roomOf(tight, need), instead: null });
  return fail({ code: "ERR_NO_BATCH_READY", kind: need.kind, product: need.product, place: need.place });
}

function judgeNamed(
  need: Need,
  candidates: readonly Candidate[],
  named: number,
  best: number | null,
): Result<Choice, ChoiceFault> {
  const found = candidates.find(({ batch }) => batch.number === named);
  if (!found) return fail({ code: "ERR_UNKNOWN_BATCH", typed: `B${named}` });
  const { batch, state } = found;
  const instead = best === named ? null : best;
  if (!isFit(found, need)) return fail({ code: "ERR_WRONG_BATCH", batch, need, instead });
  if (state.standing === "discarded" || (state.standing !== "ready" && !found.isAllowed))
    return fail({ code: "ERR_BATCH_WORN", batch, standing: state.standing, instead });
  if (!found.isAllowed && !hasRoom(found, need))
    return fail({ code: "ERR_BATCH_ROOM", batch, ...roomOf(found, need), instead });
  return ok(choiceOf(found, need));
}

export function isFit({ batch, place }: Pick<Candidate, "batch" | "place">, need: Need): boolean {
  if (batch.kind !== need.kind || place !== need.place) return false;
  if (need.product !== null && foldName(batch.product) !== foldName(need.product)) return false;
  return need.dilution === null || batch.dilution.waterParts === 0 || isSame(batch.dilution, need.dilution);
}

function isSame(a: Dilution, b: Dilution): boolean {
  return a.waterParts * b.concentrateParts === b.waterParts * a.concentrateParts;
}

/** The strength asked for before stock; then what goes out of date first, then what was mixed first. */
function byTurn(need: Need) {
  const rank = ({ batch }: Candidate): number =>
    need.dilution === null || isSame(batch.dilution, need.dilution) ? 0 : 1;
  return (a: Candidate, b: Candidate): number =>
    rank(a) - rank(b) ||
    (a.state.expiresAtMs ?? Infinity) - (b.state.expiresAtMs ?? Infinity) ||
    a.batch.number - b.batch.number;
}

function roomOf({ batch, state, ...reserved }: Candidate, need: Need): { left: number; needed: number } {
  if (!goesBack(batch, need))
    return { left: state.volumeMl - reserved.reservedMl, needed: takenMl(batch, need) };
  const left = state.leftSqIn === null ? Infinity : state.leftSqIn - reserved.reservedSqIn;
  return { left, needed: loadOf(batch, need.areaSqIn, need.isTabular) };
}

function hasRoom(candidate: Candidate, need: Need): boolean {
  const { left, needed } = roomOf(candidate, need);
  return needed <= left;
}

function choiceOf({ batch, state, reservedSqIn }: Candidate, need: Need): Choice {
  const ahead = densityOf({ ...state, loadSqIn: state.loadSqIn + reservedSqIn });
  return {
    batch,
    clearingSeconds: state.clearing ? Math.ceil(clearingAt(state.clearing, ahead)) : null,
    freshSeconds: state.clearing ? Math.round(state.clearing.freshSeconds) : null,
    filmsDone: goesBack(batch, need) && batch.kind === "developer" ? Math.floor(ahead / SQ_IN_PER_ROLL) : 0,
    volumeMl: state.volumeMl,
    isOverride: state.standing !== "ready",
  };
}
