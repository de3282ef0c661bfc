import { countOf } from "../../speech/wording.ts";

export const en = {
  share: (label: string, fault: string, faulty: number, rolls: number, otherFaulty: number, others: number) =>
    `**${faulty} of ${countOf(rolls, "roll")} through ${label} ${faulty === 1 ? "shows" : "show"} “${fault}”**; of ${countOf(others, "other roll")} of these weeks ${otherFaulty} ${otherFaulty === 1 ? "does" : "do"}.`,
  locale: "en-GB",
  rarest: "less than once in a million",
  rare: (odds: string) => `once in about ${odds}`,
  noProof: (label: string, rare: string) =>
    `Were ${label} like the others, chance would bring that ${rare}. It is no proof: look whether one tank, one person or one day is behind it too. Next: test ${label}, and keep it back until you know.`,
  rollsThrough: (label: string) => `Rolls through ${label}`,
  see: (label: string) => `See ${label}`,
};
export type EvidenceWords = typeof en;
