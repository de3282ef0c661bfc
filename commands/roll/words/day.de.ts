import type { DayWords } from "./day.en.ts";

export const de: DayWords = {
  noDay: (typed) =>
    `„${typed}“ kann ich nicht als Tage lesen. Schreib 1.3.2026, 3.2026, heute, letzte Woche oder 3 Wochen.`,
};
