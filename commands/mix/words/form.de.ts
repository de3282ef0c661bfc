import type { Forms } from "../../define.ts";

export const forms: Forms = {
  "mix dilute": {
    summary: "Wie viel Konzentrat und Wasser, aus einer der Mengen; bei zweien prüft es, ob sie stimmen",
    options: {
      dilution: "Konzentrat + Wasser, wie 1+9; oder Prozent: 28% auf 2%",
      total: "Was entstehen soll, wie 300 ml",
      concentrate: "Das Konzentrat, das du hast, wie 50 ml",
      water: "Das Wasser, das du hast, wie 450 ml",
    },
  },
  "mix temper": {
    summary: "Wie viel heißes und kaltes Wasser für ein Bad der richtigen Menge und Temperatur",
    options: {
      total: "Wie viel Bad, wie 1 l",
      target: "Wie warm es sein muss, wie 20C",
      cold: "Temperatur des kalten Wassers aus dem Hahn",
      hot: "Temperatur des heißen Wassers aus dem Hahn: 50, 120F",
      dilution: "Wenn Konzentrat hineinkommt: wie 1+9",
      concentrate: "Temperatur des Konzentrats; ohne Angabe die des Raums",
    },
  },
  "mix class": {
    summary: "Was für so viele Filme anzusetzen ist: aus welchen Flaschen, aus dem Regal, was zu kaufen ist",
    options: {
      rolls: "Wie viele Filme der Kurs entwickelt",
      film: "Der Film, wie auf seinem Datenblatt",
      developer: "Der Entwickler; nötig, wenn der Film mehrere Datenblätter hat",
      dilution: "Konzentrat + Wasser, wie 1+9, oder stock (Stammlösung)",
      date: "Der Tag: heute, morgen, 31.5.2026",
      format: "Format des Films",
    },
  },
};
