import { currentStep, type Run, waitsToBegin } from "../../store/shapes/run.ts";
import type { Tank } from "../../store/shapes/tank.ts";

/* Who has which tank. Pure. */

/** A film that hangs to dry has left its tank. */
const isInTank = (run: Run): boolean => {
  const step = currentStep(run);
  return step !== undefined && step.kind !== "dry" && step.kind !== "cut";
};

/** The run whose film is in this tank or comes in next, of runs that are not over, oldest first. */
export function holderOf(open: readonly Run[], tank: number): Run | undefined {
  const here = open.filter((run) => run.plan.tank === tank && isInTank(run));
  return here.find((run) => !waitsToBegin(run)) ?? here[0];
}

/** The run that this one waits for, since it has its tank; undefined where none has. */
export function holderBefore(open: readonly Run[], { id, plan }: Run): Run | undefined {
  const holder = plan.tank === null ? undefined : holderOf(open, plan.tank);
  return holder?.id === id ? undefined : holder;
}

/** Tanks into which a plan for `tank` goes as it is, and that are in order and free. */
export function freeLike(tank: Tank, tanks: readonly Tank[], open: readonly Run[]): Tank[] {
  return tanks.filter(
    (each) => each.condition === null && isLike(each, tank) && holderOf(open, each.number) === undefined,
  );
}

/** As far as a plan goes by its tank. */
export const isLike = (a: Tank, b: Tank): boolean =>
  a.reels === b.reels &&
  a.volumeMl === b.volumeMl &&
  a.format === b.format &&
  a.timeConstantSeconds === b.timeConstantSeconds;
