import { countOf } from "../../speech/wording.ts";
import type { BatchKind } from "../../../store/shapes/batch.ts";
import type { Mark } from "../../batch/marks.ts";
import { en as batch } from "../../batch/words/batch.en.ts";

/* What the class is told before a period, and once a week. */

export const en = {
  late: (late: string, date: string, time: string, missed: number) =>
    `**${late} late**: this was for ${date}, ${time}.${missed === 0 ? "" : missed === 1 ? " One before it was missed." : ` ${missed} before it were missed.`}`,
  marks: {
    tired: "getting tired",
    "last-films": "last rolls",
    exhausted: "not enough for a roll",
    "out-of-date-soon": "out of date soon",
    "out-of-date": "out of date",
    "test-overdue": "needs a clearing test",
    "replenish-due": "wants replenisher",
  } satisfies Record<Mark, string> as Record<Mark, string>,
  nextPeriod: "The next period",
  period: (title: string, time: string, relative: string) => `**${title}** at ${time}, ${relative}.`,
  mixBefore: (what: string) => `**Mix before it: ${what}.** An aide or the teacher.`,
  testLamps: (which: string) =>
    `**Safelight ${which}: its test is due.** An aide or the teacher: \`/tray test\`.`,
  dontUse: (which: string) => `**Don't use** ${which}.`,
  watch: (which: string) => `Watch: ${which}.`,
  ready: "Ready:",
  noneReady: "Nothing mixed is ready.",
  developer: (product: string) => `${product} (developer)`,
  kind: (kind: BatchKind) => batch.kind[kind],
  short: (name: string, leftRolls: number, expected: number | null, ofPaper: boolean) => {
    const left = leftRolls === 0 ? "none ready" : batch.rollsLeft(leftRolls, ofPaper);
    const wanted = expected === null ? "" : ` and up to ${batch.rolls(expected, ofPaper)} expected`;
    return `${name}, ${left}${wanted}`;
  },
  developed: (rolls: number, stopped: number) =>
    `**${countOf(rolls, "roll")}** developed in the last seven days${stopped > 0 ? `, ${stopped} stopped` : ""}.`,
  toSilver: (ml: string) => `${ml} of fixer to the silver collection`,
  toDrain: (ml: string) => `${ml} to the drain, as local rules allow`,
  toSupplier: (ml: string) => `${ml} back to the supplier`,
  noWaste: "none noted",
  volumes: (mixed: string, used: string, waste: string) =>
    `Mixed: ${mixed}. Developer used: ${used}. Waste: ${waste}.`,
  collected: (ml: string, low: string, high: string) =>
    `In the collection: **${ml}** of used fixer with about ${low} to ${high} g of silver. Handing over: \`/batch handover\`; local rules decide how.`,
  ending: (which: string) => `Out of date within a week: ${which}. Use it first.`,
};
export type DigestWords = typeof en;
