import { countOf, joinAnd } from "../../speech/wording.ts";

/* People's words and names come harmless, steps as in the middle of a sentence, instants marked. */

export const en = {
  somebody: "somebody",
  said: (by: string, text: string) => `**${by}:** ${text}`,
  everyone: "the whole class",
  working: "everybody with a run under way",
  trays: "everybody with prints in the trays",
  at: (step: string) => `everybody at: ${step}`,
  before: (step: string) => `everybody with this still to come: ${step}`,
  toEveryone: "On its way to the whole class.",
  toPeople: (people: readonly string[]) =>
    `On its way to **${countOf(people.length, "person", "people")}**: ${joinAnd(people)}.`,
  whoHasIt: "Who has it?",
  reached: (has: number, of: number, body: string, audience: string, time: string) =>
    `**${has} of ${of}** reached. "${body}", to ${audience}, ${time}.`,
  hasIt: (name: string, time: string | null) => `${name}: has it${time === null ? "" : ` since ${time}`}`,
  onItsWay: (name: string) => `${name}: on its way`,
  notShown: (name: string) => `${name}: not shown yet`,
  notReached: (name: string) => `${name}: not reached`,
  byMention: (line: string) => `${line} (called by name in the class's channel)`,
  again: "Refresh",
  sayToEveryone: "Say it to everyone",
  noStep:
    "Say which step: `to:at step:fix` for those at the fixer now, `to:before step:fix` for those who have it still to come.",
  nobody: (audience: string) =>
    `Nobody is meant by that now (${audience}), so nothing was said. Say it to everyone?`,
  noSay: "Nothing has been said to the class yet: `/class say text:…`.",
  unknownSay: (number: number) => `There is no message ${number} to the class.`,
  theClass: "the class, in its channel",
};
export type SayWords = typeof en;
