import type { Action } from "../define.ts";
import { stopAnswer as stopOwnAnswer } from "./run-answers.ts";
import { says, shows, type Answerer } from "./shape.ts";
import { askWords, deskWords as words } from "./words.ts";

/* Answers to whoever runs the class. What a teacher may call is named, so that a student who asks knows whom to tell. */

export const bellsAnswer: Answerer = () => says(words().bells);
export const sayAllAnswer: Answerer = () => says(words().sayAll);
export const moreTimeAnswer: Answerer = () => says(words().moreTime);
export const signOutAnswer: Answerer = () => says(words().signOut);
export const standingAnswer: Answerer = () => shows("batch status", {}, words().standing);
export const labelsAnswer: Answerer = () => says(words().labels, bottlesKey());

export const byBellAnswer: Answerer = () =>
  says(words().byBell, { label: words().order, line: "class turns" });
export const otherBottleAnswer: Answerer = () => says(words().otherBottle, bottlesKey());
/** What is to be printed or taken along is a file. */
export const rollsAnswer: Answerer = ({ signs }) =>
  shows("roll find", {}, signs.has("PRINTOUT") ? words().logFile : "");
/** By a tank or a run's number, whoever has no film in any means somebody else's. */
export const stopAnswer: Answerer = (reading, facts) => {
  const { tank, run } = reading.things;
  return facts.runs.length === 0 && (tank !== null || run !== null)
    ? stopOtherAnswer(reading, facts)
    : stopOwnAnswer(reading, facts);
};
/** Whoever has a film in a tank may have called it by a word that nobody knows. */
export const stopOtherAnswer: Answerer = (reading, facts) =>
  facts.runs.length > 0 ? stopOwnAnswer(reading, facts) : shows("class board", {}, words().stopOther);

const bottlesKey = (): Action => ({ label: askWords().otherBottles, line: "batch status" });
