import { mayActAs, type Role } from "../../store/shapes/person.ts";
import type { Mark } from "../batch/marks.ts";
import type { FirstStep } from "../../store/shapes/school.ts";
import type { RunView } from "../run/run-view.ts";

/* What a person had best do next. Pure: the first that fits, the most urgent first. */

export interface HelpFacts {
  readonly role: Role;
  /** This person's runs under way, the one that waits longest for its person first. */
  readonly runs: readonly RunView[];
  /** A plan of today that no run was started from. */
  readonly plan: { readonly number: number; readonly bellWarning: string } | null;
  /** What a new class does next before its first film; null: it is past that, or its teacher puts it off. */
  readonly firstStep: FirstStep | null;
  /** Parts of the set-up that nobody has answered yet. */
  readonly setupMissing: number;
  /** Bottles that need a hand, the worst first. */
  readonly bottles: readonly { readonly label: string; readonly mark: Mark }[];
  /** The newest roll of this person that nobody has rated, of the last weeks. */
  readonly unratedRoll: number | null;
  readonly sheets: number;
  readonly rollsEver: number;
}

export type NextStep =
  | { readonly kind: "run"; readonly view: RunView; readonly others: number }
  | { readonly kind: "start"; readonly plan: number; readonly bellWarning: string }
  | { readonly kind: "first-day"; readonly step: FirstStep }
  | { readonly kind: "setup"; readonly missing: number }
  | { readonly kind: "bottle"; readonly label: string; readonly mark: Mark }
  | { readonly kind: "rate"; readonly roll: number }
  | { readonly kind: "no-sheet" }
  | { readonly kind: "plan"; readonly isFirst: boolean };

export function nextStep(facts: HelpFacts): NextStep {
  const [run] = facts.runs;
  if (run) return { kind: "run", view: run, others: facts.runs.length - 1 };
  if (facts.plan) return { kind: "start", plan: facts.plan.number, bellWarning: facts.plan.bellWarning };
  if (mayActAs(facts.role, "teacher") && facts.firstStep) return { kind: "first-day", step: facts.firstStep };
  if (mayActAs(facts.role, "teacher") && facts.setupMissing > 0)
    return { kind: "setup", missing: facts.setupMissing };
  const [bottle] = facts.bottles;
  if (mayActAs(facts.role, "aide") && bottle) return { kind: "bottle", ...bottle };
  if (facts.unratedRoll !== null) return { kind: "rate", roll: facts.unratedRoll };
  if (facts.sheets === 0) return { kind: "no-sheet" };
  return { kind: "plan", isFirst: facts.rollsEver === 0 };
}
