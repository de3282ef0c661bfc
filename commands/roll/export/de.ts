import type { ExportWords } from "./en.ts";

const films = (count: number): string => (count === 1 ? "1 Film" : `${count} Filme`);
const KEPT =
  "für jeden Film eine Zeile, in jedem Spaltennamen die Einheit. Darin stehen Namen und Notizen: Verwahr die Datei wie eine Kursliste.";

export const de: ExportWords = {
  exported: (count, format) => `**${films(count)}** als ${format}: ${KEPT}`,
  exportedMany: (count, format) => `**Mehr als ${count.toLocaleString("de")} Filme** als ${format}: ${KEPT}`,
  rest: (roll, format) => `**Die Filme vor ${roll}** als ${format}: ${KEPT}`,
  noSuchRoll: (typed) => `Einen Film ${typed} gibt es nicht. Schreib seine Nummer wie L1200.`,
};
