import type { BlackWords } from "./en.ts";

export const de: BlackWords = {
  stainFirst:
    "Eine Zeit, die verfärbt, ist länger als die kürzeste für volles Schwarz: Prüf, welche welche ist.",
  outside: (seconds) =>
    `Bei der Temperatur der Zeiten dieser Reihe sind das ${seconds}, so entwickelt man keinen Abzug. Prüf die Temperatur.`,
  usable: (least, most) => `**${least} bis ${most}**: von vollem Schwarz bis zum Verfärben.`,
  rule: "Ein Abzug bleibt zwischen der kürzesten Zeit und dem Doppelten; darunter gibt auch mehr Belichtung kein volles Schwarz (Clerc, 556). Kein Plan geht von jetzt an darunter.",
  raised: (least, at) => `Die Zeit des Entwicklers ist kürzer: Pläne nehmen stattdessen ${least} bei ${at}.`,
};
