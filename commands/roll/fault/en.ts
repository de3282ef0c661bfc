import type { Edge, Margin, Extent, LookGroup } from "../looks.ts";

export const en = {
  askKind: (roll: string) => `**What looks wrong on ${roll}?** Hold the dry film before a light.`,
  kinds: {
    light: "Too light",
    dark: "Too dark",
    marks: "Marks or streaks",
    colour: "Colour or surface",
  } satisfies Record<LookGroup, string>,
  otherKind: "None of these",
  ask: (roll: string) => `**What do you see on ${roll}?** Hold it before a light; choose what fits best.`,
  look: (word: string, help: string) => `${word}: ${help}`,
  asked: (look: string, question: string) => `${look}. ${question}`,
  questions: {
    edge: "**Look at the film's border:** the maker's names and numbers there. Dark and sharp, faint, or none?",
    margin: "**Look at the border and between the frames:** clear there, or grey as well?",
    place: "**How far does it go:** everywhere, or only in patches?",
  },
  choices: {
    dark: "Dark",
    faint: "Faint",
    none: "None",
    clear: "Clear",
    grey: "Grey as well",
    everywhere: "Everywhere",
    patches: "Patches",
  } satisfies Record<Edge | Margin | Extent, string>,
  cannotTell: "I can't tell",
  causes: (roll: string, look: string) => `**${roll}, ${look}:** weighed by what the log has of this roll.`,
  whichWasIt: "Which was it? Telling it teaches the next one, and shows when a bottle is to blame.",
  noted: (roll: string, look: string, cause: string) =>
    `Noted on ${roll}: **${look}**, ${cause.replace(/^[A-Z]/, (letter) => letter.toLowerCase())}.`,
  notedUnknown: (roll: string, look: string) => `Noted on ${roll}: **${look}**, cause unknown.`,
  others: "Others like it",
  cleared: (roll: string) => `${roll} has no fault on record now.`,
  unknownCause: (code: string) =>
    `There is no cause ${code}. Choose one of those offered, or \`cause:unknown\`.`,
};
export type FaultWords = typeof en;
