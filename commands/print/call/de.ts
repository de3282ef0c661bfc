import type { CallWords } from "./en.ts";

export const de: CallWords = {
  tooQuick: (shortest, least) =>
    `**${shortest} sind für einen Chat zu schnell**: Ein Signal braucht ${least} und mehr. Geh nach der Zeitschaltuhr und dieser Tabelle:`,
  slower:
    "Für Signale blende ein oder zwei Stufen ab und mach einen Streifen mit längerer Grundzeit: `/print strip base:30`.",
  head: (plan, bars, from, to) =>
    `**${bars} Felder, ${from} bis ${to}**, in ganzen Sekunden (${plan}): Ich sage an, wann das Licht ausgeht.`,
  step: (count, move, seconds) => `${count}. ${move}, Licht an: **${seconds}**`,
  hand: "Eine Hand am Schalter der Lampe, die andere an der Karte. Leg das Handy mit dem Bildschirm nach unten, weg vom Papier, und geh nach dem Ton; verschieb die Karte nur, solange das Licht aus ist.",
  start: "Start",
};
