import type { Standing } from "../../batch/state.ts";
import { countOf } from "../../speech/wording.ts";

export const en = {
  ask: (print: string) =>
    `**What do you see on ${print}?** Look at it in white light; choose what fits best.`,
  look: (word: string, help: string) => `${word}: ${help}`,
  causes: (print: string, look: string) =>
    `**${print}, ${look}:** weighed by what the log has of this print.`,
  whichWasIt:
    "Which was it? Telling it teaches the next one, and shows when a bath, a lamp or a box is to blame.",
  standings: {
    ready: "in order",
    exhausted: "exhausted",
    "out-of-date": "out of date",
    discarded: "thrown away",
  } satisfies Record<Standing, string>,
  findings: {
    "developed-short": (time: string) => `it was developed only ${time}`,
    "developed-long": (time: string) => `it was developed ${time}`,
    "developed-full": (time: string) => `it was developed ${time}`,
    warm: (temperature: string) => `the developer was ${temperature}`,
    cold: (temperature: string) => `the developer was only ${temperature}`,
    "temperature-right": (temperature: string) => `the developer was ${temperature}`,
    "developer-bad": (label: string, standing: string) => `developer ${label} was ${standing}`,
    "developer-good": (label: string) => `developer ${label} was in order`,
    "more-light": (print: string, stops: string) =>
      `it got ${stops} more light than ${print}, which came out well`,
    "less-light": (print: string, stops: string) =>
      `it got ${stops} less light than ${print}, which came out well`,
    harder: (print: string) => `its grade is harder than that of ${print}, which came out well`,
    softer: (print: string) => `its grade is softer than that of ${print}, which came out well`,
    "others-alike": (count: number) =>
      `${countOf(count, "print")} of others in these days ${count === 1 ? "looks" : "look"} the same`,
    fibre: "it is fibre paper, which holds fixer longer",
    condenser: "a condenser shows dust more and warms the negative",
  },
  noted: (print: string, look: string, cause: string) =>
    `Noted on ${print}: **${look}**, put down to: ${cause}.`,
  notedUnknown: (print: string, look: string) => `Noted on ${print}: **${look}**, cause unknown.`,
  others: "All with a fault",
  cleared: (print: string) => `No fault is noted on ${print} now.`,
  unknownCause: (code: string) =>
    `There is no cause ${code}. Take one that is offered, or \`cause:unknown\`.`,
};
export type FaultWords = typeof en;
