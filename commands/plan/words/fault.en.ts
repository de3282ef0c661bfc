import { countOf, formatBothScales, formatMl, formatSeconds, joinAnd, joinOr } from "../../speech/wording.ts";

export const en = {
  tooCold: (tenthsC: number, nearestTenthsC: number) =>
    `${formatBothScales(tenthsC)} is colder than this data sheet allows. The nearest is ${formatBothScales(nearestTenthsC)}: warm the developer to that.`,
  tooHot: (tenthsC: number, nearestTenthsC: number) =>
    `${formatBothScales(tenthsC)} is hotter than this data sheet allows. The nearest is ${formatBothScales(nearestTenthsC)}: cool the developer to that.`,
  pulledTooFar: (exposureIndex: number, nearest: number) =>
    `EI ${exposureIndex} is further below the film's speed than this data sheet and any rule of thumb reach. The nearest is EI ${nearest}.`,
  pushedTooFar: (exposureIndex: number, nearest: number) =>
    `EI ${exposureIndex} is further above the film's speed than this data sheet and any rule of thumb reach. The nearest is EI ${nearest}.`,
  tooManyRolls: (tank: number, reels: number, rolls: number) =>
    `Tank ${tank} takes ${countOf(reels, "roll")}, not ${rolls}. Use a larger tank, or two.`,
  wrongFormat: (tank: number, takes: string, format: string) =>
    `Tank ${tank} takes ${takes} film, not ${format}. Choose another tank with \`/tank list\`.`,
  notCovered: (volumeMl: number, neededMl: number) =>
    `${formatMl(volumeMl)} does not cover the film. Use at least ${formatMl(neededMl)}.`,
  noConcentrate: (volumeMl: number, dilution: string, leastMl: number) =>
    `${formatMl(volumeMl)} at ${dilution} holds too little concentrate to measure. Use at least ${formatMl(leastMl)}.`,
  wrongFrame: (format: string, frame: string, takes: readonly string[]) =>
    takes.length === 0
      ? `${format} is sheet film: it has no frames. Leave \`frame:\` out.`
      : `There is no ${frame} on ${format} film. It takes ${joinOr(takes)}.`,
  oneShot: (filmsDone: number) =>
    `This developer has done ${countOf(filmsDone, "film")} in each litre, and its data sheet gives no rule for using it again. Use fresh developer.`,
  usedUp: (filmsDone: number, maxFilms: number) =>
    `This developer has done ${countOf(filmsDone, "film")} in each litre: ${maxFilms} is the most. Use fresh developer.`,
  filmTime: (film: string, seconds: number) => `${film}: ${formatSeconds(seconds)}`,
  cannotShare: (filmTimes: readonly string[]) =>
    `These films can't share a tank: their times lie more than 10 % apart (${joinAnd(filmTimes)}). Use one tank for each, the longest first.`,
};
export type FaultWords = typeof en;
