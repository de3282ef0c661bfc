import type { Action, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { countOf, makeNumber } from "../wording.ts";

/* The next sensible step for this person now. */

export function helpReply(text: string, actions: readonly Action[], commands: readonly string[]): Reply {
  return { text, actions, fields: { commands } };
}

export const runsGoing = (count: number): string =>
  `You have ${countOf(count, "run")} going. See what comes next, or say that the next bath is in.`;
export const planReady = (number: number): string =>
  `Your plan ${makeNumber("plan", number)} is ready. Fill the tank, load the film in the dark, then start.`;
export const noPlanYet =
  "Begin with a plan: say which film, which developer and how warm it is. For example:\n`/plan film:… developer:… temp:20`";
export const noSheetYet =
  "The class has no sheet yet: the times of a film in a developer. A teacher or an aide adds one with `/sheet add`.";
export const alwaysThere =
  "Always there: `/roll find` (the log), `/sheet list` (films and developers), `/caution` (safety and waste).";

export const statusAction: Action = { label: "Where am I?", line: "run status", weight: "main" };
export const startAction = (number: number): Action => ({
  label: "Start",
  line: makeLine("run start", { plan: makeNumber("plan", number) }),
  weight: "main",
});
export const sheetsAction: Action = { label: "Films and developers", line: "sheet list" };
