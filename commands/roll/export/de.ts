import type { ExportWords } from "./en.ts";

const films = (count: number): string => (count === 1 ? "1 Film" : `${count} Filme`);
export const de: ExportWords = {
  exported: (count, format) =>
    `**${films(count)}** als ${format}: für jeden Film eine Zeile, in jedem Spaltennamen die Einheit. Darin stehen Namen und Notizen: Verwahr die Datei wie eine Kursliste.`,
  more: (page) => `Es gibt mehr: Mit \`page:${page}\` kommen die nächsten.`,
};
