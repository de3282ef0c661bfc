import { joinOr } from "../../speech/wording.ts";
import type { PickWords } from "./pick.en.ts";

export const de: PickWords = {
  noSheets:
    "Dieser Kurs hat noch keine Entwicklungszeiten. Ein Datenblatt enthält die Zeiten des Herstellers für einen Film in einem Entwickler. Eine Hilfskraft oder die Lehrkraft trägt eines mit `/sheet add` ein.",
  more: (count) => `Noch ${count}`,
  several: (sheets) =>
    `Mehrere Datenblätter passen: ${sheets}. Sag, welcher Entwickler und welche Verdünnung.`,
  noPair: (film, _count, sheets) =>
    `Für ${film} gibt es kein Datenblatt mit diesem Entwickler und dieser Verdünnung. Es gibt ${sheets}.`,
  meant: (typed, names) => `Einen Film ${typed} gibt es nicht. Meintest du ${joinOr(names)}?`,
  unknown: (typed, count) =>
    count === 1
      ? `Einen Film ${typed} gibt es nicht. Das eine Datenblatt, das es gibt, zeigt \`/sheet list\`.`
      : `Einen Film ${typed} gibt es nicht. Die ${count} Datenblätter, die es gibt, zeigt \`/sheet list\`.`,
};
