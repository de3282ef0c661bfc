import { inEach } from "../speech/language.ts";
import { formatDilution, plain } from "../speech/wording.ts";
import type { PlanFault } from "./request.ts";
import { de } from "./words/fault.de.ts";
import { en } from "./words/fault.en.ts";

/* Why there is no plan, and what would make one. */

const words = inEach({ en, de });

type Words = { readonly [C in PlanFault["code"]]: (fault: Extract<PlanFault, { code: C }>) => string };

const PLAN_FAULT_TEXT: Words = {
  ERR_TOO_COLD: ({ tenthsC, nearestTenthsC }) => words().tooCold(tenthsC, nearestTenthsC),
  ERR_TOO_HOT: ({ tenthsC, nearestTenthsC }) => words().tooHot(tenthsC, nearestTenthsC),
  ERR_PULLED_TOO_FAR: ({ exposureIndex, nearest }) => words().pulledTooFar(exposureIndex, nearest),
  ERR_PUSHED_TOO_FAR: ({ exposureIndex, nearest }) => words().pushedTooFar(exposureIndex, nearest),
  ERR_TOO_MANY_ROLLS: ({ rolls, reels, tank }) => words().tooManyRolls(tank, reels, rolls),
  ERR_WRONG_FORMAT: ({ format, takes, tank }) => words().wrongFormat(tank, takes, format),
  ERR_NOT_COVERED: ({ volumeMl, neededMl }) => words().notCovered(volumeMl, neededMl),
  ERR_NO_CONCENTRATE: ({ volumeMl, dilution, leastMl }) =>
    words().noConcentrate(volumeMl, formatDilution(dilution), leastMl),
  ERR_WRONG_FRAME: ({ format, frame, takes }) => words().wrongFrame(format, frame, takes),
  ERR_ONE_SHOT: ({ filmsDone }) => words().oneShot(filmsDone),
  ERR_USED_UP: ({ filmsDone, maxFilms }) => words().usedUp(filmsDone, maxFilms),
  ERR_CANNOT_SHARE: ({ films }) =>
    words().cannotShare(films.map(({ film, seconds }) => words().filmTime(plain(film), seconds))),
};

export function sayPlanFault(fault: PlanFault): string {
  return (PLAN_FAULT_TEXT[fault.code] as (fault: PlanFault) => string)(fault);
}
