import { countOf } from "../../speech/wording.ts";

/* The report's sentences. Days, litres and per cent come formatted. */

export const en = {
  language: "en",
  /** For the platform's calendar. */
  locale: "en-GB",
  head: (from: string, to: string, rolls: number, people: number) =>
    `${from} to ${to}${rolls === 0 ? "" : `: ${countOf(rolls, "roll")} by ${countOf(people, "person", "people")}`}`,
  finished: (finished: number, rolls: number) => `${finished} of ${countOf(rolls, "roll")} came to the end.`,
  noneCalled: "No run was called yet.",
  onTime: (percent: string, runs: number) => `${percent} of ${countOf(runs, "run")} had every call on time.`,
  dose: (median: string, low: string, high: string) =>
    `Development: ${median} % of the plan is typical; 9 of 10 rolls lie between ${low} and ${high} %.`,
  faulty: (percent: string) => `${percent} show a fault.`,
  rated: (mean: string, count: number) => `Rated ${mean} of 5 on average (${count} rated).`,
  prints: (count: number, people: number) =>
    `${countOf(count, "print")} by ${countOf(people, "person", "people")}.`,
  papers: (list: string) => `Papers: ${list}`,
  printed: "Prints",
  used: (developer: string, litres: string) => `${developer}: ${litres} used`,
  usedConcentrate: (developer: string, litres: string, concentrate: string) =>
    `${developer}: ${litres} used, ${concentrate} of concentrate`,
  mixed: (list: string) => `Batches mixed: ${list}`,
  noFixer: "Used fixer: none collected",
  fixer: (litres: string, silver: string) => `Used fixer: ${litres} collected, silver ${silver}`,
  grams: (low: string, high: string) => (low === high ? `${low} g` : `${low} to ${high} g`),
  ruleOfThumb: "(the silver by a rule of thumb, not measured)",
  cut: "Only the newest 10,000 rolls are in it: choose a shorter stretch.",
  noRolls: "No roll ended in that time and nothing was printed, so there is nothing to report yet.",
  weeks: "Rolls a week",
  doses: "Development given, per cent of plan",
  noDose: "No dose is on record yet.",
  faults: "Faults seen",
  noFaults: "None on record.",
  chemistry: "Chemistry",
  weekFrom: "Week from",
  films: "Films",
  film: "Film",
  fault: "Fault",
  rolls: "Rolls",
  silver:
    "Used fixer carries silver: it is collected, never poured away. Labels, safety data sheets and local rules decide.",
};
export type ReportWords = typeof en;
