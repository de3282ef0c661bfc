import { formatNumber } from "../../speech/wording.ts";
export const en = {
  noSteps: (most: number, longest: number) =>
    `Write the steps in whole minutes with commas between, like 1, 3, 7: at most ${most}, each at most ${longest}.`,
  head: (lamp: string, minutes: number, plan: string) =>
    `**About ${formatNumber(minutes)} min under the safelight ${lamp}** (${plan}): I call each coin.`,
  before:
    "You need a sheet of your paper, a card, coins, and the exposure that gives a light grey (density 0.25 to 0.50: just clearly darker than paper).",
  steps: (minutes: string) =>
    `Row 1 has the lamp before the grey, row 2 after it: ${minutes} min each. Paper that only lies under the lamp would miss the damage: highlights dull before the borders fog.`,
  wait: "Coming out of fluorescent light wait 5 min, and 10 until your eyes see. It is the lamp that is tested, not this page: lay the phone face down, and go by its sound.",
  start: "Start",
};
export type TestWords = typeof en;
