/*
 * Development by factor: the whole time is a multiple of the time at which the image first appears. Factors are one firm's of
 * a hundred years ago (Cyclopedia of Photography); those whose digits were lost in print are left out.
 */

export const AGENTS = ["amidol", "glycin", "metol", "para-aminophenol", "pyro"] as const;
export type Agent = (typeof AGENTS)[number];
export const CONTRASTS = ["soft", "normal", "strong"] as const;
export type Contrast = (typeof CONTRASTS)[number];

const FACTORS: Readonly<Record<Agent, Readonly<Record<Contrast, number>>>> = {
  amidol: { soft: 7, normal: 10, strong: 12 },
  glycin: { soft: 9, normal: 13, strong: 16 },
  metol: { soft: 20, normal: 30, strong: 35 },
  "para-aminophenol": { soft: 12, normal: 16, strong: 18 },
  pyro: { soft: 4, normal: 6, strong: 7 },
};

/** A maker's handbook has 10 for pyro-soda, and 9 or 8 where that is too strong: against the 6 above. */
export const PYRO_RIVAL = { normal: 10, softer: [9, 8] } as const;

/** Equal parts of several agents: the mean of their factors. */
export function factorOf(agents: readonly Agent[], contrast: Contrast): number {
  const sum = agents.reduce((total, agent) => total + FACTORS[agent][contrast], 0);
  return Math.round((sum / agents.length) * 10) / 10;
}

/** Whole seconds in all; not under `leastSeconds`, which full black needs. */
export function wholeSeconds(factor: number, seenAfterSeconds: number, leastSeconds = 0): number {
  return Math.max(leastSeconds, Math.round(factor * seenAfterSeconds));
}

/** The factor that a finished development has had. */
export function factorHad(seenAfterSeconds: number, totalSeconds: number): number {
  return Math.round((totalSeconds / seenAfterSeconds) * 10) / 10;
}
