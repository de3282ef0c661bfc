import type { PictureWords } from "./picture.en.ts";

export const de: PictureWords = {
  timeAt: (time, temperature) => `${time} bei ${temperature}`,
  curve: (sheet, exposureIndex, ends) =>
    `Entwicklungszeit über der Temperatur für ${sheet} bei EI ${exposureIndex}: von ${ends.join(" hinab zu ")}.`,
  thisTank: (timeAt) => `Diese Dose: ${timeAt}.`,
  below: (exposureIndex) => `Entwicklungszeit bei EI ${exposureIndex}. Schraffiert: aufpassen.`,
  axis: "Temperatur des Entwicklers, °C",
};
