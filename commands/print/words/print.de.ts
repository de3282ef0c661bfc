import type { PrintWords } from "./print.en.ts";

export const de: PrintWords = {
  faults: {
    ERR_NO_SECONDS: (typed) =>
      `${typed} kann ich nicht als Belichtungszeit lesen. Schreib sie so: 8, 12,5 s oder 1:30.`,
    ERR_NO_STOPS: (typed) => `${typed} kann ich nicht als Blenden lesen. Schreib es so: 1/3, 1/2 oder 1 1/2.`,
    ERR_NO_GRADE: (typed) =>
      `Eine Gradation ${typed} gibt es nicht. Es gibt 00, 0 bis 5 und die halben: 2 1/2.`,
    ERR_NO_SIZE: (typed) =>
      `${typed} kann ich nicht als Papierformat lesen. Schreib es so: 18x24, 8x10 in oder 200x250 mm.`,
    ERR_NO_APERTURE: (typed) => `${typed} kann ich nicht als Blende lesen. Schreib sie so: 8 oder 5,6.`,
    ERR_NO_DISTANCE: (typed) =>
      `${typed} kann ich nicht als Höhe lesen. Schreib 5 cm bis 5 m, etwa 42 cm oder 420 mm.`,
    ERR_NO_NUMBER: (typed) => `${typed} kann ich hier nicht lesen. Schreib eine Zahl, etwa 1,5.`,
    ERR_NO_LOCAL: (typed) =>
      `${typed} kann ich nicht lesen. Schreib jede Stelle und wie viel, etwa Himmel 1/2, Ecke 3 s, Rand 20 %; höchstens 12.`,
    ERR_NO_BAR: (typed) => `${typed} kann ich nicht als Feld lesen. Schreib 4, oder 4-5 für dazwischen.`,
    ERR_NO_RANGE: (typed) =>
      `${typed} kann ich nicht als Umfang eines Negativs lesen. Schreib 0,20 bis 2,50, etwa 1,05, oder in Blenden, etwa 3 1/2 Blenden.`,
  },
  unknown: {
    enlarger: (name, have) => `Einen Vergrößerer ${name} gibt es nicht. Der Kurs hat ${have}.`,
    paper: (name, have) => `Eine Schachtel Papier ${name} gibt es nicht. Der Kurs hat ${have}.`,
  },
  unknownAndNone: {
    enlarger: (name) =>
      `Einen Vergrößerer ${name} gibt es nicht: Der Kurs hat noch keinen angegeben. Die Lehrkraft tut es mit \`/print enlarger\`.`,
    paper: (name) =>
      `Eine Schachtel Papier ${name} gibt es nicht: Der Kurs hat noch keine angegeben. Eine Hilfskraft tut es mit \`/print paper\`.`,
  },
  lights: { condenser: "Kondensor", diffuse: "diffuses Licht" },
  kinds: { "resin-coated": "PE-Papier", fibre: "Barytpapier" },
  variable: "variabler Kontrast",
  noFilter: "ohne Filter",
  grade: (grade) => `Gradation ${grade}`,
  stops: (stops, isOne) => `${stops} ${isOne ? "Blende" : "Blenden"}`,
  enlarger: (number, name, light, lensMm, step) =>
    `**${number}** ${name}: ${light}, Objektiv ${lensMm} mm, Zeitschaltuhr in Schritten von ${step}`,
  lot: (lot) => `Charge ${lot}`,
  bases: { box: "laut Schachtel", measured: "gemessen" },
  speed: (iso, basis) => `Empfindlichkeit ${iso} (${basis})`,
  dryDown: (percent) => `trocknet ${percent} % dunkler auf`,
  filters: (count) => `${count === 1 ? "1 Filter" : `${count} Filter`} gemessen`,
  localName: {
    burn: (place, stops) => `${place} ${stops} nachbelichten`,
    dodge: (place, stops) => `${place} ${stops} abwedeln`,
  },
  local: {
    burn: (place, stops, seconds) => `${place} ${stops} nachbelichten: **${seconds}** mehr`,
    dodge: (place, stops, seconds) => `${place} ${stops} abwedeln: **${seconds}** zurückhalten`,
  },
  tooMuchLocal: (place) =>
    `${place}: So viel lässt sich nicht zurückhalten oder nachbelichten. Schreib Blenden, etwa 1/3.`,
  tooManyLocals: "Zwölf Stellen in einem Abzug sind genug. Lass einige weg.",
  gear: "Vergrößerer und Papiere",
};
