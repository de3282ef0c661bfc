import { formatBothScales, formatMl, formatSeconds, formatTenthsC, plain } from "../wording.ts";
import type { CautionCode, Plan } from "./plan.ts";

/* The sentences of a plan's cautions: what is the matter, and what to do. */

type Detail = Plan["cautions"][number]["detail"];
type Word = (detail: Detail, plan: Plan) => string;

const number = (detail: Detail, key: string): number => Number(detail[key] ?? 0);

function sayShort(detail: Detail): string {
  const head = `Under 5 minutes development can come out uneven.`;
  if (detail["betterTenthsC"] === undefined)
    return `${head} No cooler bath of this sheet is longer: use a weaker dilution if there is a sheet for it.`;
  const better = `Better: ${formatSeconds(number(detail, "betterSeconds"))} at ${formatBothScales(number(detail, "betterTenthsC"))}.`;
  const how =
    detail["waterTenthsC"] === undefined
      ? "Cool the bottle in cold water; never put ice into the developer."
      : `Mix it with water of ${formatTenthsC(number(detail, "waterTenthsC"))} (concentrate at ${formatTenthsC(number(detail, "roomTenthsC"))}), then measure.`;
  return `${head} ${better} ${how}`;
}

const AGITATION_FAULTS: Readonly<Record<string, string>> = {
  over: "So many inversions can drive streaks from the film's perforations. Let the tank rest between bursts.",
  under: "So long a rest can leave streaks. A burst each minute is safer.",
  "no-start": "Agitate at least the first 5 seconds, to wet the film evenly and free air bells.",
};

export const CAUTION_TEXT = {
  WARN_SHORT_TIME: sayShort,
  WARN_COOL: () => "Below 18 °C all baths are slow and may work incompletely. Warm them if you can.",
  WARN_WARM: () =>
    "Above 24 °C the film's gelatin is soft and times are short. Handle it gently, keep all baths alike.",
  WARN_ONE_POINT: (detail) =>
    detail["kind"] === "one-point"
      ? `The sheet has one time only: this one follows from a factor of ${detail["factorPer10C"]} per 10 °C, and developers differ.`
      : `This lies beyond the sheet's times: it follows from a factor of ${detail["factorPer10C"]} per 10 °C, and developers differ.`,
  WARN_RULE_OF_THUMB: () =>
    "Part of this time is a rule of thumb, not a published value. Try it on a roll that matters less.",
  WARN_WASH_SHORT: (detail) =>
    `Without a wash aid handbooks ask for ${formatSeconds(number(detail, "handbookSeconds"))} to 30:00 of running water; ${formatSeconds(number(detail, "seconds"))} leaves about ${detail["hypoLeftPercent"]} % of the fixer (US Navy NAVEDTRA 14209). For negatives that must last, wash longer or use a wash aid.`,
  WARN_RETICULATION: (detail) =>
    `Two baths differ by ${formatStep(number(detail, "stepTenths"))}: the gelatin can wrinkle. Keep them within ${formatStep(number(detail, "limitTenths"))} (US Army SS0509-8; makers say ${formatStep(number(detail, "looseLimitTenths"))}).`,
  WARN_LONG_FIX: (detail) =>
    `${formatSeconds(number(detail, "seconds"))} is long for a rapid fixer: past 10 minutes it may begin to bleach. A fresh, warmer fixer is better.`,
  WARN_LITTLE_CONCENTRATE: (detail, plan) =>
    `${formatMl(number(detail, "concentrateMl"))} of concentrate is too little for ${plan.rolls === 1 ? "this film" : `${plan.rolls} films`}: the sheet asks for ${formatMl(number(detail, "neededMl"))}. Use ${formatMl(number(detail, "enoughMl"))} of developer in a larger tank, or fewer films.`,
  WARN_AGITATION: (detail) => AGITATION_FAULTS[String(detail["fault"])] ?? "",
  WARN_DRIFT: (detail) =>
    `The tank drifts towards the room (${formatTenthsC(number(detail, "roomTenthsC"))}): the time ${number(detail, "seconds") < 0 ? "is shortened" : "is lengthened"} by ${formatSeconds(Math.abs(number(detail, "seconds")))} for it. A water bath at the developer's temperature would hold it.`,
  WARN_TANK_LEAKS: (detail) =>
    `Tank ${detail["tank"]} is reported: ${plain(String(detail["condition"]))}. Take another if you can.`,
  WARN_SHARED_TANK: (detail) =>
    `The films share the tank at their middle time: up to ${detail["percent"]} % off for each.`,
  WARN_WATER_TEMPERATURE: (detail) =>
    `Wash water of ${formatBothScales(number(detail, "tenthsC"))} is outside 15.6 to 23.9 °C (60 to 75 °F): temper it.`,
  NOTE_CHEMICALS: () =>
    "Gloves and eye protection on, air moving, no food. Used fixer holds silver: back into its bottle, never down the drain. The label, the safety data sheet and local rules come first.",
} as const satisfies Record<CautionCode, Word>;

/** A difference of temperature. */
function formatStep(tenths: number): string {
  return formatTenthsC(tenths);
}

export function sayCaution(caution: Plan["cautions"][number], plan: Plan): string {
  const word: Word = CAUTION_TEXT[caution.code];
  return word(caution.detail, plan);
}
