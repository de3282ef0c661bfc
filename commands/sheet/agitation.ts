import type { Agitation, Sheet } from "../../store/shapes/sheet.ts";

/* What another agitation than the sheet's does to the time. */

/** Constant for the first 30 s, then 5 s once each minute: US Navy NAVEDTRA 14209. */
export const NAVY_TANK: Agitation = {
  initialSeconds: 30,
  cycleSeconds: 60,
  burstSeconds: 5,
  manner: "inversion",
  taps: 1,
};

/** Fixer: 15 s at first, then a burst each 30 s (US Army SS0509-8, 1988). */
export const FIXER_AGITATION: Agitation = {
  initialSeconds: 15,
  cycleSeconds: 30,
  burstSeconds: 5,
  manner: "inversion",
  taps: 0,
};

/** A stop bath or rinse is short and never rests (US Army SS0509-8: continuously, 30 to 60 s). */
export const NO_REST: Agitation = {
  initialSeconds: 0,
  cycleSeconds: 0,
  burstSeconds: 0,
  manner: "continuous",
  taps: 0,
};

export const MORE_MOVEMENT_SOURCE =
  "more movement than the sheet's, so less time: rule of thumb, from memory: continuous movement cuts the time by up to 15 %, and a maker's rotary tube by none to 28 %; 30 s against 60 s between bursts is worth 7-30 %";
export const LESS_MOVEMENT_SOURCE =
  "longer rests than the sheet's, so more time: rule of thumb, from memory: continuous movement cuts the time by up to 15 %, and a maker's rotary tube by none to 28 %; 30 s against 60 s between bursts is worth 7-30 %";

/**
 * How far the rule may lie off. Of two makers' tables from memory (tests/commands/sheet/rules-spread.test.ts prints it) nine in
 * ten lie inside: between bursts each half minute and each minute the effect is half to nearly twice the rule's; from a
 * small tank to a rotary tube it is from none to a quarter less, whatever the rule says.
 */
const BURSTS_AT_LEAST = 0.5;
const BURSTS_AT_MOST = 1.8;
const ROTARY_AND_MORE = 0.78;

/** Factors of the sheet's time that an agitation may really be worth, by a rule that says `factor`. */
export function agitationRange(
  factor: number,
  isContinuous: boolean,
): { readonly low: number; readonly high: number } {
  if (factor === 1) return { low: 1, high: 1 };
  const more = factor < 1 ? ROTARY_AND_MORE : 1 / ROTARY_AND_MORE;
  const ends = isContinuous ? [1, factor * more] : [factor ** BURSTS_AT_LEAST, factor ** BURSTS_AT_MOST];
  return { low: Math.min(...ends), high: Math.max(...ends) };
}

/** Relative time against seconds of rest in a cycle. 0: continuous; 25 and 55: 5 s in each 30 s and 60 s. Beyond: our guess. */
const TIME_BY_REST = [
  [0, 0.85],
  [25, 0.89],
  [55, 1],
  [115, 1.12],
] as const;

/** Longer rests than this leave spent developer on the film: streaks from dense areas (NAVEDTRA 14209). Limit: common practice. */
const MOST_REST_SECONDS = 115;
/** Inversions without a real rest drive surges through the perforations: from memory, no source seen. */
const LEAST_REST_SECONDS = 10;
/** The first movement frees air bells and wets the film evenly: common practice, no source. */
const LEAST_FIRST_SECONDS = 5;

/** Seconds the film rests in each cycle; Infinity where nobody agitates after the start. */
export function restSeconds(agitation: Agitation): number {
  if (agitation.manner === "continuous") return 0;
  if (agitation.cycleSeconds === 0 || agitation.burstSeconds === 0) return Infinity;
  return Math.max(0, agitation.cycleSeconds - agitation.burstSeconds);
}

function relativeTime(agitation: Agitation): number {
  const rest = restSeconds(agitation);
  for (let index = 1; index < TIME_BY_REST.length; index += 1) {
    const [lowRest, low] = TIME_BY_REST[index - 1] ?? [0, 1];
    const [highRest, high] = TIME_BY_REST[index] ?? [0, 1];
    if (rest <= highRest) return low + ((rest - lowRest) / (highRest - lowRest)) * (high - low);
  }
  return TIME_BY_REST[TIME_BY_REST.length - 1]?.[1] ?? 1;
}

/** Factor of the sheet's time for this scheme; exactly 1 where both rest equally long. */
export function agitationFactor(sheet: Pick<Sheet, "agitation">, agitation: Agitation): number {
  const [planned, assumed] = [relativeTime(agitation), relativeTime(sheet.agitation)];
  return planned === assumed ? 1 : planned / assumed;
}

export type AgitationFault = "over" | "under" | "no-start";

/** What is wrong with a scheme, if anything. */
export function judgeAgitation(agitation: Agitation): AgitationFault | null {
  const rest = restSeconds(agitation);
  if (rest > MOST_REST_SECONDS) return "under";
  if (agitation.manner === "inversion" && rest < LEAST_REST_SECONDS) return "over";
  if (agitation.manner !== "continuous" && agitation.initialSeconds < LEAST_FIRST_SECONDS) return "no-start";
  return null;
}
