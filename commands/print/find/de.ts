import type { FindWords } from "./en.ts";

const prints = (count: number): string => (count === 1 ? "1 Abzug" : `${count} Abzüge`);

export const de: FindWords = {
  empty: "Im Buch der Abzüge steht noch nichts. `/print log` trägt den ersten ein.",
  noneLike: "So einen Abzug gibt es nicht. Lass eine Angabe weg, oder nimm mehr Tage.",
  pagesOnly: (pages) => `Es gibt nur ${pages === 1 ? "1 Seite" : `${pages} Seiten`}.`,
  head: (total) => `**${prints(total)}**`,
  headOfPages: (total, page, pages) => `**${prints(total)}**, Seite ${page} von ${pages}`,
  rated: (rating) => `Wertung ${rating}`,
  fault: (fault) => `Fehler: ${fault}`,
  newer: "Neuere",
  older: "Ältere",
};
