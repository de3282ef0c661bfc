import type { Habits } from "../../store/shapes/school.ts";
import { fixTime, inEachBath } from "../plan/fix.ts";
import { isFilmPlan, type AnyPlan } from "../../store/shapes/tray.ts";
import { goesBack, waterWith, type Choice } from "./choose.ts";
import { labelOf } from "./batch-words.ts";

/**
 * The plan with one step's bath from another batch, and fixed at least as long as that one needs. undefined where the
 * change would alter a time that can't be altered now: a developer that has done more films.
 */
export function changeBatch<Of extends AnyPlan>(
  plan: Of,
  index: number,
  choice: Pick<Choice, "batch" | "clearingSeconds" | "filmsDone">,
  isTabular: boolean,
  habits: Habits,
): Of | undefined {
  const step = plan.steps[index];
  if (!step || (step.kind === "develop" && choice.filmsDone > 0)) return undefined;
  const waterMl = step.kind === "develop" ? waterWith(choice.batch, step) : 0;
  const changed = {
    ...step,
    waterMl: waterMl > 0 ? waterMl : undefined,
    batch: labelOf(choice.batch),
    isPouredBack: goesBack(choice.batch, step),
  };
  if (step.kind === "fix" && isFilmPlan(plan)) {
    const { seconds: all, basis } = fixTime(
      choice.clearingSeconds,
      isTabular,
      habits.fixMinSeconds,
      plan.tenthsC,
    );
    const seconds = inEachBath(all, step.ordinal > 0 ? 2 : 1);
    if (seconds > (step.seconds ?? 0)) Object.assign(changed, { seconds, basis: [...basis] });
  }
  return { ...plan, steps: plan.steps.map((each, at) => (at === index ? changed : each)) };
}
