import type { FigureWords } from "./figures.en.ts";

export const de: FigureWords = {
  fault: {
    ERR_NO_CAPACITY: (typed) =>
      `„${typed}“ kann ich nicht als Ergiebigkeit lesen. Schreib zum Beispiel 20 Filme/l, 50 Blatt/l (20x25 cm), 1600 sq in/l oder 1 m2/l.`,
    ERR_CAPACITY_OF_WHAT: (typed) =>
      `${typed}: je Liter oder für die ganze Flasche? Schreib, was ein Liter schafft, etwa 20 Filme/l. Eine Angabe für die ganze Flasche teilst du durch ihre Liter.`,
    ERR_CAPACITY_RANGE: (typed) =>
      `${typed} schafft kein Bad: Die Ergiebigkeit liegt zwischen 0,25 und 100 Filmen je Liter (20 bis 8000 sq in/l). Lies das Etikett noch einmal.`,
    ERR_NO_SHELF_LIFE: (typed) =>
      `„${typed}“ kann ich nicht als Haltbarkeit lesen. Schreib zum Beispiel 24 h, 7 Tage, 6 Wochen oder 6 Monate.`,
    ERR_NO_DATE: (typed) =>
      `„${typed}“ kann ich nicht als Datum lesen. Schreib zum Beispiel 31.5.2026, heute oder morgen.`,
  },
  months: (months) => (months === 1 ? "1 Monat" : `${months} Monate`),
  days: (days) => (days === 1 ? "1 Tag" : `${days} Tage`),
};
