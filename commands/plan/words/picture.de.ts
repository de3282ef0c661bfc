import type { PictureWords } from "./picture.en.ts";

export const de: PictureWords = {
  thisTank: (time) => `diese Dose: ${time}`,
  tank: (tank, time) => `Dose ${tank}: ${time}`,
  steps: (steps) => `Schritte: ${steps}.`,
};
