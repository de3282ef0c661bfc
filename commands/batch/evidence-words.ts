import type { Action } from "../define.ts";
import { makeLine } from "../line.ts";
import { countOf, plain } from "../wording.ts";
import type { Evidence } from "./evidence.ts";

/** To the teacher: rolls through one batch show the same fault too often. */
export function evidenceWords(evidence: Evidence): { text: string; actions: Action[] } {
  const { label, fault, faulty, rolls, otherFaulty, otherRolls, chance } = evidence;
  const odds = Math.max(2, Math.round(1 / chance));
  const rare =
    odds > 1_000_000 ? "less than once in a million" : `once in about ${odds.toLocaleString("en-GB")}`;
  return {
    text: [
      `**${faulty} of ${countOf(rolls, "roll")} through ${label} show “${plain(fault)}”**; of ${countOf(otherRolls, "other roll")} of these weeks ${otherFaulty} do.`,
      `Were ${label} like the others, chance would bring that ${rare}. It is no proof: look whether one tank, one person or one day is behind it too. Next: test ${label}, and keep it back until you know.`,
    ].join("\n"),
    actions: [
      { label: `Rolls through ${label}`, line: makeLine("roll find", { batch: label }) },
      { label: `See ${label}`, line: makeLine("batch status", { batch: label }) },
    ],
  };
}
