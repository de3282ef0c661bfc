import { candidatesFor, hasTabularFilm } from "./candidates.ts";
import { UserError, type Context } from "../define.ts";
import { bathKeyOf, type BathKey, type BathLabels, type ShortBottle } from "../plan/request.ts";
import type { Batch } from "../../store/shapes/batch.ts";
import type { Plan } from "../../store/shapes/plan.ts";
import type { FixPair } from "../../store/shapes/school.ts";
import type { AnyPlan } from "../../store/shapes/tray.ts";
import { makeNumber, parseNumber } from "../speech/wording.ts";
import { SQ_IN_PER_ROLL } from "./area.ts";
import { labelOf } from "./batch-words.ts";
import {
  chooseBatch,
  goesBack,
  needOf,
  waterWith,
  type Choice,
  type ChoiceFault,
  type Need,
} from "./choose.ts";
import { changeBatch } from "./rebatch.ts";
import { refusalWords, takeWords } from "./refusal-words.ts";

/* The bottles of a plan: chosen when it is made, looked at again when it starts. */

export interface Baths {
  readonly batches: BathLabels;
  /** Of the fixer, as expected at its turn; null: not tested. */
  readonly clearingSeconds: number | null;
  /** The same when it was fresh; null: not known. */
  readonly freshClearingSeconds: number | null;
  readonly filmsDone: number;
  /** Bottles poured back that hold less than the tank takes. */
  readonly shortBottles: readonly ShortBottle[];
  /** Baths that go back into their bottles, and the ml of replenisher that film then asks of each; 0: none. */
  readonly pouredBack: ReadonlyMap<BathKey, number>;
  /** null: from no bottle of the ledger. */
  readonly developer: Batch | null;
}

/** The plan's steps know whether their bath is poured back, and the developer what water is mixed with it. */
export function withBottles(plan: Plan, { pouredBack, developer }: Baths): Plan {
  const steps = plan.steps.map((step) => {
    const waterMl = step.kind === "develop" ? waterWith(developer, step) : 0;
    const mixed = waterMl > 0 ? { ...step, waterMl } : step;
    const replenishMl = pouredBack.get(bathKeyOf(step));
    if (replenishMl === undefined) return mixed;
    return { ...mixed, isPouredBack: true, ...(replenishMl > 0 ? { replenishMl } : {}) };
  });
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
  const batches: BathLabels = {};
  let clearingSeconds: number | null = null;
  let freshClearingSeconds: number | null = null;
  let filmsDone = 0;
  let developer: Batch | null = null;
  const shortBottles: ShortBottle[] = [];
  const pouredBack = new Map<BathKey, number>();
  const { fixPairs } = context.class.habits;
  for (const step of plan.steps) {
    const need = needOf(plan, step, isTabular);
    if (!need) continue;
    const key = bathKeyOf(step);
    const text = named[key] ?? partnerOf(fixPairs, key, batches);
    const number = text === undefined ? undefined : parseNumber("batch", text);
    if (text !== undefined && !kept.has(need.kind)) {
      // The class keeps no batches of this kind: whatever its bottle is called is good enough.
      batches[key] = text;
      continue;
    }
    if (text !== undefined && number === undefined)
      throw refused({ code: "ERR_UNKNOWN_BATCH", typed: text }, key, need, candidates);
    const chosen = chooseBatch(need, candidates, number ?? null, kept.has(need.kind));
    if (!chosen.ok) throw refused(chosen.fault, key, need, candidates);
    if (!chosen.value) continue;
    batches[key] = labelOf(chosen.value.batch);
    if (goesBack(chosen.value.batch, need)) {
      pouredBack.set(key, replenishFor(chosen.value.batch, need));
      const ml = Math.max(0, Math.floor(chosen.value.volumeMl));
      const neededMl =
        chosen.value.batch.dilution.waterParts === 0 ? (need.concentrateMl ?? need.ml) : need.ml;
      if (ml < neededMl) shortBottles.push({ label: labelOf(chosen.value.batch), ml });
    }
    if (need.kind === "fixer" && need.place !== 2) {
      clearingSeconds = chosen.value.clearingSeconds;
      freshClearingSeconds = chosen.value.freshSeconds;
    }
    if (need.kind === "developer") ({ filmsDone, batch: developer } = chosen.value);
  }
  return { batches, clearingSeconds, freshClearingSeconds, filmsDone, shortBottles, pouredBack, developer };
}

/** By which option a plan names the bottle of a bath. */
const OPTION_OF: Readonly<Partial<Record<BathKey, string>>> = { develop: "devbatch", fix: "fixbatch" };

/** With a key that takes the bottle which would do, where there is one. */
function refused(
  fault: ChoiceFault,
  key: BathKey,
  need: Need,
  candidates: Parameters<typeof chooseBatch>[1],
): UserError {
  const option = OPTION_OF[key] ?? null;
  const other = chooseBatch(need, candidates, null, true);
  const label = other.ok && other.value ? labelOf(other.value.batch) : null;
  const instead =
    option === null || label === null ? [] : [{ label: takeWords(label), options: { [option]: label } }];
  return new UserError(fault.code, refusalWords(fault), [], { option, instead });
}

/** The second bath is the one that stands behind the first. */
function partnerOf(pairs: readonly FixPair[], key: BathKey, batches: BathLabels): string | undefined {
  const first = key === "fix-2" ? parseNumber("batch", batches.fix ?? "") : undefined;
  const pair = first === undefined ? undefined : pairs.find((each) => each.first === first);
  return pair && makeNumber("batch", pair.second);
}

/** ml of replenisher for the film of one load. */
function replenishFor({ replenishMlPerRoll }: Batch, { areaSqIn }: Need): number {
  return Math.round(((replenishMlPerRoll ?? 0) * areaSqIn) / SQ_IN_PER_ROLL);
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
