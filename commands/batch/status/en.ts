import { countOf } from "../../speech/wording.ts";
import type { BatchKind } from "../../../store/shapes/batch.ts";
import { en as batch } from "../words/batch.en.ts";

export const en = {
  noneYet:
    "No bottle is noted yet. When an aide or the teacher has mixed one: `/batch mix kind:fixer product:… dilution:1+4 volume:2 l`.",
  allFit: (bottles: number) => `**${countOf(bottles, "bottle")}**, all fit for use.`,
  someWorn: (labels: string, fit: number) =>
    `**Don't use ${labels}.** ${countOf(fit, "bottle")} fit for use.`,
  usedUpBy: (date: string) => `; at this pace used up by ${date}`,
  keepsUntil: (date: string) => `; keeps until ${date}`,
  one: (left: string, name: string, kind: BatchKind) => `**${left}** in ${name} (${batch.kind[kind]}).`,
  oneWorn: (label: string, standing: string, name: string, why: string) =>
    `**${label} is ${standing}: don't use it.** ${name}: ${why}.`,
  inBottle: (ml: string, rolls: string, mixed: string) =>
    `${ml} in the bottle; ${rolls} through it since it was mixed, ${mixed}.`,
  carried: (inMl: string, outMl: string, strengthPercent: number) =>
    `Film has carried ${inMl} in and ${outMl} out: reckoned at ${strengthPercent} % of the strength it was mixed at.`,
  wantsReplenisher: (ml: string) => `It wants ${ml} of replenisher: \`/batch topup\`.`,
  limits: (source: string) => `_Limits: ${source}._`,
  neverTested: "Its clearing time was never tested: the class's minimum fixing time stands alone.",
  /** `clears`: `clears in about 0:52 (fresh 0:45)`. */
  tested: (clears: string, last: { date: string; seconds: string } | null) =>
    `It ${clears}${last === null ? "" : `, last tested ${last.date} at ${last.seconds}`}.`,
  keeps: (date: string, isPartFull: boolean) =>
    `It keeps until ${date}${isPartFull ? ", as a part-full bottle" : ""}`,
  tooEarly: (keeps: string) => `${keeps}. How long it lasts shows after two weeks of use.`,
  usedUp: (rollsPerWeek: string, ofPaper: boolean, weeks: number, date: string) =>
    `At this class's pace (${rollsPerWeek} ${ofPaper ? "prints of 8x10 in" : "rolls"} a week, from ${countOf(weeks, "week")}) it is used up by ${date}`,
  between: (earliest: string, latest: string) => `, between ${earliest} and ${latest} eight times in ten`,
  /** The rest of a sentence begun before it. */
  keepsAndUsedUp: (keeps: string, usedUp: string) =>
    `${keeps}; ${usedUp.charAt(0).toLowerCase()}${usedUp.slice(1)}.`,
  page: (page: number, pages: number) => `Page ${page} of ${pages}.`,
  itsLedger: "Its ledger",
  earlier: "Earlier",
  later: "Later",
};
export type StatusWords = typeof en;
