/** Steps of a strip in stops, as they are typed. */
export const STEPS = ["1", "1/2", "1/3", "1/4", "1/6"] as const;
export type Step = (typeof STEPS)[number];

const TWELFTHS: Readonly<Record<Step, number>> = { "1": 12, "1/2": 6, "1/3": 4, "1/4": 3, "1/6": 2 };

export const twelfthsOf = (step: Step): number => TWELFTHS[step];

/** At most half as far apart; where there is none, the finest that is finer; undefined: none is. */
export const finerThan = (twelfths: number): Step | undefined =>
  STEPS.find((step) => TWELFTHS[step] <= twelfths / 2) ?? STEPS.findLast((step) => TWELFTHS[step] < twelfths);
