import type { ValueKind } from "../../../store/rolls.ts";
import type { FindWords } from "./en.ts";

const NONE: Record<ValueKind, string> = {
  film: "kein Film",
  developer: "kein Entwickler",
  person: "niemand mit Namen",
  fault: "kein Fehler",
};
const films = (count: number): string => (count === 1 ? "1 Film" : `${count} Filme`);

export const de: FindWords = {
  empty: "Das Filmbuch ist noch leer: Wenn ein Lauf endet, kommt ein Film hinein.",
  noneLike: "So einen Film gibt es im Filmbuch nicht. Lass eine Angabe weg oder nimm mehr Tage dazu.",
  tooFar: "So weit blättert niemand: Grenz die Suche ein, mit Film, Person oder `when:`.",
  pagesOnly: (pages) => (pages === 1 ? "Es gibt nur 1 Seite." : `Es gibt nur ${pages} Seiten.`),
  head: (count) => `**${films(count)}**.`,
  headOfPages: (count, page, pages) => `**${films(count)}**, Seite ${page} von ${pages}.`,
  headCapped: (count, page) => `**Mehr als ${count} Filme**, Seite ${page}.`,
  stopped: (count) => `${count} abgebrochen`,
  late: (count) => `${count} mit verspäteten Signalen`,
  faulty: (count) => `${count} mit Fehler`,
  average: (average, count) => `Wertung im Schnitt ${average} von 5 (${count} bewertet)`,
  ofNewest: (count, totals) => `Von den neuesten ${count}: ${totals}.`,
  ofAll: (totals) => `${totals}.`,
  newer: "Neuere",
  older: "Ältere",
  roll: (name, person, film, exposureIndex, developer) =>
    `${name} ${person}: ${film} bei EI ${exposureIndex} in ${developer}`,
  neverDeveloped: "nie entwickelt",
  wasStopped: "abgebrochen",
  rated: (rating) => `Wertung ${rating} von 5`,
  fault: (fault) => `Fehler: ${fault}`,
  unknownValue: (kind, typed, near) =>
    `Im Filmbuch steht ${NONE[kind]} „${typed}“.${near.length > 0 ? ` Meintest du ${near.join(" oder ")}?` : ""}`,
  daysOrder: "Der erste Tag liegt nach dem letzten. Vertausch die beiden.",
};
