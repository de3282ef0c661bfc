import { saySeconds } from "../../speech/wording.ts";
import type { Form } from "./long.ts";

export const en = {
  noNeed: (seconds: number) =>
    `**${saySeconds(seconds)}**, as metered: up to 1 s film needs no correction (Kodak E-31: the law holds from about 1/5 to 1/1000 s).`,
  head: (seconds: number, metered: number) =>
    `**${saySeconds(seconds)}** for ${saySeconds(metered)} metered: an estimate, the middle of what is published.`,
  own: (seconds: number, metered: number, power: string) =>
    `**${saySeconds(seconds)}** for ${saySeconds(metered)} metered, by this film's own exponent ${power}.`,
  differ: (low: number, high: number) =>
    `Sources differ, from ${saySeconds(low)} to ${saySeconds(high)}. Make one more at twice the time: film takes too much light better than too little.`,
  forms: {
    power: "to the power of 1.25 to 1.43 by film (a copy of a maker's sheet)",
    added: "an added part by film (Bond and Gainer, in a forum)",
    book: "a table for one 400 film (Barnbaum 1994, p. 77, copied)",
    old: "an older table (a photographer's copy)",
  } satisfies Record<Form, string> as Record<Form, string>,
  answer: (seconds: string, form: string) => `- ${seconds}: ${form}`,
  range: (low: number, high: number) =>
    Math.round(low) === Math.round(high) ? saySeconds(low) : `${saySeconds(low)} to ${saySeconds(high)}`,
  develop: (percent: number) =>
    `Contrast rises with long exposure: develop about ${percent} % less (published: 10 to 30 %).`,
  filter: "The filter's factor is in it: filter first, then this correction.",
  tooLong: "No published form reaches so far. Open the lens, or meter at most 10 minutes.",
};
export type ExposureWords = typeof en;
