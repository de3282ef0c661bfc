import { saySeconds } from "../../speech/wording.ts";
import type { ExposureWords } from "./en.ts";

export const de: ExposureWords = {
  noNeed: (seconds) =>
    `**${saySeconds(seconds)}**, wie gemessen: Bis 1 s braucht Film keine Korrektur (Kodak E-31: Das Gesetz gilt von etwa 1/5 bis 1/1000 s).`,
  head: (seconds, metered) =>
    `**${saySeconds(seconds)}** für gemessene ${saySeconds(metered)}: eine Schätzung, die Mitte dessen, was veröffentlicht ist.`,
  own: (seconds, metered, power) =>
    `**${saySeconds(seconds)}** für gemessene ${saySeconds(metered)}, nach dem eigenen Exponenten des Films, ${power}.`,
  differ: (low, high) =>
    `Die Quellen sind sich nicht einig: ${saySeconds(low)} bis ${saySeconds(high)}. Mach noch eine Aufnahme mit doppelter Zeit: Zu viel Licht verträgt Film besser als zu wenig.`,
  forms: {
    power: "hoch 1,25 bis 1,43, je nach Film (Abschrift vom Blatt eines Herstellers)",
    added: "ein Zuschlag, je nach Film (Bond und Gainer, in einem Forum)",
    book: "eine Tabelle für einen 400er Film (Barnbaum 1994, S. 77, abgeschrieben)",
    old: "eine ältere Tabelle (Abschrift einer Fotografin oder eines Fotografen)",
  },
  answer: (seconds, form) => `- ${seconds}: ${form}`,
  range: (low, high) =>
    Math.round(low) === Math.round(high) ? saySeconds(low) : `${saySeconds(low)} bis ${saySeconds(high)}`,
  develop: (percent) =>
    `Lange Belichtung macht den Kontrast härter: Entwickle etwa ${percent} % kürzer (veröffentlicht: 10 bis 30 %).`,
  filter: "Der Filterfaktor ist darin: erst der Filter, dann diese Korrektur.",
  tooLong: "So weit reicht keine veröffentlichte Formel. Öffne die Blende, oder miss höchstens 10 Minuten.",
};
