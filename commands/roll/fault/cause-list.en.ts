import type { Likelihood } from "./weigh.ts";

export const en = {
  unknownToo: "Note it, cause unknown",
  likelihoods: {
    likely: "likely",
    possible: "possible",
    unlikely: "less likely",
  } satisfies Record<Likelihood, string>,
  speaksFor: (findings: string) => `For it: ${findings}.`,
  speaksAgainst: (findings: string) => `Against it: ${findings}.`,
  now: (what: string) => `Now: ${what}`,
  next: (what: string) => `Next time: ${what}`,
  source: (source: string) => `_Source: ${source}_`,
};
export type CauseListWords = typeof en;
