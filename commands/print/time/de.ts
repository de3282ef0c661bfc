import type { TimeWords } from "./en.ts";

export const de: TimeWords = {
  head: (set, from, stops) => `**${set}** statt ${from} (${stops}).`,
  same: (set) => `**${set}**: Es ändert sich nichts.`,
  cost: (stops, step) => `Durch die Schritte der Zeitschaltuhr (${step}) sind es ${stops}.`,
  tooLong: "Das wäre über eine Stunde. Öffne das Objektiv, oder stell den Kopf tiefer.",
};
