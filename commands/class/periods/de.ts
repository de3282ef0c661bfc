import type { BellWords } from "./en.ts";

const termine = (count: number): string => (count === 1 ? "1 Kurstermin" : `${count} Kurstermine`);

export const de: BellWords = {
  none: "Der Kurs hat noch keine Kurstermine: `/class periods days:mo, mi from:18:00 to:20:30 name:Abendkurs`.",
  count: (periods, zone) => `**${termine(periods)}** in der Woche (${zone}):`,
  setup: "Einrichtung",
  rings: (time, relative) => `Die Klingel läutet um ${time}, ${relative}.`,
  nextBegins: (relative, period) => `Die nächste beginnt ${relative}: ${period}.`,
  added: (count) => `Notiert: ${termine(count)}.`,
  removed: (period) => `Herausgenommen: ${period}.`,
  noWeekly: (notes) =>
    `**Aus der Datei wird nichts übernommen:** Kein Termin darin kommt jede Woche.\n${notes}`,
  incomplete: "Sag alle drei: `days:mo, mi from:18:00 to:20:30`.",
  noneToRemove: "Es gibt keinen Kurstermin, den man herausnehmen könnte.",
  noSuchPeriod: (number, count) =>
    `Einen Kurstermin ${number} gibt es nicht. Sie gehen von 1 bis ${count}: Sieh \`/class periods\`.`,
};
