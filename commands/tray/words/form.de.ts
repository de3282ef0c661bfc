import type { Forms } from "../../define.ts";

const LINE = "Welche Schalenreihe; ohne Angabe die erste";

export const forms: Forms = {
  "tray plan": {
    summary: "Die Zeiten von Abzügen durch die Schalen: Entwickler, Stopp, Fixierbad, Wässerung",
    options: {
      paper: "resin-coated (PE) oder fibre (Baryt): steht auf der Packung",
      temp: "Temperatur des Entwicklers in der Schale, wie 20C",
      size: "Größe der Blätter",
      prints: "Abzüge, die zusammen durchgehen",
      line: LINE,
      fixer: "strong: Schnellfixierbad, so stark wie für Film",
      washaid: "Barytpapier: yes, mit Wässerungshilfe",
      lasting: "Barytpapier: no, ein Arbeitsabzug, der nicht halten muss",
      clear: "Erste klare Stelle deines Teststreifens in diesem Fixierbad, wie 25 s",
      factor: "Entwickeln nach erstem Erscheinen, mal diesem Faktor",
      fixtemp: "Temperatur des Fixierbads, wenn gemessen",
      watertemp: "Temperatur des Wässerungswassers, wenn gemessen",
      devbatch: "Schild des Entwicklers, wie B3",
      fixbatch: "Schild des Fixierbads oder des ersten von zweien, wie B4",
      fixbatch2: "Schild des zweiten Fixierbads, wie B5",
    },
  },
  "tray factor": {
    summary: "Entwickeln nach erstem Erscheinen: Faktor der Substanzen, ganze Zeit, oder dein Faktor",
    options: {
      agents: "Entwicklersubstanzen, wie metol oder pyro, metol",
      contrast: "soft: weiche, normal, strong: kräftige Abzüge",
      factor: "Ein Faktor, den du kennst, wie 15",
      seen: "Wann das Bild zuerst erschien, wie 9 s",
      whole: "Die ganze Entwicklungszeit, wie 2:15",
    },
  },
  "tray lines": {
    summary: "Die Schalenreihen: wer worin ist, wer wartet, wann Platz ist, und das Klingeln",
    options: {},
  },
  "tray black": {
    summary: "Notiert einen Versuch für volles Schwarz: kürzeste Zeit, und ab wann es verfärbt",
    options: {
      least: "Die kürzeste deiner Zeiten, die volles Schwarz gab, wie 140 s",
      stain: "Die kürzeste, die verfärbte, wie 280 s",
      at: "Temperatur des Versuchs; ohne Angabe die der Zeiten dieser Reihe",
      line: LINE,
    },
  },
  "tray set": {
    summary: "Richtet eine Schalenreihe ein: Entwickler, Zeiten, Plätze, Fixierbäder",
    options: {
      line: "Nummer der Reihe; ohne Angabe 1",
      developer: "Name des Papierentwicklers",
      dilution: "Konzentrat + Wasser, wie 1+9",
      rc: "Seine Zeit für PE-Papier, wie 60 s",
      fibre: "Seine Zeit für Barytpapier, wie 2 min",
      at: "Die Temperatur dieser Zeiten; ohne Angabe 20C",
      per10: "Sein Faktor je 10 °C, wenn der Hersteller einen nennt",
      factor: "Entwickeln nach erstem Erscheinen, mal diesem Faktor",
      stop: "acid: Stoppbad; water: Wasser",
      baths: "Fixierbäder nacheinander: 1 oder 2",
      drain: "So lange vor dem Ende herausheben, wie 10 s",
      places: "Abzüge 20x25 cm auf einmal im Entwickler",
      stopplaces: "Abzüge 20x25 cm auf einmal im Stoppbad",
      fixplaces: "Abzüge 20x25 cm auf einmal in jedem Fixierbad",
      washplaces: "Abzüge 20x25 cm auf einmal in der Wässerung",
      remove: "yes: nimmt die Reihe von der Liste",
    },
  },
};
