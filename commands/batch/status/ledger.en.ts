import type { Destination } from "../../../store/shapes/ledger.ts";

/* A line of a ledger, part by part; `by` is who wrote it. */

export const en = {
  clears: (seconds: string) => `clears in ${seconds}`,
  mixed: (what: string, by: string) => `mixed ${what} (${by})`,
  tabular: (rolls: string) => `${rolls} of tabular-grain film`,
  fibre: (prints: string) => `${prints} of fibre paper`,
  used: (what: string, run: string | null, by: string, allowedByLine: number | null) =>
    `used: ${what} (${run === null ? "" : `${run}, `}${by}${allowedByLine === null ? "" : `, exhausted, allowed by line ${allowedByLine}`})`,
  silver: (gramsPerLitre: string) => `silver ${gramsPerLitre} g/l`,
  tested: (readings: string, by: string) => `tested: ${readings} (${by})`,
  to: {
    silver: "to the silver collection",
    drain: "to the drain",
    waste: "to its waste container",
    supplier: "to the supplier",
  } satisfies Record<Destination, string> as Record<Destination, string>,
  out: (ml: string, to: string) => `, ${ml} out ${to}`,
  topped: (ml: string, out: string, note: string, by: string) => `topped up: ${ml} in${out}${note} (${by})`,
  replenished: (ml: string, out: string, note: string, by: string) =>
    `replenished: ${ml} in${out}${note} (${by})`,
  asBath: (place: number) => `as fixing bath ${place}`,
  carried: (inMl: string, outMl: string) => `${inMl} carried in, ${outMl} out`,
  discarded: (isAll: boolean, ml: string, to: string, note: string, by: string) =>
    `${isAll ? "thrown away" : "partly thrown away"}: ${ml} ${to}${note} (${by})`,
  countsNoMore: (line: number) => `line ${line} counts no more`,
  corrected: (what: string, note: string, by: string) => `corrected: ${what}${note} (${by})`,
  allowed: (person: string, note: string, by: string) =>
    `allowed exhausted for one tank of ${person}${note} (${by})`,
};
export type LedgerWords = typeof en;
