import { countOf } from "../../speech/wording.ts";
import type { BatchKind } from "../../../store/shapes/batch.ts";
import type { Standing } from "../state.ts";

/* The words for a batch, shared by everything that speaks of one. */

/** A sheet of 8x10 in is as much as a roll. */
const prints = (count: number): string => `${countOf(count, "print")} of 8x10 in`;

export const en = {
  kind: {
    developer: "developer",
    stop: "stop bath",
    fixer: "fixer",
    "wash-aid": "wash aid",
    "wetting-agent": "wetting agent",
    "paper-developer": "paper developer",
    "paper-stop": "paper stop bath",
    "paper-fixer": "paper fixer",
    "paper-wash-aid": "paper wash aid",
  } satisfies Record<BatchKind, string> as Record<BatchKind, string>,
  standing: {
    ready: "ready",
    exhausted: "exhausted",
    "out-of-date": "out of date",
    discarded: "discarded",
  } satisfies Record<Standing, string> as Record<Standing, string>,
  /** Quarters of a roll come from sheet film. */
  rolls: (rolls: number, ofPaper: boolean) => (ofPaper ? prints(rolls) : countOf(rolls, "roll")),
  rollsLeft: (rolls: number, ofPaper: boolean) => `${ofPaper ? prints(rolls) : countOf(rolls, "roll")} left`,
  strength: (percent: number) => `at ${percent} % of its strength`,
  mlLeft: (ml: string) => `${ml} left`,
  clears: (seconds: string, isAbout: boolean, fresh: string | null) =>
    `clears in ${isAbout ? "about " : ""}${seconds}${fresh === null ? "" : ` (fresh ${fresh})`}`,
  worn: {
    discarded: "it was thrown away",
    capacity: (rolls: string) => `it has done ${rolls}, and not one more fits`,
    volume: "nothing is left in it",
    test: (seconds: string, fresh: string) =>
      `it clears in ${seconds}, twice its fresh time of ${fresh} or more`,
    silver: (gramsPerLitre: string) =>
      `by strip it carries ${gramsPerLitre} g of silver in a litre, its limit or more`,
    prediction: (seconds: string) =>
      `by its ledger it now clears in about ${seconds}, twice its fresh time; a test can show otherwise`,
    unknown: "it is exhausted",
    kept: (date: string) => `it kept until ${date}`,
  },
  slow: (seconds: string) =>
    `${seconds} is slow: fresh rapid fixer clears film in 1 to 3 minutes. Check its strength and warmth, and mix new if in doubt.`,
  unknownBatch: (typed: string) => `There is no bottle ${typed}. See the bottles with \`/batch status\`.`,
};
export type BatchWords = typeof en;
