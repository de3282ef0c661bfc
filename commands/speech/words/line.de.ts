import type { LineWords } from "./line.en.ts";

export const de: LineWords = {
  empty: "Tippe einen Befehl, zum Beispiel /help.",
  unknownCommand: (word, near) =>
    `Den Befehl /${word} gibt es nicht. ${near.length === 0 ? "Versuch /help." : `Meintest du ${near.join(" oder ")}?`}`,
  openQuote: (option) => `Das Anführungszeichen nach ${option}: ist nicht geschlossen. Setz ein " ans Ende.`,
  twice: (option) => `${option}: steht zweimal da. Schreib es einmal.`,
  strayWords: (words, command) =>
    `${words} gehört zu keiner Angabe. Schreib Name:Wert, zum Beispiel /${command} name:wert.`,
};
