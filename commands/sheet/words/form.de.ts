import type { Forms } from "../../define.ts";

const film = "Name des Films";
const developer = "Name des Entwicklers";
const dilution = "Konzentrat + Wasser, wie 1+9, oder stock (Stammlösung)";

export const forms: Forms = {
  "sheet add": {
    summary: "Eine Zeit auf ein Datenblatt setzen",
    options: {
      film,
      developer,
      dilution,
      temp: "Temperatur zu dieser Zeit, wie 20C oder 68F",
      time: "Die Zeit, wie 9:00 oder 540 s",
      ei: "Belichtungsindex zu dieser Zeit; ohne Angabe die Empfindlichkeit des Films",
      speed: "Empfindlichkeit des Films; nötig für ein neues Datenblatt",
      source: "Woher die Zeit kommt",
      agitation: "Wovon die Zeiten ausgehen: anfangs/jeweils/Abstand in Sekunden, wie 30/5/60",
      factor: "Wie viel schneller der Entwickler 10 °C wärmer arbeitet, falls der Hersteller es sagt",
      coldest: "Niedrigste Temperatur, die das Datenblatt erlaubt",
      hottest: "Höchste Temperatur, die das Datenblatt erlaubt",
      minimum: "Wenigstes Konzentrat (oder Stammlösung) für einen Film, wie 100 ml",
      tabular: "Film mit Flachkristallen, wird drei Klärzeiten lang fixiert",
      reuse: "Filme je Liter/Zugabe/höchstens Filme, wie 1/10%/10",
      replace: "Ersetzt die Zeit bei derselben Temperatur und demselben EI",
    },
  },
  "sheet show": {
    summary: "Ein Datenblatt zeigen: seine Zeiten, seine Quelle, seine Kurve",
    options: { film, developer, dilution },
  },
  "sheet list": {
    summary: "Die Datenblätter des Kurses auflisten",
    options: { film: "Teil des Namens von Film oder Entwickler" },
  },
  "sheet import": {
    summary: "Zeiten aus einer eingefügten Tabelle oder einer Datei einlesen: alles oder nichts",
    options: {
      file: "Eine Tabelle aus einem Datenblatt, oder der Text einer Datei, wie /sheet export sie schreibt",
      film: "Welcher Film, wenn es nicht in der Tabelle steht",
      developer: "Welcher Entwickler, wenn es nicht in der Tabelle steht",
      dilution: "Welche Verdünnung, wenn es nicht in der Tabelle steht: 1+9",
      speed: "Empfindlichkeit des Films, wenn er neu ist",
      source: "Woher die Zeiten kommen",
      replace: "Zeiten der Datei ersetzen andere für denselben Film im selben Bad",
    },
  },
  "sheet undo": {
    summary: "Alles Eingelesene zurücknehmen, das seitdem niemand geändert hat",
    options: { import: "Welches Einlesen; ohne Angabe das letzte" },
  },
  "sheet export": {
    summary: "Die Datenblätter des Kurses als Datei mitnehmen",
    options: {
      format: "Was für eine Datei",
      film: "Nur die Datenblätter dieses Films",
    },
  },
  "sheet tablet": {
    summary:
      "Aus den Dichten eines Stufenkeils: Gradient, Empfindlichkeit und die Zeit für deinen Gradienten",
    options: {
      readings: "Zeit und Dichten jedes Streifens: 8:00 0,02 0,11 …; 11:00 …",
      file: "Dasselbe als Tabelle: eine Zeile oder Spalte je Zeit, ihre Zeit zuerst",
      step: "log Belichtung von Stufe zu Stufe: 0,15 ist eine halbe Blende",
      fog: "Schleier, wenn kein Wert ihn zeigt: 0,25",
      aim: "Der Gradient, den du willst, über 1,30 log H: 0,62",
      metered: "Die Stufe, die bekam, was der Belichtungsmesser sagte",
      ei: "Worauf der Belichtungsmesser stand",
      film: "Soll die Zeit bleiben: Name des Films",
      developer: "Soll die Zeit bleiben: Name des Entwicklers",
      dilution: "Soll die Zeit bleiben: wie 1+9, oder stock (Stammlösung)",
      temp: "Soll die Zeit bleiben: Temperatur des Entwicklers",
      save: "Die Zeit kommt auf das Datenblatt des Kurses",
    },
  },
  "sheet judge": {
    summary: "Ob die Negative des Kurses für eine andere Zeit sprechen: ein Vorschlag, keine Änderung",
    options: {
      film: "Name des Films",
      developer: "Name des Entwicklers",
      dilution: "Konzentrat + Wasser, wie 1+9, oder stock (Stammlösung)",
    },
  },
  "sheet move": {
    summary: "Alle Zeiten eines Datenblatts um Prozente ändern; die Quelle hält fest, was vorher galt",
    options: {
      film: "Name des Films",
      developer: "Name des Entwicklers",
      dilution: "Konzentrat + Wasser, wie 1+9, oder stock (Stammlösung)",
      sheet: "Statt der Namen: die Nummer des Datenblatts, wie sie auf dem Knopf von /sheet judge steht",
      percent: "Prozente dazu, unter 0 davon ab: 10, -10",
    },
  },
};
