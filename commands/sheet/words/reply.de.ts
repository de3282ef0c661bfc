import { formatBothScales, formatMl, formatSeconds, formatTenthsC, joinAnd } from "../../speech/wording.ts";
import type { ReplyWords } from "./reply.en.ts";

const times = (count: number): string => `${count} ${count === 1 ? "Zeit" : "Zeiten"}`;
const sheets = (count: number): string => `${count} ${count === 1 ? "Datenblatt" : "Datenblätter"}`;

export const de: ReplyWords = {
  noSpeed: "Das Datenblatt ist neu: Gib die Empfindlichkeit des Films dazu, wie `speed:400`.",
  full: "Dieses Datenblatt hat schon 200 Zeiten, mehr passen nicht darauf.",
  nothingChanged: (faults) => `${faults}\nEs wurde nichts geändert.`,
  orReplace: (fault) => `${fault} Soll die neue Zeit die alte ersetzen, schreib \`replace:yes\` dazu.`,

  added: (seconds, tenthsC, sheet, count) =>
    `**${formatSeconds(seconds)}** bei ${formatBothScales(tenthsC)} steht auf dem Datenblatt von ${sheet}. Es hat jetzt ${times(count)}.`,
  readRatio: (dilution) => `Ich lese die Verdünnung als ${dilution}: 1:9 heißt bei Herstellern 1+9.`,
  showSheet: "Datenblatt zeigen",

  head: (sheet, speed) => `**${sheet}**, Empfindlichkeit des Films ${speed}`,
  row: (seconds, tenthsC, exposureIndex, source) =>
    `- **${formatSeconds(seconds)}** bei ${formatBothScales(tenthsC)}, EI ${exposureIndex} (${source})`,
  moreTimes: (count) =>
    `… und ${count === 1 ? "eine weitere Zeit" : `${count} weitere Zeiten`}: siehe \`/sheet export\`.`,
  agitation: (scheme) => `Bewegen: ${scheme}.`,
  source: (source) => `Quelle: ${source}`,
  notBelow: (tenthsC) => `Nicht unter ${formatTenthsC(tenthsC)}.`,
  notAbove: (tenthsC) => `Nicht über ${formatTenthsC(tenthsC)}.`,
  factor: (factor) => `Faktor des Herstellers je 10 °C: ${factor}.`,
  leastConcentrate: (ml) => `Mindestens ${formatMl(ml)} Konzentrat oder Stammlösung für jeden Film.`,
  tabular: "Flachkristalle: drei Klärzeiten lang fixieren.",
  reuse: (rule) => `Mehrfach benutzen (Filme je Liter/Zugabe/höchstens Filme): ${rule}.`,
  usedOnce: "Wird einmal benutzt, dann entsorgt.",

  noneNamed: (typed) => `Kein Datenblatt hat ${typed} im Namen. \`/sheet list\` allein zeigt alle.`,
  sheets: (count) => `${sheets(count)}:`,
  listed: (sheet, count) => `- ${sheet} (${times(count)})`,
  moreSheets: (count) => `… und ${count} weitere. Nenn einen Film, dann sind es weniger.`,

  notImported: (faults) => `Es wurde nichts eingelesen. ${faults} Fehler in der Datei:`,
  moreFaults: (count) => `… und ${count} weitere.`,
  newSheets: (count) => `${count} ${count === 1 ? "neues Datenblatt" : "neue Datenblätter"}`,
  newTimes: (count) => (count === 1 ? "1 neue Zeit" : `${count} neue Zeiten`),
  replacedTimes: (count) => (count === 1 ? "1 Zeit ersetzt" : `${count} Zeiten ersetzt`),
  nothingNew: "In der Datei steht nichts Neues: Alle ihre Zeiten gibt es schon.",
  wouldReplace: (count) =>
    `**Noch wurde nichts eingelesen.** ${count === 1 ? "1 Zeit gibt es schon; sie würde" : `${count} Zeiten gibt es schon; sie würden`} geändert. Ist das gewollt, schick es mit \`replace:yes\`.`,
  replacedTime: (sheet, tenthsC, exposureIndex, before, after) =>
    `${sheet} bei ${formatBothScales(tenthsC)}, EI ${exposureIndex}: aus ${before} würde ${after}`,
  andMore: (count) => `… und ${count} weitere.`,
  imported: (parts) => `Eingelesen: ${joinAnd(parts)}. \`/sheet list\` zeigt sie.`,
  noSheetFor: (film) => `Für ${film} gibt es kein Datenblatt. \`/sheet list\` zeigt, was es gibt.`,
  exported: (count, format) =>
    `${sheets(count)} als ${format}. \`/sheet import\` liest die Datei wieder ein.`,
};
