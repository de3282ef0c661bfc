import type { FactorWords } from "./en.ts";

const CONTRAST = { soft: "weich", normal: "normal", strong: "kräftig" } as const;

export const de: FactorWords = {
  nothingGiven:
    "Sag, was du weißt: `agents:metol` gibt einen Faktor; `factor:15 seen:9 s` die ganze Zeit; `seen:30 s whole:20:00` den Faktor, den du hattest.",
  unknownAgent: (typed, known) =>
    `Für ${typed} gibt es keinen Faktor. Bekannt sind ${known}; von Mischungen nenne alle, mit Komma. Die von Hydrochinon und MQ sind in der Quelle verloren: Gib \`factor:\` an.`,
  factor: (factor) => `**${factor}-mal das erste Erscheinen.**`,
  whole: (inAll, factor, seen) => `**${inAll}** im Ganzen: ${factor}-mal ${seen}, das erste Erscheinen.`,
  source: (agents, contrast) =>
    `${agents}, ${CONTRAST[contrast]}: die Faktoren eines Herstellers (ein altes Lexikon der Fotografie); bei gleichen Teilen das Mittel.`,
  pyro: (factor, softer) =>
    `Die Quellen widersprechen sich: Das Handbuch eines Herstellers (Wellington) hat ${factor} für Pyro-Soda, ${softer}, wo das zu kräftig ist.`,
  limits:
    "Es passt zu Bromsilberpapier, nicht zu schnellem Kontaktpapier (Clerc, 573), und geht nie unter das, was volles Schwarz braucht.",
};
