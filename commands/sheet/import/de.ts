import { formatBothScales, formatSeconds, joinAnd } from "../../speech/wording.ts";
import type { ImportWords } from "./en.ts";

const times = (count: number): string => (count === 1 ? "1 Zeit" : `${count} Zeiten`);
const facts = (count: number): string => (count === 1 ? "1 andere Angabe" : `${count} andere Angaben`);

export const de: ImportWords = {
  notImported: (faults) => `Es wurde nichts eingelesen. ${faults} Fehler in der Datei:`,
  moreFaults: (count) => `… und noch ${count}.`,
  nothingChanged: (faults) => `${faults}\nEs wurde nichts geändert.`,
  newSheets: (count) => `${count} ${count === 1 ? "neues Datenblatt" : "neue Datenblätter"}`,
  newTimes: (count) => (count === 1 ? "1 neue Zeit" : `${count} neue Zeiten`),
  replacedTimes: (count) => `${times(count)} ersetzt`,
  restated: (count) => `${facts(count)} geändert`,
  nothingNew: "In der Datei steht nichts Neues: Alle ihre Zeiten gibt es schon.",
  wouldReplace: (timeCount, factCount) =>
    `**Noch wurde nichts eingelesen.** Geändert ${timeCount + factCount === 1 ? "würde" : "würden"} ${joinAnd(
      [...(timeCount > 0 ? [times(timeCount)] : []), ...(factCount > 0 ? [facts(factCount)] : [])],
    )}. Ist das gewollt, schick es mit \`replace:yes\`.`,
  replacedTime: (sheet, tenthsC, exposureIndex, before, after) =>
    `${sheet} bei ${formatBothScales(tenthsC)}, EI ${exposureIndex}: aus ${before} würde ${after}`,
  restatedFact: (sheet, name, before, after) => `${sheet}, ${name}: aus ${before} würde ${after}`,
  notSaid: "nichts",
  andMore: (count) => `… und noch ${count}.`,
  imported: (parts) => `Eingelesen: ${joinAnd(parts)}. \`/sheet list\` zeigt sie.`,
  readLine: (sheet, exposureIndex, read) => `${sheet}, EI ${exposureIndex}: ${read}`,
  readTime: (seconds, tenthsC) => `${formatSeconds(seconds)} bei ${formatBothScales(tenthsC)}`,
  aside: (lines) =>
    `${lines.length === 1 ? "In Zeile" : "In den Zeilen"} ${joinAnd(lines.map(String))} steht keine Zeit: ausgelassen.`,
  check: "Vergleich sie mit dem Papier.",
  takeBack: "Alles zurücknehmen",

  noImport: "Es gibt nichts Eingelesenes, das sich zurücknehmen ließe.",
  unknownImport: (number) => `Ein Einlesen mit der Nummer ${number} gibt es nicht.`,
  wasTakenBack: (number) => `Einlesen ${number} ist schon zurückgenommen. Es wurde nichts geändert.`,
  takenBack: (number, parts) =>
    parts.length === 0
      ? `**Einlesen ${number}:** Nichts davon steht noch so da, wie es kam.`
      : `**Einlesen ${number} ist zurückgenommen:** ${joinAnd(parts)}.`,
  timesBack: (count) => `${count === 1 ? "1 Zeit ist" : `${count} Zeiten sind`} wie vorher`,
  sheetsGone: (count) =>
    count === 1 ? "1 Datenblatt ist wieder weg" : `${count} Datenblätter sind wieder weg`,
  left: (sheet, kept) => `- ${sheet} behält, was seitdem geändert wurde: ${kept}`,
  leftTime: (seconds, tenthsC, exposureIndex) =>
    `${formatSeconds(seconds)} bei ${formatBothScales(tenthsC)}, EI ${exposureIndex}`,
  sheetGone: (sheet) => `- ${sheet} gibt es nicht mehr.`,
  contradiction: (sheet) =>
    `- ${sheet} bleibt, wie es ist: Mit dem, was seitdem dazukam, würden sich die Zeiten von vorher widersprechen.`,
};
