import type { Action } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { sayFault } from "../../roll/look-words.ts";
import { plain } from "../../speech/wording.ts";
import type { Evidence } from "./evidence.ts";
import { de } from "./evidence.de.ts";
import { en } from "./evidence.en.ts";

const words = inEach({ en, de });

/** To the teacher: rolls through one batch show the same fault too often. */
export function evidenceWords(evidence: Evidence): { text: string; actions: Action[] } {
  const { label, fault, faulty, rolls, otherFaulty, otherRolls, chance } = evidence;
  const { share, locale, rarest, rare, noProof, rollsThrough, see } = words();
  const odds = Math.max(2, Math.round(1 / chance));
  return {
    text: [
      share(label, plain(sayFault(fault)), faulty, rolls, otherFaulty, otherRolls),
      noProof(label, odds > 1_000_000 ? rarest : rare(odds.toLocaleString(locale))),
    ].join("\n"),
    actions: [
      { label: rollsThrough(label), line: makeLine("roll find", { batch: label }) },
      { label: see(label), line: makeLine("batch status", { batch: label }) },
    ],
  };
}
