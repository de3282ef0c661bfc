import type { StandingWords } from "./en.ts";

export const de: StandingWords = {
  whichEnlarger: "Welcher Vergrößerer? Nenn ihn: `enlarger:1`. `/print gear` zeigt, was da ist.",
  needParts:
    "Sag beim ersten Mal alles: `seconds:12 height:50 cm aperture:8 grade:2`. Später nur, was sich geändert hat.",
  lighterShort:
    "Die Zeit, bei der der Rand noch heller war, muss kürzer sein als die, bei der er schwarz wurde.",
  tooLong: "Das wäre über eine Stunde. Öffne die Blende oder fahr den Kopf herunter.",
  head: (name, setting, isSet) =>
    `${setting}: ${isSet ? "notiert als" : "das ist"} die feste Belichtung von ${name} für Kontaktbögen.`,
  none: (name) => `**${name} hat noch keine feste Belichtung.** Ein Teststreifen findet sie:`,
  start:
    "Kopf etwa 50 cm hoch, ringsum ein paar Zentimeter mehr Licht als Papier, Blende 8 bis 11, Gradation 1 bis 2 (Anfangswerte mehrerer Lehrender). Leg klaren Filmrand auf das Papier und mach einen Teststreifen; dann `/contact exposure seconds:…`.",
  reckoned: "Gerechnet, nicht probiert: Mach einen Teststreifen, bevor der Kurs sich darauf verlässt.",
  between: (lighter, black, stops) =>
    `Das knappste Schwarz liegt zwischen ${lighter} und ${black}: ${stops} auseinander.`,
  finer:
    "Ein feinerer Streifen dazwischen sagt mehr: 9 s neben 10 s (0,15 Blenden) kann man noch unterscheiden, zeigt ein Versuch.",
  since: (date) => `Gesetzt am ${date}.`,
  strip: "Teststreifen machen",
};
