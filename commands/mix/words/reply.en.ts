import { formatBothScales, formatMl } from "../../speech/wording.ts";

export const en = {
  nothingGiven: "Say how much: `total:300 ml`, or `concentrate:` or `water:` if that is what you have.",
  sum: (concentrateMl: number, waterMl: number, totalMl: number) =>
    `${formatMl(concentrateMl)} and ${formatMl(waterMl)} do not make ${formatMl(totalMl)}. Measure again, or leave the total out.`,
  otherDilution: (given: string, asked: string, rightWaterMl: number) =>
    `That is ${given}, not ${asked}. For ${asked} that much concentrate takes ${formatMl(rightWaterMl)} of water.`,
  tooLittle: (leastTotalMl: number) =>
    `That holds too little concentrate to measure. Make at least ${formatMl(leastTotalMl)}.`,
  stockHasNoWater: "Stock takes no water. Say how much you need: `total:300 ml`.",

  stockOnly: (ml: number) => `**${formatMl(ml)}** of stock, no water.`,
  diluted: (concentrateMl: number, waterMl: number, totalMl: number, dilution: string) =>
    `**${formatMl(concentrateMl)} concentrate + ${formatMl(waterMl)} water** = ${formatMl(totalMl)} at ${dilution}.`,
  strength: (percent: number, mixed: string) =>
    `As measured that is ${mixed}, ${Math.abs(percent)} % ${percent < 0 ? "weaker" : "stronger"} than asked. A larger amount comes nearer.`,
  percent: (have: string, want: string) => `${have} % becomes ${want} %.`,
  isRight: (mix: string) => `${mix} That is right.`,
  readRatio: (dilution: string) => `I read it as ${dilution}: makers' 1:9 means 1+9.`,
  howToMix:
    "Water first, then the concentrate. Acid goes into water, never water into acid. Gloves and goggles on; the label comes first.",

  stockCare: "Gloves and goggles on; the label comes first.",

  noWaterLeft: (concentrateMl: number, totalMl: number) =>
    `${formatMl(concentrateMl)} of concentrate leaves no room for water in ${formatMl(totalMl)}. Stand the bottle in warm or cold water instead, and measure.`,
  hotIsCold: (hotTenthsC: number, coldTenthsC: number) =>
    `The hot water, ${formatBothScales(hotTenthsC)}, is colder than the cold, ${formatBothScales(coldTenthsC)}. Swap them.`,
  hotFallsShort: (nearestTenthsC: number) =>
    `Even all hot water does not reach that. The nearest is ${formatBothScales(nearestTenthsC)}: use hotter water.`,
  coldFallsShort: (nearestTenthsC: number) =>
    `Even all cold water does not reach that. The nearest is ${formatBothScales(nearestTenthsC)}: cool the vessel from outside with ice water, never put ice into the bath.`,

  tempered: (hotMl: number, coldMl: number, totalMl: number, reachedTenthsC: number) =>
    `**${formatMl(hotMl)} hot + ${formatMl(coldMl)} cold** = ${formatMl(totalMl)} at ${formatBothScales(reachedTenthsC)}.`,
  temperedWith: (
    hotMl: number,
    coldMl: number,
    concentrateMl: number,
    totalMl: number,
    reachedTenthsC: number,
  ) =>
    `**${formatMl(hotMl)} hot + ${formatMl(coldMl)} cold + ${formatMl(concentrateMl)} concentrate** = ${formatMl(totalMl)} at ${formatBothScales(reachedTenthsC)}.`,
  readParts: "I read the dilution as parts: makers' 1:9 means 1+9.",
  jugTakesHeat: "The jug takes some heat too: measure, then correct with a little hot or cold.",
};
export type ReplyWords = typeof en;
