import { formatBothScales, formatNumber, formatSeconds, joinAnd, saySeconds } from "../../speech/wording.ts";

export const en = {
  noReadings:
    "What did you read? Give `readings:8:00 0.02 0.11 …`, the time first, or a `file:` with a row or a column for each time.",
  noTime: (typed: string) =>
    `I find no developing time in ${typed}. Begin each strip with it, then its densities: \`8:00 0.02 0.11 0.21 …\`; a semicolon between strips.`,
  noDensity: (typed: string) =>
    `${typed} is no density. Write it like 0.62, or as matched seconds: 13/10 for 13 s where clear film needs 10.`,
  fewSteps: (seconds: number, count: number) =>
    `The strip of ${formatSeconds(seconds)} has ${count} readings. Six are the least for a curve.`,
  wanted: (seconds: number, low: number, high: number, aim: string) =>
    Math.round(high) - Math.round(low) < 2
      ? `**${formatSeconds(seconds)}** for a gradient of ${aim}: an estimate between the times you tried.`
      : `**${formatSeconds(seconds)}** for a gradient of ${aim}, estimate: ${formatSeconds(low)} to ${formatSeconds(high)} by the scatter of the readings.`,
  notBracketed: (aim: string) =>
    `**No time yet for a gradient of ${aim}**: the times you tried do not lie round it. Develop one more strip, longer if they are flatter, shorter if harder.`,
  oneStrip: "**One time only**: with a second one I can find the time for the gradient you want.",
  strip: (seconds: number, values: readonly string[]) => `- ${formatSeconds(seconds)}: ${values.join(", ")}`,
  triangle: (value: string) => `gradient ${value} over 1.30 log H`,
  mean: (value: string) => `${value} over 1.50`,
  index: (value: string) => `contrast index ${value}`,
  gamma: (value: string) => `gamma ${value}`,
  fog: (value: string) => `base and fog ${value}`,
  tooShort: "not enough steps for a gradient",
  speed: (index: number, seconds: number) =>
    `Effective exposure index about ${index}, at ${saySeconds(seconds)}.`,
  kinks: (seconds: number, steps: readonly number[]) => {
    const which = joinAnd(steps.map(String));
    const kink =
      steps.length === 1
        ? `step ${which} breaks the line of its neighbours. Read it`
        : `steps ${which} break the line of their neighbours. Read them`;
    return `Strip of ${formatSeconds(seconds)}: ${kink} again: it is a slip, or a true kink. Nothing is smoothed.`;
  },
  differ:
    "The constructions are not the same number: ISO 6:1993 takes 1.30 log H (aim 0.62), a British maker 1.50, Kodak's index two arcs (aim 0.56 to 0.60: US Navy).",
  saved: (seconds: number, tenthsC: number, sheet: string) =>
    `${formatSeconds(seconds)} at ${formatBothScales(tenthsC)} is in the data sheet of ${sheet} now.`,
  needForSave: "To keep it, name `film:`, `developer:`, `dilution:` and `temp:` too.",
  nothingToSave: "There is no time to keep: the times you tried do not lie round the gradient you want.",
  source: (date: string, person: string) => `measured by this class, ${date}, by ${person}`,
  pictureAlt: (strips: string) => `Density over log exposure, a curve for each developing time: ${strips}.`,
  axes: { x: "log exposure", y: "density" },
  number: (value: number) => formatNumber(Math.round(value * 100) / 100),
};
export type TabletWords = typeof en;
