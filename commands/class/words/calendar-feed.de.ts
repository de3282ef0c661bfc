import type { CalendarWords } from "./calendar-feed.en.ts";

export const de: CalendarWords = {
  period: (name) => (name === "" ? "Dunkelkammer" : `Dunkelkammer: ${name}`),
  periodDigest: "Der Kurs hört, was bereit ist und was anzusetzen ist",
  weekDigest: "Der Kurs hört Filme, Liter und Abfall der Woche",
};
