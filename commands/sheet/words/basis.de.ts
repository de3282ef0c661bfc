import { formatSeconds } from "../../speech/wording.ts";
import type { BasisWords } from "./basis.en.ts";
import { germanOf } from "./stored.de.ts";

export const de: BasisWords = {
  stored: germanOf,
  point: (source) => `eine Zeile des Datenblatts (${source})`,
  between: (sources) => `zwischen Zeilen des Datenblatts (${sources})`,
  onePoint: (source, factor, range) =>
    `die einzige Zeile des Datenblatts (${source}) und ein Faktor von ${factor} je 10 °C: ${range}`,
  beyond: (source, factor, range) =>
    `die nächste Zeile des Datenblatts (${source}) und ein Faktor von ${factor} je 10 °C: ${range}`,
  ruleOfThumb: (source, range) => `${source}: ${range}`,
  house: (rule) => `Hausregel: ${rule}`,
  rule: (rule, source) => `${rule} (${source})`,
  range: (low, high) => `${formatSeconds(low)} bis ${formatSeconds(high)}`,
  brief: {
    between: "zwischen Zeilen des Datenblatts",
    onePoint: (factor) => `die einzige Zeile des Datenblatts und ein Faktor von ${factor} je 10 °C`,
    beyond: (factor) => `die nächste Zeile des Datenblatts und ein Faktor von ${factor} je 10 °C`,
    ruleOfThumb: "Faustregel",
    house: "Hausregel",
  },
  restsOn: (bases) => `Grundlage: ${bases}.`,
};
