import { joinAnd } from "../../speech/wording.ts";
import type { SayWords } from "./en.ts";

export const de: SayWords = {
  somebody: "jemand",
  said: (by, text) => `**${by}:** ${text}`,
  everyone: "der ganze Kurs",
  working: "alle mit einem Lauf",
  trays: "alle mit Abzügen in den Schalen",
  at: (step) => `alle bei: ${step}`,
  before: (step) => `alle, denen dies noch bevorsteht: ${step}`,
  toEveryone: "Unterwegs zum ganzen Kurs.",
  toPeople: (people) =>
    `Unterwegs zu **${people.length === 1 ? "1 Person" : `${people.length} Personen`}**: ${joinAnd(people)}.`,
  whoHasIt: "Wer hat es?",
  reached: (has, of, body, audience, time) =>
    `**${has} von ${of}** erreicht. „${body}“, um ${time}. Gemeint: ${audience}.`,
  hasIt: (name, time) => (time === null ? `${name}: hat es` : `${name}: hat es seit ${time}`),
  onItsWay: (name) => `${name}: noch unterwegs`,
  notShown: (name) => `${name}: noch nicht gezeigt`,
  notReached: (name) => `${name}: nicht erreicht`,
  byMention: (line) => `${line} (im Kanal des Kurses mit Namen genannt)`,
  again: "Noch einmal ansehen",
  sayToEveryone: "Allen sagen",
  noStep:
    "Sag, welcher Schritt: `to:at step:fix` für alle, die jetzt beim Fixierbad sind, `to:before step:fix` für alle, die es noch vor sich haben.",
  nobody: (audience) =>
    `Damit ist jetzt niemand gemeint (${audience}), also wurde nichts gesagt. Allen sagen?`,
  noSay: "Dem Kurs wurde noch nichts gesagt: `/class say text:…`.",
  unknownSay: (number) => `Eine Nachricht ${number} an den Kurs gibt es nicht.`,
  theClass: "der Kurs, in seinem Kanal",
};
