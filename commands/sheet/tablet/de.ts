import { formatBothScales, formatNumber, formatSeconds, joinAnd, saySeconds } from "../../speech/wording.ts";
import type { TabletWords } from "./en.ts";

export const de: TabletWords = {
  noReadings:
    "Was hast du gemessen? Gib `readings:8:00 0.02 0.11 …` an, die Zeit zuerst, oder mit `file:` eine Datei mit einer Zeile oder Spalte je Zeit.",
  noTime: (typed) =>
    `In ${typed} steht keine Entwicklungszeit. Beginn jeden Streifen damit, dann die Dichten: \`8:00 0,02 0,11 0,21 …\`; zwischen Streifen ein Semikolon.`,
  noDensity: (typed) =>
    `${typed} ist keine Dichte. Schreib sie wie 0,62, oder als verglichene Sekunden: 13/10 für 13 s, wo klarer Film 10 braucht.`,
  fewSteps: (seconds, count) =>
    `Der Streifen von ${formatSeconds(seconds)} hat ${count} Werte. Für eine Kurve sind sechs das Wenigste.`,
  wanted: (seconds, low, high, aim) =>
    Math.round(high) - Math.round(low) < 2
      ? `**${formatSeconds(seconds)}** für einen Gradienten von ${aim}: eine Schätzung zwischen den Zeiten, die du probiert hast.`
      : `**${formatSeconds(seconds)}** für einen Gradienten von ${aim}, Schätzung: ${formatSeconds(low)} bis ${formatSeconds(high)} nach der Streuung der Werte.`,
  notBracketed: (aim) =>
    `**Noch keine Zeit für einen Gradienten von ${aim}**: Die Zeiten, die du probiert hast, liegen nicht darum. Entwickle einen weiteren Streifen, länger, wenn sie flacher sind, kürzer, wenn härter.`,
  oneStrip: "**Nur eine Zeit**: Mit einer zweiten finde ich die Zeit für den Gradienten, den du willst.",
  strip: (seconds, values) => `- ${formatSeconds(seconds)}: ${values.join(", ")}`,
  triangle: (value) => `Gradient ${value} über 1,30 log H`,
  mean: (value) => `${value} über 1,50`,
  index: (value) => `Kontrastindex ${value}`,
  gamma: (value) => `Gamma ${value}`,
  fog: (value) => `Schleier ${value}`,
  tooShort: "zu wenige Stufen für einen Gradienten",
  speed: (index, seconds) => `Effektiver Belichtungsindex etwa ${index}, bei ${saySeconds(seconds)}.`,
  kinks: (seconds, steps) => {
    const which = joinAnd(steps.map(String));
    const kink =
      steps.length === 1
        ? `Stufe ${which} bricht aus der Linie ihrer Nachbarn aus`
        : `Die Stufen ${which} brechen aus der Linie ihrer Nachbarn aus`;
    return `Streifen von ${formatSeconds(seconds)}: ${kink}. Miss noch einmal: Es ist ein Versehen oder ein echter Knick. Geglättet wird nichts.`;
  },
  differ:
    "Die Verfahren ergeben nicht dieselbe Zahl: ISO 6:1993 nimmt 1,30 log H (Ziel 0,62), ein britischer Hersteller 1,50, der Index von Kodak zwei Bögen (Ziel 0,56 bis 0,60: US Navy).",
  saved: (seconds, tenthsC, sheet) =>
    `${formatSeconds(seconds)} bei ${formatBothScales(tenthsC)} steht jetzt auf dem Datenblatt von ${sheet}.`,
  needForSave: "Soll es bleiben, nenn auch `film:`, `developer:`, `dilution:` und `temp:`.",
  nothingToSave:
    "Es gibt keine Zeit zum Behalten: Die Zeiten, die du probiert hast, liegen nicht um den Gradienten, den du willst.",
  source: (date, person) => `in diesem Kurs gemessen, ${date}, von ${person}`,
  pictureAlt: (strips) => `Dichte über log Belichtung, eine Kurve für jede Entwicklungszeit: ${strips}.`,
  axes: { x: "log Belichtung", y: "Dichte" },
  number: (value) => formatNumber(Math.round(value * 100) / 100),
};
