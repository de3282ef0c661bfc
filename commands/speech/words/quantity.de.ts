import type { QuantityWords } from "./quantity.en.ts";

export const de: QuantityWords = {
  ERR_TEXT_TOO_LONG: (typed) => `${typed} ist zu lang für eine Menge. Schreib es kurz: 20C, 300 ml, 9:00.`,
  ERR_NO_TEMPERATURE: (typed) =>
    `${typed} kann ich nicht als Temperatur lesen. Schreib sie so: 20C oder 20,5.`,
  ERR_WHICH_SCALE: (typed, value) =>
    `Welche Skala ist ${typed}? Schreib F dahinter, wenn es Fahrenheit ist (das wären ${value}), C bei Celsius.`,
  ERR_TWO_SCALES: (typed, value) =>
    `Die beiden Skalen in ${typed} passen nicht zusammen: Die erste ist ${value}. Lies das Thermometer noch einmal ab und schreib eine davon.`,
  ERR_NO_LIQUID: (typed) =>
    `${typed} ist keine Temperatur von flüssigem Wasser. Schreib eine von 0C bis 100C.`,
  ERR_NO_VOLUME: (typed) => `${typed} kann ich nicht als Menge lesen. Schreib sie so: 300 ml oder 0,3 l.`,
  ERR_THOUSANDS: (typed) =>
    `${typed} kann tausend heißen oder wenig mehr als eins. Schreib es ohne Komma: 1000 ml oder 1 l.`,
  ERR_VOLUME_RANGE: (typed) => `Mit ${typed} kann man nicht arbeiten. Schreib 1 ml bis 200 l.`,
  ERR_NO_DURATION: (typed) =>
    `${typed} kann ich nicht als Zeit lesen. Schreib sie so: 9:00, 9 min oder 540 s.`,
  ERR_WHICH_UNIT: (typed) =>
    `Sind mit ${typed} Minuten oder Sekunden gemeint? Schreib es so: 9:00, 9 min oder 540 s.`,
  ERR_MINUTES_OR_SECONDS: (typed) =>
    `${typed} kann Teile einer Minute meinen oder Minuten und Sekunden. Schreib es so: 9:30 oder 9,5 min.`,
  ERR_DURATION_RANGE: (typed) => `Mit ${typed} kann man nicht arbeiten. Schreib 1 s bis 24 h.`,
  ERR_NO_DILUTION: (typed) =>
    `${typed} kann ich nicht als Verdünnung lesen. Schreib Konzentrat + Wasser, etwa 1+9, oder stock für die Stammlösung.`,
  ERR_DILUTION_RANGE: (typed) =>
    `Mit der Verdünnung ${typed} kann ich nicht arbeiten. Schreib 1 bis 100 Teile Konzentrat + höchstens 1000 Teile Wasser.`,
  ERR_NO_AGITATION: (typed) =>
    `${typed} kann ich nicht als Bewegung lesen. Schreib anfangs/jeweils/Abstand in Sekunden, etwa 30/5/60, oder continuous für ständiges Bewegen.`,
  ERR_AGITATION_RANGE: (typed) =>
    `${typed} geht nicht: Jedes Bewegen ist kürzer als sein Abstand, beide liegen zwischen 1 s und 60 min, wie 5 s in je 60 s (30/5/60). Ohne jede Ruhe: continuous.`,
};
