import { de as batch } from "../words/batch.de.ts";
import type { TakeWords } from "./en.ts";

export const de: TakeWords = {
  noRun: "Du hast keinen Lauf. Nenn die Flasche beim Planen: `/plan fixbatch:B5`.",
  whichRun: "Du hast mehrere Läufe. Sag, welchen: `run:R7`.",
  unknownRun: (typed) => `Einen Lauf ${typed} gibt es nicht. Deine zeigt \`/run status\`.`,
  notYours:
    "Dieser Lauf gehört jemand anderem. Nur wem er gehört, eine Hilfskraft oder die Lehrkraft kann ihn ändern.",
  noBathToCome: (run, kind, name) =>
    `In ${run} kommt kein Bad dieser Art mehr aus einer Flasche (${batch.kind[kind]}), ${name} wird also nicht gebraucht. Es wurde nichts geändert.`,
  planAgain: (name, label) =>
    `${name} braucht eine andere Entwicklungszeit. Mach damit einen neuen Plan: \`/plan devbatch:${label}\`.`,
  taken: (label, step, run, time) =>
    `**${label}** für ${run}, ${step}${time === null ? "" : `, ${time} lang`}.`,
  bath: "Bad",
};
