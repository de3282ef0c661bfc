import type { PeriodsWords } from "./periods.en.ts";

export const de: PeriodsWords = {
  weekdays: ["Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag", "Samstag", "Sonntag"],
  period: (day, from, to) => `${day} ${from}-${to}`,
  named: (period, name) => `${period}, ${name}`,
  faults: {
    ERR_NO_DAYS: (typed) => `„${typed}“ kann ich nicht als Tage lesen. Schreib sie wie mo, mi oder mo-fr.`,
    ERR_NO_CLOCK: (typed) => `„${typed}“ kann ich nicht als Uhrzeit lesen. Schreib sie wie 18:00.`,
    ERR_BELL_BEFORE_START: (from, to) =>
      `Von ${from} bis ${to}: Die Klingel muss nach dem Anfang kommen, am selben Tag. Mitternacht ist 24:00.`,
    ERR_OVERLAP: (other) =>
      `Das läuft in einen anderen Kurstermin hinein: ${other}. Nimm den zuerst heraus, oder wähl andere Zeiten.`,
    ERR_TOO_MANY_PERIODS: (most) => `Ein Kurs hat höchstens ${most} Kurstermine in der Woche.`,
  },
  noDay: (typed) => `„${typed}“ kann ich nicht als Tag lesen. Schreib ihn wie montag.`,
  noClock: (typed) => `„${typed}“ kann ich nicht als Uhrzeit lesen. Schreib sie wie 22:00.`,
};
