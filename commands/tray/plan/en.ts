import { countOf } from "../../speech/wording.ts";

export const en = {
  byTime: (time: string, bath: string, temperature: string) => `**${time}** in ${bath} at ${temperature}.`,
  byFactor: (factor: string, bath: string, temperature: string, least: string) =>
    `**${factor} times first appearance** in ${bath} at ${temperature}, never under ${least}.`,
  /** `box`: `X2`, where it was named. */
  what: (prints: number, size: string, paper: string, box: string | null) =>
    `${countOf(prints, "print")} of ${size}, ${paper}${box === null ? "" : ` (box ${box})`}.`,
  planOf: (plan: string, line: number) => `${plan}, trays ${line}.`,
  from: (bottle: string) => `tray ${bottle}`,
  liftAt: (time: string) => `lift out at ${time}, let it drain`,
  neverShorter: (least: string) =>
    `Rock each tray all the time. Never out of the developer before ${least}: a print pulled early has no full black and looks mottled. Too dark by then? Leave it in, and halve the exposure of the next.`,
  start: "Start",
  restsOn: "What it rests on",
  timeRefused: (temperature: string, seconds: string, at: string) =>
    `At ${temperature} this developer would take ${seconds}: its times are for ${at}. Bring the tray nearer to that.`,
  tooMuchSilver: (label: string, measured: string | null, low: string, high: string, limit: string) =>
    `**${label} carries ${measured ?? `${low} to ${high}`} g of silver in a litre${measured === null ? ", by the prints that went through it" : ""}**: for fibre prints that last, this bath ends at ${limit} g/l. Take a fresh fixer, or two baths; what is only to be looked at can go in.`,
  workPrint: "A work print",
};
export type PlanWords = typeof en;
