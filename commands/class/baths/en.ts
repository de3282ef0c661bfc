import { joinAnd } from "../../speech/wording.ts";

export const en = {
  noCarry: (typed: string) =>
    `${typed}: how much bath does a roll carry over? Write \`20 ml\`, \`0.04 ml/cm2\`, or \`none\`.`,
  noMeasure: (typed: string) =>
    `${typed}: what is the finest step you can read? Write \`0.1 ml\`, \`1 ml\`, or \`usual\`.`,
  noCarrySet: "Carry-over: not reckoned.",
  carry: (ml: string) =>
    `Carry-over: **${ml}** a roll, from each bath into the next. It thins what is poured back, and the ledger counts it.`,
  carrySource:
    "To find yours: weigh the tank emptied as you empty it against the dry one. About 20 ml a roll is told by one writer on replenishing (R. Suzuki).",
  oneBath: "Fixing: one bath.",
  twoBaths: (rotations: number, pairs: readonly string[]) =>
    `Fixing: **two baths**, half the time in each; the second moves up ${rotations === 1 ? "once" : `${rotations} times`}, then both are new. ${pairs.length === 0 ? "No bottles are named yet: `/batch pair`." : `Now ${joinAnd(pairs)}.`}`,
  usualMeasures: "Measures: to 0.1 ml under 10 ml, 0.5 ml under 25 ml, else whole ml.",
  measure: (ml: string) => `Measures: to **${ml}**; plans round to it and say how far off the strength is.`,
};
export type BathsWords = typeof en;
