import type { Step } from "../../../store/shapes/plan.ts";

/** A step as a sentence speaks of it: its title as it stands in the middle, and its kind, for languages with genders. */
export interface Titled {
  readonly kind: Step["kind"];
  readonly title: string;
}
