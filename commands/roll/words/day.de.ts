import type { DayWords } from "./day.en.ts";

export const de: DayWords = {
  noDay: (typed) =>
    `„${typed}“ kann ich nicht als Tage lesen. Schreib 2026-03-01, 2026-03, heute, letzte Woche oder 3 Wochen.`,
};
