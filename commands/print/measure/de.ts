import type { MeasureWords } from "./en.ts";

export const de: MeasureWords = {
  filter: (grade, stops) => `${grade} neben Gradation 2: ${stops}`,
  speed: (iso, beside, stops) => `Empfindlichkeit ${iso}: ${stops} neben ${beside}`,
  dry: (percent) => `trocknet ${percent} % dunkler auf`,
  used: "Von jetzt an rechne ich damit.",
  nothing:
    "Sag, was du gemessen hast: einen Filter (`grade:3 1/2 seconds:12,5 was:10`), eine Schachtel (`beside:1 seconds:12,5 was:10`) oder `dry:10`.",
  bothTimes: "Es braucht zwei Zeiten: `seconds:` mit diesem, und `was:` mit dem, womit du vergleichst.",
  isGraded: "Das ist ein Papier fester Gradation: Es hat keine Filter, die man messen könnte.",
  far: "Die beiden Zeiten liegen für Papiere oder Filter nebeneinander zu weit auseinander. Mach die Teststreifen noch einmal.",
  noSpeed: (paper) =>
    `Von ${paper} ist noch keine Empfindlichkeit bekannt. Gib die von der Schachtel an, oder für den Anfang 100: \`/print paper\`.`,
};
