import type { Standing } from "../../batch/state.ts";
import { countOf, joinAnd } from "../../speech/wording.ts";

/** Each a part of a sentence. Times and temperatures come as they are written. */
export const en = {
  standings: {
    ready: "in order",
    exhausted: "exhausted",
    "out-of-date": "out of date",
    discarded: "thrown away",
  } satisfies Record<Standing, string>,
  doseShort: (percent: number) => `it was developed ${percent} % less than planned`,
  doseOver: (percent: number) => `it was developed ${percent} % more than planned`,
  doseRight: "it was developed as planned",
  neverDeveloped: "no developer is on record",
  developer: (label: string, standing: string) => `developer ${label} was ${standing}`,
  fixer: (label: string, standing: string) => `fixer ${label} was ${standing}`,
  fixShort: (fixed: string, times: number, needed: string) =>
    `it was fixed ${fixed}, and ${times} times the clearing time was ${needed}`,
  fixCut: (fixed: string, planned: string) => `it was fixed ${fixed} instead of ${planned}`,
  fixEnough: (fixed: string, clearing: string) =>
    `it was fixed ${fixed}, with a clearing time of ${clearing}`,
  washCut: (washed: string, planned: string) => `it was washed ${washed} instead of ${planned}`,
  callsMissed: (missed: number, late: number) =>
    joinAnd([
      ...(missed > 0 ? [`${countOf(missed, "call")} missed`] : []),
      ...(late > 0 ? [`${countOf(late, "call")} late`] : []),
    ]),
  callsKept: "no call came late",
  tankReported: (condition: string) => `its tank was reported: ${condition}`,
  bathsApart: (apart: string) => `two baths were ${apart} apart`,
  bathsEven: (apart: string) => `the baths measured were within ${apart}`,
  warm: (temperature: string) => `a bath was ${temperature} warm`,
  wettingSkipped: "no wetting agent is on record",
  tabular: "it is a tabular-grain film, which is slower to fix",
};
export type FindingWords = typeof en;
