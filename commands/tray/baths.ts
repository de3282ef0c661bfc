import { isFixer } from "../../store/shapes/batch.ts";
import type { Step } from "../../store/shapes/plan.ts";
import type { TrayPlan } from "../../store/shapes/tray.ts";
import { labelOf } from "../batch/batch-words.ts";
import { candidatesFor } from "../batch/candidates.ts";
import { chooseBatch, needOf, type Candidate } from "../batch/choose.ts";
import { refusalWords } from "../batch/refusal-words.ts";
import { UserError, type Context } from "../define.ts";
import { makeNumber, parseNumber } from "../speech/wording.ts";
import { silverOf, type SilverFact } from "./silver.ts";

/* The bottles, or trays with a label, that a print's baths come from. */

/** What was named for a step, by its kind; of two fixing baths the second under its own name. */
export type NamedBaths = Readonly<Partial<Record<"develop" | "fix" | "fix-2", string>>>;

export interface TrayBaths {
  readonly steps: readonly Step[];
  /** Of each fixing bath, in order. */
  readonly silver: readonly SilverFact[];
}

/**
 * The plan's steps with the batch of each: the one named, or the right one that is to be used up first.
 * @throws UserError where a bath is worn out, is film's, or has no room for these prints.
 */
export function bathsForPrints(context: Context, plan: TrayPlan, named: NamedBaths): TrayBaths {
  const { stores, person, now, class: school } = context;
  const candidates = candidatesFor(stores, school.id, person.id, now);
  const kept = new Set(stores.batches.list(school.id).map(({ kind }) => kind));
  let first: number | null = null;
  const silver: SilverFact[] = [];
  const steps = plan.steps.map((step): Step => {
    const need = needOf(plan, step, plan.paper === "fibre");
    if (!need) return step;
    const text = named[keyOf(step)] ?? secondOf(context, step, first);
    if (text !== undefined && !kept.has(need.kind)) return { ...step, batch: text };
    const number = text === undefined ? null : parseNumber("batch", text);
    if (number === undefined)
      throw new UserError(
        "ERR_UNKNOWN_BATCH",
        refusalWords({ code: "ERR_UNKNOWN_BATCH", typed: text ?? "" }),
      );
    const chosen = chooseBatch(need, candidates, number, kept.has(need.kind));
    if (!chosen.ok) throw new UserError(chosen.fault.code, refusalWords(chosen.fault));
    if (!chosen.value) return step;
    const label = labelOf(chosen.value.batch);
    if (step.kind === "fix" && step.ordinal === 1) first = chosen.value.batch.number;
    const found = candidates.find(({ batch }) => batch.number === chosen.value?.batch.number);
    if (found && isFixer(need.kind)) silver.push(factOf(found, label));
    return { ...step, batch: label, isPouredBack: true };
  });
  return { steps, silver };
}

function keyOf({ kind, ordinal }: Step): keyof NamedBaths {
  return kind === "fix" && ordinal === 2 ? "fix-2" : (kind as keyof NamedBaths);
}

/** The second fixing bath is the one that stands behind the first. */
function secondOf({ class: { habits } }: Context, step: Step, first: number | null): string | undefined {
  if (step.kind !== "fix" || step.ordinal !== 2 || first === null) return undefined;
  const pair = habits.fixPairs.find((each) => each.first === first);
  return pair && makeNumber("batch", pair.second);
}

const factOf = ({ batch, state }: Candidate, label: string): SilverFact => ({
  label,
  ...silverOf(batch, state),
});
