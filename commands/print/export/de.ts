import type { ExportWords } from "./en.ts";

const prints = (count: number): string => (count === 1 ? "1 Abzug" : `${count} Abzüge`);
export const de: ExportWords = {
  exported: (count, format) =>
    `**${prints(count)}** als ${format}: für jeden eine Zeile, in jedem Spaltennamen die Einheit. Darin stehen Namen und Notizen: Verwahr die Datei wie eine Kursliste.`,
  more: (page) => `Es gibt mehr: Mit \`page:${page}\` kommen die nächsten.`,
};
