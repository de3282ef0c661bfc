import type { ExportWords } from "./en.ts";

const prints = (count: number): string => (count === 1 ? "1 Abzug" : `${count} Abzüge`);
const KEPT =
  "für jeden eine Zeile, in jedem Spaltennamen die Einheit. Darin stehen Namen und Notizen: Verwahr die Datei wie eine Kursliste.";

export const de: ExportWords = {
  exported: (count, format) => `**${prints(count)}** als ${format}: ${KEPT}`,
  exportedMany: (count, format) => `**Mehr als ${count.toLocaleString("de")} Abzüge** als ${format}: ${KEPT}`,
  rest: (print, format) => `**Die Abzüge vor ${print}** als ${format}: ${KEPT}`,
};
