import { candidatesFor, hasTabularFilm } from "./candidates.ts";
import { UserError, type Context } from "../define.ts";
import type { Plan, StepKind } from "../../store/shapes/plan.ts";
import type { AnyPlan } from "../../store/shapes/tray.ts";
import { parseNumber } from "../speech/wording.ts";
import { labelOf } from "./batch-words.ts";
import { chooseBatch, needOf, type Choice, type Need } from "./choose.ts";
import { changeBatch } from "./rebatch.ts";
import { refusalWords } from "./refusal-words.ts";

/* The bottles of a plan: chosen when it is made, looked at again when it starts. */

export interface Baths {
  readonly batches: Partial<Record<StepKind, string>>;
  /** Of the fixer, as expected at its turn; null: not tested. */
  readonly clearingSeconds: number | null;
  /** The same when it was fresh; null: not known. */
  readonly freshClearingSeconds: number | null;
  readonly filmsDone: number;
  /** Steps whose bath goes back into its bottle. */
  readonly pouredBack: readonly StepKind[];
}

/** The plan's steps know whether their bath is poured back. */
export function withBottles(plan: Plan, { pouredBack }: Baths): Plan {
  const steps = plan.steps.map((step) =>
    pouredBack.includes(step.kind) ? { ...step, isPouredBack: true } : step,
  );
  return { ...plan, steps };
}

/**
 * The batch for each bath of a plan: the one named, or the right open one.
 * @throws UserError where a bath is worn out or too little is left, with what to use instead.
 */
export function bathsFor(context: Context, plan: Plan, named: Baths["batches"]): Baths {
  const { stores, person, now } = context;
  const isTabular = hasTabularFilm(stores, context.class.id, plan);
  const candidates = candidatesFor(stores, context.class.id, person.id, now);
  const kept = new Set(stores.batches.list(context.class.id).map(({ kind }) => kind));
  const batches: Partial<Record<StepKind, string>> = {};
  let clearingSeconds: number | null = null;
  let freshClearingSeconds: number | null = null;
  let filmsDone = 0;
  const pouredBack: StepKind[] = [];
  for (const step of plan.steps) {
    const need = needOf(plan, step, isTabular);
    if (!need) continue;
    const text = named[step.kind];
    const number = text === undefined ? undefined : parseNumber("batch", text);
    if (text !== undefined && !kept.has(need.kind)) {
      // The class keeps no batches of this kind: whatever its bottle is called is good enough.
      batches[step.kind] = text;
      continue;
    }
    if (text !== undefined && number === undefined)
      throw new UserError("ERR_UNKNOWN_BATCH", refusalWords({ code: "ERR_UNKNOWN_BATCH", typed: text }));
    const chosen = chooseBatch(need, candidates, number ?? null, kept.has(need.kind));
    if (!chosen.ok) throw new UserError(chosen.fault.code, refusalWords(chosen.fault));
    if (!chosen.value) continue;
    batches[step.kind] = labelOf(chosen.value.batch);
    if (chosen.value.batch.usage === "again") pouredBack.push(step.kind);
    if (need.kind === "fixer") {
      clearingSeconds = chosen.value.clearingSeconds;
      freshClearingSeconds = chosen.value.freshSeconds;
    }
    if (need.kind === "developer") filmsDone = chosen.value.filmsDone;
  }
  return { batches, clearingSeconds, freshClearingSeconds, filmsDone, pouredBack };
}

/**
 * The plan as it can start now: a bottle that went bad or was promised away since is changed for another that needs no
 * other developing time.
 * @throws UserError where there is none.
 */
export function recheckPlan(context: Context, plan: AnyPlan): AnyPlan {
  const isTabular = hasTabularFilm(context.stores, context.class.id, plan);
  return plan.steps.reduce<AnyPlan>((current, step, index) => {
    const need = step.batch === null ? undefined : needOf(plan, step, isTabular);
    const number = step.batch === null ? undefined : parseNumber("batch", step.batch);
    if (!need || number === undefined) return current;
    return recheckStep(context, current, index, need, number);
  }, plan);
}

function recheckStep(context: Context, plan: AnyPlan, index: number, need: Need, number: number): AnyPlan {
  const { stores, person, now, class: found } = context;
  if (!stores.batches.find(found.id, number)) return plan;
  const candidates = candidatesFor(stores, found.id, person.id, now);
  const same = chooseBatch(need, candidates, number, true);
  if (same.ok) return plan;
  const other = chooseBatch(need, candidates, null, true);
  const choice: Choice | null = other.ok ? other.value : null;
  const changed = choice && changeBatch(plan, index, choice, need.isTabular, found.habits);
  if (!changed) throw new UserError(same.fault.code, refusalWords(same.fault));
  return changed;
}
