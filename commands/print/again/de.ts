import type { AgainWords } from "./en.ts";

export const de: AgainWords = {
  again: (head) => `Noch einmal ${head}`,
  asItWas: "Wie er war: Es hat sich nichts geändert.",
  changed: (before, stops) => `Er hatte ${before} (${stops}). Geändert hat sich:`,
  cost: (stops, step) => `Durch die Schritte der Zeitschaltuhr (${step}) sind es ${stops}.`,
  log: "Gemacht: eintragen",
  tooLong: "Das wäre über eine Stunde. Öffne das Objektiv, oder stell den Kopf tiefer.",
};
