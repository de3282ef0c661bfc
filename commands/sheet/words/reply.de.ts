import { formatBothScales, formatMl, formatSeconds } from "../../speech/wording.ts";
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
  slipOf: (film, known) =>
    `**Ein neuer Film, ${film}: ${known} gibt es schon.** Nur vertippt? \`/sheet undo\` nimmt es zurück; dann schreib ihn wie diesen.`,
  readRatio: (dilution) => `Ich lese die Verdünnung als ${dilution}: 1:9 heißt bei Herstellern 1+9.`,
  showSheet: "Datenblatt zeigen",

  head: (sheet, speed) => `**${sheet}**, Empfindlichkeit des Films ${speed}`,
  row: (seconds, tenthsC, exposureIndex, source) =>
    `- **${formatSeconds(seconds)}** bei ${formatBothScales(tenthsC)}, EI ${exposureIndex} (${source})`,
  moreTimes: (count) =>
    `… und ${count === 1 ? "eine weitere Zeit" : `${count} weitere Zeiten`}: siehe \`/sheet export\`.`,
  agitation: (scheme) => `Bewegen: ${scheme}.`,
  source: (source) => `Quelle: ${source}`,
  notBelow: (tenthsC) => `Nicht unter ${formatBothScales(tenthsC)}.`,
  notAbove: (tenthsC) => `Nicht über ${formatBothScales(tenthsC)}.`,
  factor: (factor) => `Faktor des Herstellers je 10 °C: ${factor}.`,
  leastConcentrate: (ml) => `Mindestens ${formatMl(ml)} Konzentrat oder Stammlösung für jeden Film.`,
  tabular: "Flachkristalle: drei Klärzeiten lang fixieren.",
  reuse: (rule) => `Mehrfach benutzen (Filme je Liter/Zugabe/höchstens Filme): ${rule}.`,
  usedOnce: "Wird einmal benutzt, dann entsorgt.",

  noneNamed: (typed) => `Kein Datenblatt hat ${typed} im Namen. \`/sheet list\` allein zeigt alle.`,
  sheets: (count) => `${sheets(count)}:`,
  listed: (sheet, count) => `- ${sheet} (${times(count)})`,
  moreSheets: (count) => `… und noch ${count}. Nenn einen Film, dann sind es weniger.`,

  noSheetFor: (film) => `Für ${film} gibt es kein Datenblatt. \`/sheet list\` zeigt, was es gibt.`,
  exported: (count, format) =>
    `${sheets(count)} als ${format}. \`/sheet import\` liest die Datei wieder ein.`,
};
