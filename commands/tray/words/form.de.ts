import type { Forms } from "../../define.ts";

const LINE = "Welche Schalenreihe; ohne Angabe die erste";

export const forms: Forms = {
  "tray plan": {
    summary: "Die Zeiten von Abzügen durch die Schalen: Entwickler, Stopp, Fixierbad, Wässerung",
    options: {
      paper: "resin-coated (PE) oder fibre (Baryt), oder die Nummer deiner Schachtel, wie X2",
      temp: "Temperatur des Entwicklers in der Schale, wie 20C",
      size: "Größe der Blätter; ohne Angabe die der Schachtel oder 18x24 cm",
      prints: "Abzüge, die zusammen durchgehen",
      line: LINE,
      fixer: "Wie stark das Fixierbad ist",
      washaid: "Barytpapier: mit Wässerungshilfe",
      lasting: "Barytpapier: Der Abzug soll halten; ein Arbeitsabzug muss es nicht",
      clear: "Erste klare Stelle deines Teststreifens in diesem Fixierbad, wie 25 s",
      factor: "Entwickeln nach erstem Erscheinen, mal diesem Faktor",
      fixtemp: "Temperatur des Fixierbads, wenn gemessen",
      watertemp: "Temperatur des Wässerungswassers, wenn gemessen",
      devbatch: "Etikett des Entwicklers, wie B3",
      fixbatch: "Etikett des Fixierbads oder des ersten von zweien, wie B4",
      fixbatch2: "Etikett des zweiten Fixierbads, wie B5",
    },
  },
  "tray factor": {
    summary:
      "Entwickeln nach erstem Erscheinen: Faktor der Substanzen, ganze Zeit, oder dein bisheriger Faktor",
    options: {
      agents: "Entwicklersubstanzen, wie metol oder pyro, metol",
      contrast: "Wie kontrastreich die Abzüge werden sollen",
      factor: "Ein Faktor, den du kennst, wie 15",
      seen: "Wann das Bild zuerst erschien, wie 9 s",
      whole: "Die ganze Entwicklungszeit, wie 2:15",
    },
  },
  "tray lines": {
    summary: "Die Schalenreihen: wer worin ist, wer wartet, wann Platz ist, und das Klingeln",
    options: {},
  },
  "tray wait": {
    summary: "Weißes Licht ist angekündigt: sagen, dass dein Papier noch offen liegt",
    options: {},
  },
  "tray lights": {
    summary: "Weißes Licht ankündigen: alle an den Schalen warnen, oder hören, was noch nicht fixiert ist",
    options: {
      in: "Wie lange noch, wie 60 s",
      sure: "Ich habe gesehen, dass alles Papier abgedeckt ist",
    },
  },
  "tray test": {
    summary: "Ein Dunkelkammerlicht prüfen: Münzen auf grauem Papier, Schritt für Schritt angesagt",
    options: {
      lamp: "Welches Dunkelkammerlicht: ein Name oder eine Nummer",
      minutes: "Stufen in Minuten, wie 1, 3, 7",
    },
  },
  "tray lamp": {
    summary: "Notieren, was die Probe eines Dunkelkammerlichts zeigt: daraus folgt seine sichere Zeit",
    options: {
      lamp: "Welches Dunkelkammerlicht; ohne Angabe alle",
      before: "Erste sichtbare Münze in Reihe 1, Minuten; ohne Angabe keine",
      after: "Erste sichtbare Münze in Reihe 2, Minuten; ohne Angabe keine",
      alone: "Erste Veränderung am Streifen ohne Grau, Minuten; ohne Angabe keine",
      longest: "Die längste Stufe, die du versucht hast, Minuten",
      shortest: "Die kürzeste Stufe, Minuten",
      next: "Tage bis zur nächsten Probe",
    },
  },
  "tray black": {
    summary: "Einen Versuch für volles Schwarz notieren: kürzeste Zeit, und ab wann es verfärbt",
    options: {
      least: "Die kürzeste deiner Zeiten, die volles Schwarz gab, wie 140 s",
      stain: "Die kürzeste, die verfärbte, wie 280 s",
      at: "Temperatur des Versuchs; ohne Angabe die der Zeiten dieser Reihe",
      line: LINE,
    },
  },
  "tray set": {
    summary: "Eine Schalenreihe einrichten: Entwickler, Zeiten, Plätze, Fixierbäder",
    options: {
      line: "Nummer der Reihe; ohne Angabe 1",
      developer: "Name des Papierentwicklers",
      dilution: "Konzentrat + Wasser, wie 1+9",
      rc: "Seine Zeit für PE-Papier, wie 60 s",
      fibre: "Seine Zeit für Barytpapier, wie 2 min",
      at: "Die Temperatur dieser Zeiten; ohne Angabe 20C",
      per10: "Sein Faktor je 10 °C, wenn der Hersteller einen nennt",
      factor: "Entwickeln nach erstem Erscheinen, mal diesem Faktor",
      stop: "Was den Entwickler stoppt",
      baths: "Fixierbäder nacheinander: 1 oder 2",
      drain: "So lange vor dem Ende herausheben, wie 10 s",
      places: "Abzüge 20x25 cm auf einmal im Entwickler",
      stopplaces: "Abzüge 20x25 cm auf einmal im Stoppbad",
      fixplaces: "Abzüge 20x25 cm auf einmal in jedem Fixierbad",
      washplaces: "Abzüge 20x25 cm auf einmal in der Wässerung",
      remove: "Nimmt die Reihe von der Liste",
    },
  },
};
