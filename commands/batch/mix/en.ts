import type { BatchKind } from "../../../store/shapes/batch.ts";
import { en as batch } from "../words/batch.en.ts";

export const en = {
  notYet: "That day is still to come. Note a bottle once it is mixed.",
  bottleTooSmall: (bottle: string, volume: string) =>
    `A bottle of ${bottle} can't hold ${volume}. Note each bottle as a batch of its own: each ages by itself.`,
  tabularAbove:
    "Tabular-grain film loads a fixer more than other film: its capacity can't be above the plain one. Give `capacity:` too.",
  trayBath:
    "A bath for paper lies in a tray for many prints: leave out `use:once`. What passes through it is counted in sheets.",
  mixed: (label: string, ml: string, bath: string, kind: BatchKind, date: string) =>
    `**${label}**: write it on the bottle. ${ml} of ${bath}, ${batch.kind[kind]}, mixed ${date}.`,
  sum: (concentrate: string, water: string, isStock: boolean) =>
    `**${water} of water, then ${concentrate} of ${isStock ? "stock" : "concentrate"}**.`,
  powder: (ml: string) => `Powder to ${ml} of stock, as its pack says.`,
  goodFor: (rolls: number, ofPaper: boolean) => `good for ${batch.rolls(rolls, ofPaper)}`,
  orTabular: (rolls: number, ofPaper: boolean) =>
    `or ${batch.rolls(rolls, ofPaper)} of ${ofPaper ? "fibre paper" : "tabular-grain film"}`,
  until: (date: string) => `until ${date}`,
  partFull: (life: string) => ` (once part-full: ${life})`,
  freshTested: (fresh: string) => `Fresh it clears film in ${fresh}; at twice that it is exhausted.`,
  testNext: (label: string) =>
    `Next: time how long a scrap of undeveloped film takes to clear in it, and note it: \`/batch test batch:${label} clearing:0:45\`.`,
  concentrateShort: (taken: string, missing: string) =>
    `${taken} of concentrate taken: that is ${missing} more than the shelf had. Put the shelf right with \`/batch restock\`.`,
  powderShort: (taken: string, missing: string) =>
    `${taken} worth of powder taken: that is ${missing} more than the shelf had. Put the shelf right with \`/batch restock\`.`,
  concentrateTaken: (taken: string, left: string) =>
    `${taken} of concentrate taken from the shelf, ${left} left.`,
  powderTaken: (taken: string, left: string) =>
    `${taken} worth of powder taken from the shelf, ${left} left.`,
  wasRatio: "I read the ratio as parts of concentrate + parts of water.",
  figures: (source: string) => `_Figures: ${source}. The label on the pack comes first._`,
};
export type MixWords = typeof en;
