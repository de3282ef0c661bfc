import type { Forms } from "../../define.ts";

export const forms: Forms = {
  plan: {
    summary: "Zeiten, Mengen und Schritte für eine Dose voll Film ausrechnen",
    options: {
      film: "Name des Films, wie auf seinem Datenblatt",
      temp: "Temperatur des Entwicklers in der Dose, wie 20C oder 68F",
      developer: "Name des Entwicklers; nötig, wenn der Film mehrere Datenblätter hat",
      dilution: "Konzentrat + Wasser, wie 1+9, oder stock (Stammlösung)",
      ei: "Belichtungsindex der Aufnahmen; ohne Angabe die Empfindlichkeit des Films",
      tank: "Nummer der Dose, wie T4",
      rolls: "Wie viele Filme in die Dose kommen",
      format: "Format des Films; ohne Angabe 135",
      frame: "Was die Kamera macht: Halbformat auf 135, 6x4.5 bis 6x24 auf 120",
      frames: "Bilder auf jedem Film, ein angeschnittenes als halbes: 36, 37,5; ohne Angabe wie üblich",
      sleeve: "Bilder in einem Streifen deiner 135er Hüllen: 4, 5, 6; ohne Angabe wie im Kurs",
      volume: "Entwickler in der Dose, wie 300 ml; ohne Angabe so viel, wie sie fasst",
      agitation: "anfangs/jeweils/Abstand in Sekunden, wie 30/5/60, oder continuous (ständig)",
      stop: "Was den Entwickler stoppt",
      wash: "Wie gewässert wird",
      washaid: "Mit Wässerungshilfe",
      clearing: "Geprüfte Klärzeit des Fixierbads, wie 45 s",
      room: "Raumtemperatur, damit der Plan mit ihr rechnet",
      fixtemp: "Temperatur des Fixierbads, wenn sie anders ist",
      watertemp: "Temperatur des Wassers zum Spülen und Wässern, wenn sie anders ist",
      filmsdone: "Filme, die jeder Liter dieses Entwicklers schon hinter sich hat",
      also: "Andere Filme in derselben Dose, durch Kommas getrennt",
      devbatch: "Etikett der Entwicklerflasche, wie B3",
      fixbatch: "Etikett der Fixierbadflasche, wie B4",
    },
  },
  "plan exposure": {
    summary: "Lange Belichtung, wie mit der Lochkamera: wie viel länger als gemessen, und wie entwickeln",
    options: {
      metered: "Was der Belichtungsmesser sagt, wie 10 s",
      filter: "Filterfaktor, wenn ohne Filter gemessen ist: 2, 8",
      exponent: "Exponent des Films, wenn sein Hersteller einen nennt: 1,31",
    },
  },
  "plan curve": {
    summary: "Kurve eines Plans, seine Schritte als Streifen, und worauf jede Zahl beruht",
    options: { plan: "Welcher Plan, wie P12; ohne Angabe dein neuester" },
  },
};
