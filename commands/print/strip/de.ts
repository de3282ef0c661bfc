import type { StripWords } from "./en.ts";

export const de: StripWords = {
  head: (bars, from, to, step) => `**${bars} Felder, ${from} bis ${to}**, ${step}.`,
  apart: (stops) => `Abstand ${stops}`,
  more: (seconds) => `je ${seconds} mehr`,
  how: {
    cover: "Belichte den ganzen Streifen, und deck vor jeder weiteren Belichtung ein Feld mehr ab.",
    uncover:
      "Deck alles außer dem letzten Feld ab, und gib vor jeder weiteren Belichtung ein Feld mehr frei.",
  },
  read: "Entwickle ihn ganz aus, sieh ihn dir bei weißem Licht an, und drück auf das Feld, das stimmt.",
  cost: (stops, step) => `Das Runden auf Schritte von ${step} macht bis zu ${stops} aus.`,
  equal: (first, last) =>
    `Gleiche Sekunden täuschen: Von Feld 1 zu 2 ist es ${first}, am Ende nur ${last}. Schritte in Blenden sehen gleichmäßig aus.`,
  move: (stops) => `Alles zu hell? Öffne das Objektiv um ${stops}. Alles zu dunkel? Schließ es um ${stops}.`,
  moveTo: (open, closed) => `Alles zu hell? ${open}. Alles zu dunkel? ${closed}.`,
  noCalls: (shortest) =>
    `Dafür gibt es keine Signale: ${shortest} sind für einen Chat zu schnell. Geh nach der Zeitschaltuhr und dieser Tabelle.`,
  slow: (shortest) =>
    `Geh nach der Zeitschaltuhr; bei ${shortest} und mehr bleibt Zeit, die Karte zu verschieben, auch nach Signal.`,
  callIt: "Mit Signalen",
  short: "Unter 2 s glüht die Lampe noch auf: Besser abblenden und länger belichten.",
  guessed: (step) =>
    `Für deine Zeitschaltuhr sind Schritte von ${step} angenommen. Eine andere: \`timer:0,1\`.`,
  bar: (bar) => `Feld ${bar}`,
  tooLong: "Das letzte Feld bräuchte über eine Stunde. Öffne das Objektiv, oder nimm weniger Felder.",
};
