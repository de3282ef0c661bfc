import type { ReadWords } from "./en.ts";

export const de: ReadWords = {
  set: (set, where) => `**${set}** (${where}).`,
  bar: (bar) => `Feld ${bar}`,
  between: (bar, next) => `in Blenden genau zwischen Feld ${bar} und ${next}`,
  grades: (from, to, stops) => `Von ${from} zu ${to}: ${stops}.`,
  measured: "So hat es der Kurs auf diesem Papier gemessen.",
  rule: (before) =>
    `Nach der veröffentlichten Regel: eine Zeit von 00 bis 3 1/2, ab 4 das Doppelte (vorher ${before}). Bei anderem Licht brauchte jemand von 2 auf 1 1/2 das 1,22-fache: Mach zur Sicherheit einen Teststreifen.`,
  noHarder: (grade) => `Über ${grade} hinaus geht es nicht: Die Gradation bleibt.`,
  cost: (stops) => `Durch die Schritte der Zeitschaltuhr sind es ${stops}.`,
  next: "Mach damit den Abzug und trag ihn ein: `/print log`.",
  log: "Abzug eintragen",
  finer: (stops) => `Streifen darum herum, ${stops}`,
  noBar: (bars) =>
    `Dein Teststreifen hat die Felder 1 bis ${bars}. Drück auf das richtige, oder schreib 2-3 für dazwischen.`,
  gradeUnknown:
    "Der Teststreifen nennt keine Gradation. Mach ihn mit `grade:2` neu, dann sagt eine halbe Stufe mehr etwas aus.",
  isGraded:
    "Das ist ein Papier fester Gradation: Eine andere ist eine andere Schachtel. Mach darauf einen Teststreifen.",
};
