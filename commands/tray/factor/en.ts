import type { Contrast } from "../factor.ts";

export const en = {
  nothingGiven:
    "Say what you know: `agents:metol` gives a factor; `factor:15 seen:9 s` the whole time; `seen:30 s whole:20:00` the factor you had.",
  unknownAgent: (typed: string, known: string) =>
    `There is no factor for ${typed}. Known are ${known}; of mixed ones name all, with commas. Hydroquinone's and MQ's are lost in the source: give \`factor:\`.`,
  factor: (factor: string) => `**${factor} times first appearance.**`,
  whole: (inAll: string, factor: string, seen: string) =>
    `**${inAll}** in all: ${factor} times ${seen}, the first appearance.`,
  source: (agents: string, contrast: Contrast) =>
    `${agents}, ${contrast}: one firm's factors (Cyclopedia of Photography); of equal parts, the mean.`,
  pyro: (factor: number, softer: string) =>
    `Sources differ: a maker's handbook (Wellington) has ${factor} for pyro-soda, ${softer} where that is too strong.`,
  limits:
    "It suits bromide prints, not fast contact papers (Clerc, 573), and never goes under what full black needs.",
};
export type FactorWords = typeof en;
