import { saySeconds } from "../../speech/wording.ts";
import type { MeasureWords } from "./en.ts";

export const de: MeasureWords = {
  measured: (number, seconds) =>
    `**${saySeconds(seconds)}**: In dieser Zeit legt Dose ${number} den Weg zum Raum zu 63 % zurück. Pläne für sie rechnen damit, wenn \`room:\` angegeben ist.`,
  calibration: {
    ERR_TOO_NEAR_ROOM:
      "Die Messungen liegen zu nah am Raum, um etwas zu sagen. Fang mindestens 1,5 °C daneben an, und hör auf derselben Seite auf.",
    ERR_WRONG_WAY: "Das Wasser hat sich vom Raum entfernt. Prüf die beiden Messungen und die des Raums.",
    ERR_NO_CHANGE:
      "Die beiden Messungen sind gleich. Warte länger dazwischen, oder fang weiter weg vom Raum an.",
  },
  odd: (seconds) =>
    `Das wären ${saySeconds(seconds)}, und das tut keine Dose. Prüf die Messungen und die Zeit dazwischen.`,
};
