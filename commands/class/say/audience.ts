import { STEP_KINDS, type StepKind } from "../../../store/shapes/plan.ts";
import { currentStep, isTrayRun, type Run } from "../../../store/shapes/run.ts";

/* Whom a word to many is meant for, by where their film is. */

export const AUDIENCES = ["everyone", "working", "trays", "at", "before"] as const;
export type AudienceKind = (typeof AUDIENCES)[number];

export type Audience =
  /** The whole class, by its channel or page. */
  | { readonly kind: "everyone" }
  /** Everybody with a run under way. */
  | { readonly kind: "working" }
  /** Everybody with prints in the trays. */
  | { readonly kind: "trays" }
  /** Whose film is at this step now: in its bath, or waiting for it. */
  | { readonly kind: "at"; readonly step: StepKind }
  /** Whose film has this step still to come, or is at it. */
  | { readonly kind: "before"; readonly step: StepKind };

/** How an audience is kept: `everyone`, `at fix`. */
export function makeAudience(audience: Audience): string {
  return "step" in audience ? `${audience.kind} ${audience.step}` : audience.kind;
}

/** Undefined for a text of another kind: earlier ones were kept in words. */
export function parseAudience(text: string): Audience | undefined {
  const [kind, stepText, more] = text.split(" ");
  if (more !== undefined) return undefined;
  if (kind === "everyone" || kind === "working" || kind === "trays")
    return stepText === undefined ? { kind } : undefined;
  const step = STEP_KINDS.find((each) => each === stepText);
  return step !== undefined && (kind === "at" || kind === "before") ? { kind, step } : undefined;
}

/** People of the audience, each once, in the order of their runs. Nobody for `everyone`: the class is spoken to as one. */
export function peopleOf(audience: Audience, runs: readonly Run[]): string[] {
  if (audience.kind === "everyone") return [];
  const people = runs.filter((run) => isMeant(audience, run)).map(({ personId }) => personId);
  return [...new Set(people)];
}

function isMeant(audience: Exclude<Audience, { kind: "everyone" }>, run: Run): boolean {
  if (audience.kind === "working") return true;
  if (audience.kind === "trays") return isTrayRun(run);
  if (audience.kind === "at") return currentStep(run)?.kind === audience.step;
  if (run.phase.kind !== "waiting" && run.phase.kind !== "running") return false;
  return run.plan.steps.slice(run.phase.step).some(({ kind }) => kind === audience.step);
}
