import type { DigestWords } from "./en.ts";

export const de: DigestWords = {
  noted: "Notiert.",
  before: (lead, upcoming) =>
    `**${lead}** vor jeder Stunde: was bereitsteht, was müde ist, was anzusetzen ist. ${upcoming}`,
  nextComes: (relative) => `Das nächste Mal ${relative}.`,
  noPeriods: "Der Kurs hat noch keine Stunden: `/class periods`.",
  week: (day, time) => `**${day} ${time}**: Filme, Liter und Abfall der Woche.`,
  quiet: (from, to) =>
    `**${from}-${to}** Ruhe: Warnungen, die warten können, warten. Rufe am Becken warten nie.`,
  neverQuiet: "Nie Ruhe: Warnungen kommen sofort.",
  clock: (zone) => `Alles nach der Uhr des Kurses (${zone}).`,
  periods: "Stunden",
  setup: "Einrichtung",
  leadRange: (most) => `Höchstens ${most} vor einer Stunde. Schreib es wie \`before:60 min\`.`,
};
