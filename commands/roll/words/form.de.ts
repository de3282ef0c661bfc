import type { Forms } from "../../define.ts";

const roll = "Welcher Film, etwa L12; ohne Angabe dein neuester";
const from = "Ab diesem Tag";
const to = "Bis zu diesem Tag, ihn eingeschlossen";

export const forms: Forms = {
  "roll show": {
    summary: "Ein Film: wie geplant und wie es wirklich lief",
    options: { roll },
  },
  "roll note": {
    summary: "Eine Notiz zu einem Film schreiben; mit ihren Wörtern findet man ihn wieder",
    options: { roll, note: "Was du gesehen hast; höchstens 2000 Zeichen" },
  },
  "roll rate": {
    summary: "Die Negative bewerten, von 1 (unbrauchbar) bis 5 (lassen sich mühelos vergrößern)",
    options: { roll, rating: "1 bis 5" },
  },
  "roll frame": {
    summary: "Bilder eines Films kennzeichnen und wiederfinden: bestes, abziehen, unscharf, verloren",
    options: {
      roll: "Welcher Film, etwa L12; zum Finden: jeder, wenn er fehlt",
      frame: "Welche Bilder, etwa 7 oder 3, 7-9; zum Finden: keine",
      mark: "Welches Zeichen; zum Finden: Bilder, die es haben",
    },
  },
  "roll find": {
    summary:
      "Im Filmbuch suchen: nach Wörtern, Person, Film, Entwickler, Ansatz, Dose, Tagen, Fehler, Wertung",
    options: {
      words: "Wörter aus Notiz, Film und Namen; ihr Anfang genügt",
      person: "Wessen Film",
      film: "Name des Films",
      developer: "Name des Entwicklers",
      batch: "Ansatz, etwa B3",
      tank: "Nummer der Dose",
      when: "1.3.2026, 3.2026, heute, letzte Woche, 3 Wochen",
      from,
      to,
      fault: "Was man sah, etwa dünn; oder any für irgendeinen",
      rating: "Wertung von 1 bis 5",
      outcome: "Wie der Lauf endete",
      late: "Nur mit Signalen, die zu spät kamen oder ausfielen",
      page: "Seite, ab 1",
    },
  },
  "roll fault": {
    summary: "Vom Bild auf dem Negativ zur Ursache, abgewogen nach dem, was im Filmbuch steht",
    options: {
      roll,
      kind: "Ungefähr, was du siehst",
      look: "Was du siehst",
      edge: "Namen und Zahlen des Herstellers am Rand",
      margin: "Der Rand außen und zwischen den Bildern",
      place: "Wo du es siehst",
      sure: "no: nicht weiter fragen",
      cause: "Welche Ursache es war; oder unknown",
    },
  },
  "roll photo": {
    summary: "Das Foto vom Kontaktbogen eines Films zeigen, dazulegen oder entfernen",
    options: {
      roll,
      remove: "Das Foto entfernen",
      photo: "Das Foto dazu: JPEG oder PNG",
    },
  },
  "roll export": {
    summary: "Das Filmbuch als Datei, CSV oder JSON: alles zu jedem Film außer dem Foto",
    options: {
      as: "Was für eine Datei",
      words: "Nur Filme mit diesen Wörtern",
      person: "Nur die Filme dieser Person",
      film: "Nur diesen Film",
      developer: "Nur diesen Entwickler",
      when: "1.3.2026, 3.2026, letzte Woche, 3 Wochen",
      from,
      to,
      before: "Nur ältere Filme als dieser: L1200",
    },
  },
};
