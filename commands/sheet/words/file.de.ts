import { formatBothScales, formatSeconds, joinAnd } from "../../speech/wording.ts";
import type { FileWords } from "./file.en.ts";

export const de: FileWords = {
  point: (seconds, tenthsC, exposureIndex) =>
    `${formatSeconds(seconds)} bei ${formatBothScales(tenthsC)}, EI ${exposureIndex}`,
  upTo: (max) => `bis ${formatBothScales(max)}`,
  from: (min) => `ab ${formatBothScales(min)}`,
  between: (min, max) => `${formatBothScales(min)} bis ${formatBothScales(max)}`,
  sheet: {
    contradiction: (first, second) =>
      `Diese beiden Zeilen widersprechen sich: ${first}, aber ${second}. Ein wärmerer Entwickler braucht nie länger, ein niedrigerer Belichtungsindex auch nicht. Prüf beide in der Quelle.`,
    rowTwice: (row) => `Diese Zeile steht zweimal da: ${row}. Behalte eine.`,
    twoTimes: (first, second) =>
      `Zwei Zeiten für dieselbe Stelle: ${first}, und ${second}. Behalte die, der du traust.`,
    outsideRange: (row, range) =>
      `Die Zeile ${row} liegt außerhalb des Bereichs, den das Datenblatt selbst nennt (${range}). Ändere den Bereich oder die Zeile.`,
    emptyRange: (min, max) =>
      `Die kälteste Temperatur (${formatBothScales(min)}) liegt über der wärmsten (${formatBothScales(max)}). Vertausche sie.`,
    scheme:
      "So kann man nicht bewegen: Jede Bewegung muss kürzer sein als ihr Abstand. Schreib es wie 30/5/60 oder continuous.",
  },
  file: {
    noSheets: "Es stehen keine Datenblätter darin.",
    noTable:
      "Ich erkenne keine Spalten. Schreib Temperaturen darüber, wie 18 °C und 20 °C, oder die Namen, die `/sheet export` schreibt.",
    notSaid: {
      film: "In der Tabelle steht nicht, welcher Film. Gib ihn daneben an: `film:`.",
      developer: "In der Tabelle steht nicht, welcher Entwickler. Gib ihn daneben an: `developer:`.",
      dilution: "In der Tabelle steht nicht, welche Verdünnung. Gib sie daneben an, wie `dilution:1+9`.",
      film_speed: "Die Empfindlichkeit des Films steht nirgends. Gib sie daneben an, wie `speed:400`.",
    },
    fewCells: (has, wants) =>
      `${has === 1 ? "1 Zelle" : `${has} Zellen`}, aber ${wants} Spalten. Schreib -, wo es keine Zeit gibt.`,
    quotes: 'Ein Anführungszeichen (") ist offen geblieben oder steht mitten in einer Zelle.',
    tooManyCells: "Mehr Zellen, als die erste Zeile Namen hat.",
    tooLong: "Die Datei ist zu lang. Lies sie in Teilen ein.",
    tooManyPoints: "Mehr als 200 Zeiten auf einem Datenblatt.",
    columnUnknown: (name, known) => `Eine Spalte ${name} gibt es nicht. Es gibt ${joinAnd(known)}.`,
    columnTwice: (name) => `Die Spalte ${name} steht zweimal da.`,
    columnMissing: (name) => `Die Spalte ${name} fehlt.`,
    cellEmpty: (name) => `${name} ist leer.`,
    cell: (name, text, like) => `${name} kann nicht ${text} sein. Schreib dort: ${like}.`,
    differs: (name, otherLine) =>
      `${name} ist anders als in Zeile ${otherLine} desselben Datenblatts. Schreib dasselbe, oder lass eines leer.`,
    sheetTwice: (otherLine) => `Dieser Film mit Entwickler und Verdünnung steht schon in Zeile ${otherLine}.`,
    json: (what) => `Das ist kein JSON (${what}).`,
    notOurFormat:
      'Die Datei muss mit "format": "sinkside sheets" beginnen. Gib ein Datenblatt aus, dann siehst du eine.',
    value: (path, what) => `Bei ${path} erwarte ich ${what}.`,
    theFile: "der Datei",
    withLine: (otherLine, fault) => `(mit Zeile ${otherLine}) ${fault}`,
  },
  line: (line, fault) => `Zeile ${line}: ${fault}`,
};
