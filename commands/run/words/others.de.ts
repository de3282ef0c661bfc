import { formatBothScales, saySeconds } from "../../speech/wording.ts";
import type { OthersWords } from "./others.en.ts";

export const de: OthersWords = {
  pressed: (by, label) => `**${by} hat für dich „${label}“ gedrückt.**`,
  moved: (by, seconds, isEarlier) =>
    `**${by} hat deine Signale um ${saySeconds(seconds)} verschoben:** Dieser Schritt hat ${isEarlier ? "früher" : "später"} begonnen als notiert.`,
  measured: (by, tenthsC, seconds, before) =>
    `**${by} hat ${formatBothScales(tenthsC)} gemessen:** ${
      seconds === before
        ? "Die Zeit bleibt, wie sie ist."
        : `Dieser Schritt dauert insgesamt ${saySeconds(seconds)} statt ${saySeconds(before)}.`
    }`,
  seen: (by, seconds) =>
    `**${by} hat das Bild erscheinen sehen:** Entwickelt wird insgesamt ${saySeconds(seconds)}.`,
  stopped: (by) => `**${by} hat diesen Lauf gestoppt:** Es kommt kein Signal mehr.`,
};
