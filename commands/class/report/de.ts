import type { ReportWords } from "./en.ts";

export const de: ReportWords = {
  language: "de",
  locale: "de-DE",
  head: (from, to, rolls, people) =>
    `${from} bis ${to}${rolls === 0 ? "" : `: ${rolls === 1 ? "1 Film" : `${rolls} Filme`} von ${people === 1 ? "1 Person" : `${people} Personen`}`}`,
  finished: (finished, rolls) =>
    rolls === 1
      ? `${finished} von 1 Film kam bis zum Ende.`
      : `${finished} von ${rolls} Filmen ${finished === 1 ? "kam" : "kamen"} bis zum Ende.`,
  noneCalled: "Noch bekam kein Lauf ein Signal.",
  onTime: (percent, runs) =>
    `Jedes Signal rechtzeitig: ${percent} von ${runs === 1 ? "1 Lauf" : `${runs} Läufen`}.`,
  dose: (median, low, high) =>
    `Entwicklung: ${median} % des Plans sind üblich; 9 von 10 Filmen liegen zwischen ${low} und ${high} %.`,
  faulty: (percent) => `Mit einem Fehler: ${percent}.`,
  rated: (mean, count) => `Im Mittel mit ${mean} von 5 gewertet (${count} gewertet).`,
  prints: (count, people) =>
    `${count === 1 ? "1 Abzug" : `${count} Abzüge`} von ${people === 1 ? "1 Person" : `${people} Personen`}.`,
  papers: (list) => `Papiere: ${list}`,
  printed: "Abzüge",
  used: (developer, litres) => `${developer}: ${litres} verbraucht`,
  usedConcentrate: (developer, litres, concentrate) =>
    `${developer}: ${litres}, davon ${concentrate} Konzentrat`,
  mixed: (list) => `Angesetzt: ${list}`,
  noFixer: "Fixierbad gesammelt: keines",
  fixer: (litres, silver) => `Fixierbad gesammelt: ${litres}, Silber ${silver}`,
  grams: (low, high) => (low === high ? `${low} g` : `${low} bis ${high} g`),
  ruleOfThumb: "(das Silber nach einer Faustregel, nicht gemessen)",
  cut: "Nur die neuesten 10.000 Filme sind darin: Wähl einen kürzeren Zeitraum.",
  noRolls: "In dieser Zeit endete kein Film, und es gibt keinen Abzug: noch nichts zu berichten.",
  weeks: "Filme je Woche",
  doses: "Entwicklung in % des Plans",
  noDose: "Noch ist keine Entwicklung verzeichnet.",
  faults: "Gesehene Fehler",
  noFaults: "Keine verzeichnet.",
  chemistry: "Chemie",
  weekFrom: "Woche ab",
  films: "Filme",
  film: "Film",
  fault: "Fehler",
  rolls: "Filme",
  silver:
    "Verbrauchtes Fixierbad enthält Silber: Es wird gesammelt, nie weggegossen. Etiketten, Sicherheitsdatenblätter und die Regeln am Ort entscheiden.",
};
