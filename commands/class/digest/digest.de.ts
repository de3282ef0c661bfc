import { de as batch } from "../../batch/words/batch.de.ts";
import type { DigestWords } from "./digest.en.ts";

export const de: DigestWords = {
  late: (late, date, time, missed) =>
    `**${late} zu spät**: Das war für den ${date}, ${time}.${missed === 0 ? "" : missed === 1 ? " Einmal davor fiel es aus." : ` ${missed}-mal davor fiel es aus.`}`,
  marks: {
    tired: "lässt nach",
    "last-films": "letzte Filme",
    exhausted: "nicht genug für einen Film",
    "out-of-date-soon": "läuft bald ab",
    "out-of-date": "abgelaufen",
    "test-overdue": "braucht eine Klärprobe",
    "replenish-due": "braucht Regenerat",
  },
  nextPeriod: "Der nächste Kurstermin",
  period: (title, time, relative) => `**${title}** um ${time}, ${relative}.`,
  mixBefore: (what) => `**Vorher ansetzen: ${what}.** Eine Hilfskraft oder die Lehrkraft.`,
  testLamps: (which) =>
    `**Dunkelkammerlicht ${which}: Die Probe ist fällig.** Eine Hilfskraft oder die Lehrkraft: \`/tray test\`.`,
  dontUse: (which) => `**Nicht nehmen:** ${which}.`,
  watch: (which) => `Im Auge behalten: ${which}.`,
  ready: "Bereit:",
  noneReady: "Nichts Angesetztes ist bereit.",
  developer: (product) => `${product} (Entwickler)`,
  kind: (kind) => batch.kind[kind],
  short: (name, leftRolls, expected, ofPaper) => {
    const left = leftRolls === 0 ? "nichts bereit" : batch.rollsLeft(leftRolls, ofPaper);
    const wanted = expected === null ? "" : `, bis zu ${batch.rolls(expected, ofPaper)} erwartet`;
    return `${name} (${left}${wanted})`;
  },
  developed: (rolls, stopped) =>
    `**${batch.rolls(rolls, false)}** in den letzten sieben Tagen entwickelt${stopped > 0 ? `, ${stopped} abgebrochen` : ""}.`,
  toSilver: (ml) => `${ml} Fixierbad in die Silbersammlung`,
  toDrain: (ml) => `${ml} in den Ausguss, wie es die Regeln am Ort erlauben`,
  toSupplier: (ml) => `${ml} zurück an den Lieferanten`,
  noWaste: "nichts notiert",
  volumes: (mixed, used, waste) => `Angesetzt: ${mixed}. Entwickler verbraucht: ${used}. Abfall: ${waste}.`,
  collected: (ml, low, high) =>
    `In der Sammlung: **${ml}** gebrauchtes Fixierbad mit etwa ${low} bis ${high} g Silber. Abgeben: \`/batch handover\`; wie, sagen die Regeln am Ort.`,
  ending: (which) => `Läuft binnen einer Woche ab: ${which}. Zuerst verbrauchen.`,
};
