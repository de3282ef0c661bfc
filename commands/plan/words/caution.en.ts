import { formatApart, formatBothScales, formatMl, saySeconds } from "../../speech/wording.ts";

const uneven = "Under 5 minutes development can come out uneven.";
const better = (seconds: number, tenthsC: number): string =>
  `Better: ${saySeconds(seconds)} at ${formatBothScales(tenthsC)}.`;

export const en = {
  shortOnly: `${uneven} No cooler bath of this data sheet is longer: use a weaker dilution if there is a data sheet for it.`,
  shortCool: (seconds: number, tenthsC: number) =>
    `${uneven} ${better(seconds, tenthsC)} Cool the bottle in cold water; never put ice into the developer.`,
  shortMix: (seconds: number, tenthsC: number, waterTenthsC: number, roomTenthsC: number) =>
    `${uneven} ${better(seconds, tenthsC)} Mix it with water of ${formatBothScales(waterTenthsC)}, the concentrate at ${formatBothScales(roomTenthsC)}, then measure.`,
  agitation: {
    over: "So many inversions can drive streaks from the film's perforations. Let the tank rest between bursts.",
    under: "So long a rest can leave streaks. A burst each minute is safer.",
    "no-start": "Agitate at least the first 5 seconds, to wet the film evenly and free air bells.",
  },
  wornFixer: (clearingSeconds: number, freshSeconds: number, seconds: number) =>
    `**The fixer is exhausted**: it clears in ${saySeconds(clearingSeconds)}, fresh it did in ${saySeconds(freshSeconds)}. Take fresh fixer; in this one the film needs ${saySeconds(seconds)}.`,
  slowFixer: (clearingSeconds: number, seconds: number) =>
    `**${saySeconds(clearingSeconds)} is slow**: a fresh rapid fixer clears film in 1 to 3 minutes. Take fresh fixer; in this one the film needs ${saySeconds(seconds)}.`,
  cool: "Below 18 °C (64 °F) all baths are slow and may work incompletely. Warm them if you can.",
  warm: "Above 24 °C (75 °F) the film's gelatin is soft and times are short. Handle it gently, keep all baths alike.",
  onePoint: (factor: string) =>
    `The data sheet has one time only: this one follows from a factor of ${factor} per 10 °C, and developers differ.`,
  beyond: (factor: string) =>
    `This lies beyond the data sheet's times: it follows from a factor of ${factor} per 10 °C, and developers differ.`,
  ruleOfThumb:
    "Part of this time is a rule of thumb, not a published value. Try it on a roll that matters less.",
  otherAgitation: (seconds: number) =>
    seconds < 0
      ? `You agitate more than the data sheet assumes: ${saySeconds(-seconds)} less. That is an estimate; the data sheet's own agitation needs none.`
      : `You agitate less than the data sheet assumes: ${saySeconds(seconds)} more. That is an estimate; the data sheet's own agitation needs none.`,
  washShort: (handbookSeconds: number, seconds: number, leftPercent: string) =>
    `Without a wash aid handbooks ask for ${saySeconds(handbookSeconds)} to 30 min of running water; ${saySeconds(seconds)} leaves about ${leftPercent} % of the fixer (US Navy NAVEDTRA 14209). For negatives that must last, wash longer or use a wash aid.`,
  reticulation: (stepTenths: number, limitTenths: number, looseTenths: number) =>
    `Two baths differ by ${formatApart(stepTenths)}: the gelatin can wrinkle. Keep them within ${formatApart(limitTenths)}, says US Army SS0509-8; makers say ${formatApart(looseTenths)}.`,
  longFix: (seconds: number) =>
    `${saySeconds(seconds)} is long for a rapid fixer: past 10 minutes it may begin to bleach. A fresh, warmer fixer is better.`,
  littleConcentrate: (ml: number, films: number, neededMl: number, enoughMl: number) =>
    `${formatMl(ml)} of concentrate is too little for ${films === 1 ? "this film" : `${films} films`}: the data sheet asks for ${formatMl(neededMl)}. Use ${formatMl(enoughMl)} of developer in a larger tank, or fewer films.`,
  strength: (percent: number) =>
    `So little can't be measured exactly: the mix is ${Math.abs(percent)} % ${percent < 0 ? "weaker" : "stronger"} than asked. More developer is nearer.`,
  bottleShort: (label: string, ml: number, volumeMl: number) =>
    `**${label} holds ${formatMl(ml)}, and the tank takes ${formatMl(volumeMl)}.** Have an aide top it up first, or take another bottle.`,
  covered: (volumeMl: number) =>
    `Does ${formatMl(volumeMl)} cover the film? That stands on the tank. Name it (\`tank:\`), and I know.`,
  drift: (roomTenthsC: number, seconds: number) =>
    `The tank drifts towards the room, ${formatBothScales(roomTenthsC)}: the time ${seconds < 0 ? "is shortened" : "is lengthened"} by ${saySeconds(Math.abs(seconds))} for it. A water bath at the developer's temperature would hold it.`,
  tankLeaks: (tank: number, condition: string) =>
    `Tank ${tank} is reported: ${condition}. Take another if you can.`,
  sharedTank: (percent: number) =>
    `The films share the tank at their middle time: up to ${percent} % off for each.`,
  waterTemperature: (tenthsC: number) =>
    `Wash water of ${formatBothScales(tenthsC)} is outside 15.6 to 23.9 °C (60 to 75 °F): temper it.`,
  chemicals:
    "Gloves and eye protection on, air moving, no food. Used fixer holds silver: back into its bottle, never down the drain. The label, the safety data sheet and local rules come first.",
};
export type CautionWords = typeof en;
