import { formatSeconds } from "../../speech/wording.ts";

export const en = {
  /** What a plan keeps as text, in English already. */
  stored: (text: string) => text,
  point: (source: string) => `a row of the data sheet (${source})`,
  between: (sources: string) => `between rows of the data sheet (${sources})`,
  onePoint: (source: string, factor: string, range: string) =>
    `the data sheet's one row (${source}) and a factor of ${factor} per 10 °C: ${range}`,
  beyond: (source: string, factor: string, range: string) =>
    `the data sheet's nearest row (${source}) and a factor of ${factor} per 10 °C: ${range}`,
  ruleOfThumb: (source: string, range: string) => `${source}: ${range}`,
  house: (rule: string) => `house rule: ${rule}`,
  rule: (rule: string, source: string) => `${rule} (${source})`,
  range: (low: number, high: number) => `${formatSeconds(low)} to ${formatSeconds(high)}`,
  brief: {
    between: "between rows of the data sheet",
    onePoint: (factor: string) => `the data sheet's one row and a factor of ${factor} per 10 °C`,
    beyond: (factor: string) => `the data sheet's nearest row and a factor of ${factor} per 10 °C`,
    ruleOfThumb: "rule of thumb",
    house: "house rule",
  },
  restsOn: (bases: string) => `Rests on: ${bases}.`,
};
export type BasisWords = typeof en;
