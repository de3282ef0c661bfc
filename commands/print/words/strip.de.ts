import type { StripTableWords } from "./strip.en.ts";

export const de: StripTableWords = {
  step: (count, open, set) => `${count}. ${open}: **${set}**`,
  stepTotal: (count, cover, set, bar, total) => `${count}. ${cover}: **${set}** (Feld ${bar} hat ${total})`,
  openOne: (bar) => `Nur Feld ${bar} offen`,
  openFrom: (bar) => `Feld ${bar} auch offen`,
  openAll: "Alles offen",
  coverNone: "Alles offen",
  coverOne: "Feld 1 abdecken",
  coverTo: (bar) => `Bis Feld ${bar} abdecken`,
  tooFine: (step, bar) =>
    `Feld ${bar} bekäme nicht mehr als das davor: Mit Schritten von ${step} geht das nicht. Nimm eine längere Grundzeit oder einen größeren Abstand.`,
  noStrip:
    "Du hast noch keinen Teststreifen gemacht. `/print strip base:8` macht einen; sag mir dann, welches Feld stimmt.",
};
