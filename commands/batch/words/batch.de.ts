import { formatNumber } from "../../speech/wording.ts";
import type { BatchWords } from "./batch.en.ts";

/** Ein Blatt 8x10 Zoll (20x25 cm) ist so viel wie ein Film. */
const rolls = (count: number, ofPaper: boolean): string =>
  ofPaper
    ? `${formatNumber(count)} Blatt 20x25 cm`
    : `${formatNumber(count)} ${count === 1 ? "Film" : "Filme"}`;

export const de: BatchWords = {
  kind: {
    developer: "Entwickler",
    stop: "Stoppbad",
    fixer: "Fixierbad",
    "wash-aid": "Wässerungshilfe",
    "wetting-agent": "Netzmittel",
    "paper-developer": "Papierentwickler",
    "paper-stop": "Papier-Stoppbad",
    "paper-fixer": "Papierfixierbad",
    "paper-wash-aid": "Papier-Wässerungshilfe",
  },
  standing: {
    ready: "bereit",
    exhausted: "verbraucht",
    "out-of-date": "abgelaufen",
    discarded: "entsorgt",
  },
  rolls,
  rollsLeft: (count, ofPaper) => `noch ${rolls(count, ofPaper)}`,
  strength: (percent) => `noch ${percent} % der Stärke`,
  mlLeft: (ml) => `noch ${ml}`,
  clears: (seconds, isAbout, fresh) =>
    `klärt in ${isAbout ? "etwa " : ""}${seconds}${fresh === null ? "" : ` (frisch ${fresh})`}`,
  // Each can stand after a colon, in brackets or, with a capital, alone.
  worn: {
    discarded: "die Flasche gibt es nicht mehr",
    capacity: (done) => `schon ${done}, und kein weiterer passt mehr`,
    volume: "nichts ist mehr darin",
    test: (seconds, fresh) => `klärt erst in ${seconds}, frisch in ${fresh}: mindestens doppelt so lang`,
    silver: (gramsPerLitre) =>
      `nach dem Teststreifen ${gramsPerLitre} g Silber im Liter, die Grenze ist erreicht`,
    prediction: (seconds) =>
      `klärt nach dem Flaschenbuch erst in etwa ${seconds}, doppelt so lang wie frisch; eine Klärprobe kann anderes zeigen`,
    unknown: "nicht mehr zu gebrauchen",
    kept: (date) => `haltbar bis ${date}`,
  },
  slow: (seconds) =>
    `${seconds} ist langsam: Frisches Schnellfixierbad klärt Film in 1 bis 3 Minuten. Prüf Stärke und Wärme, und setz im Zweifel neues an.`,
  unknownBatch: (typed) => `Eine Flasche ${typed} gibt es nicht. Die Flaschen zeigt \`/batch status\`.`,
};
