import { formatBothScales, formatMl, formatSeconds, joinAnd, plain } from "../wording.ts";
import type { PlanFault } from "./request.ts";

/* Why there is no plan, and what would make one. */

type Words = { readonly [C in PlanFault["code"]]: (fault: Extract<PlanFault, { code: C }>) => string };

const PLAN_FAULT_TEXT: Words = {
  ERR_TOO_COLD: ({ tenthsC, nearestTenthsC }) =>
    `${formatBothScales(tenthsC)} is colder than this sheet allows. The nearest is ${formatBothScales(nearestTenthsC)}: warm the developer to that.`,
  ERR_TOO_HOT: ({ tenthsC, nearestTenthsC }) =>
    `${formatBothScales(tenthsC)} is hotter than this sheet allows. The nearest is ${formatBothScales(nearestTenthsC)}: cool the developer to that.`,
  ERR_PULLED_TOO_FAR: ({ exposureIndex, nearest }) =>
    `EI ${exposureIndex} is further below the film's speed than this sheet and any rule of thumb reach. The nearest is EI ${nearest}.`,
  ERR_PUSHED_TOO_FAR: ({ exposureIndex, nearest }) =>
    `EI ${exposureIndex} is further above the film's speed than this sheet and any rule of thumb reach. The nearest is EI ${nearest}.`,
  ERR_TOO_MANY_ROLLS: ({ rolls, reels, tank }) =>
    `Tank ${tank} takes ${reels}, not ${rolls} rolls. Use a larger tank, or two.`,
  ERR_WRONG_FORMAT: ({ format, takes, tank }) =>
    `Tank ${tank} takes ${takes} film, not ${format}. Choose another tank with \`/tank list\`.`,
  ERR_NOT_COVERED: ({ volumeMl, neededMl }) =>
    `${formatMl(volumeMl)} does not cover the film. Use at least ${formatMl(neededMl)}.`,
  ERR_ONE_SHOT: ({ filmsDone }) =>
    `This developer has done ${filmsDone} films in each litre, and its sheet gives no rule for using it again. Use fresh developer.`,
  ERR_USED_UP: ({ filmsDone, maxFilms }) =>
    `This developer has done ${filmsDone} films in each litre: ${maxFilms} is the most. Use fresh developer.`,
  ERR_CANNOT_SHARE: ({ films }) =>
    `These films can't share a tank: their times lie more than 10 % apart (${joinAnd(films.map(({ film, seconds }) => `${plain(film)} ${formatSeconds(seconds)}`))}). Use one tank for each, the longest first.`,
};

export function sayPlanFault(fault: PlanFault): string {
  return (PLAN_FAULT_TEXT[fault.code] as (fault: PlanFault) => string)(fault);
}
