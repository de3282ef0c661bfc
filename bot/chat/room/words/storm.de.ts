import type { StormWords } from "./storm.en.ts";

export const de: StormWords = {
  storm: (address) =>
    `**Viele falsche Codes oder Kennwörter** werden gerade an der Tür versucht, von ${address} aus. Dadurch ist niemand hereingekommen. Wer angemeldet ist, bleibt es; neue Geräte müssen dort kurz warten. Ist das nicht dein Kurs, der sich vertippt, zieh unter Menü, Tür einen neuen Code.`,
};
