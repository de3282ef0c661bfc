import type { DigestWords } from "./en.ts";

export const de: DigestWords = {
  noted: "Notiert.",
  before: (lead, upcoming) =>
    `**${lead}** vor jedem Kurstermin: was bereitsteht, was nachlässt, was anzusetzen ist. ${upcoming}`,
  nextComes: (relative) => `Das nächste Mal ${relative}.`,
  noPeriods: "Der Kurs hat noch keine Kurstermine: `/class periods`.",
  week: (day, time) => `**${day} ${time}**: Filme, Liter und Abfall der Woche.`,
  quiet: (from, to) =>
    `**${from}-${to}** Ruhe: Warnungen, die warten können, warten. Signale am Becken warten nie.`,
  neverQuiet: "Nie Ruhe: Warnungen kommen sofort.",
  clock: (zone) => `Alles nach der Uhr des Kurses (${zone}).`,
  periods: "Kurstermine",
  setup: "Einrichtung",
  leadRange: (most) => `Höchstens ${most} vor einem Kurstermin. Schreib es wie \`before:60 min\`.`,
};
