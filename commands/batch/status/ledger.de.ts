import type { LedgerWords } from "./ledger.en.ts";

export const de: LedgerWords = {
  clears: (seconds) => `klärt in ${seconds}`,
  mixed: (what, by) => `angesetzt: ${what} (${by})`,
  tabular: (rolls) => `${rolls} mit Flachkristallen`,
  fibre: (prints) => `${prints} Barytpapier`,
  used: (what, run, by, allowedByLine) =>
    `benutzt: ${what} (${run === null ? "" : `${run}, `}${by}${allowedByLine === null ? "" : `, verbraucht, erlaubt in Zeile ${allowedByLine}`})`,
  silver: (gramsPerLitre) => `Silber ${gramsPerLitre} g/l`,
  tested: (readings, by) => `geprüft: ${readings} (${by})`,
  to: {
    silver: "in die Silbersammlung",
    drain: "in den Ausguss",
    waste: "in den eigenen Kanister",
    supplier: "an den Lieferanten",
  },
  out: (ml, to) => `, ${ml} heraus ${to}`,
  topped: (ml, out, note, by) => `aufgefüllt: ${ml} hinein${out}${note} (${by})`,
  replenished: (ml, out, note, by) => `regeneriert: ${ml} hinein${out}${note} (${by})`,
  asBath: (place) => `als Fixierbad ${place}`,
  carried: (inMl, outMl) => `${inMl} eingeschleppt, ${outMl} ausgeschleppt`,
  discarded: (isAll, ml, to, note, by) =>
    `${isAll ? "entsorgt" : "zum Teil entsorgt"}: ${ml} ${to}${note} (${by})`,
  countsNoMore: (line) => `Zeile ${line} zählt nicht mehr`,
  corrected: (what, note, by) => `richtiggestellt: ${what}${note} (${by})`,
  allowed: (person, note, by) => `verbraucht erlaubt für eine Dose von ${person}${note} (${by})`,
};
