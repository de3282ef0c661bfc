import type { BatchKind } from "../../../store/shapes/batch.ts";
import { de as batch } from "./batch.de.ts";
import type { WarnWords } from "./warn.en.ts";

/** What somebody mixes anew. */
const NEW: Record<BatchKind, string> = {
  developer: "neuen Entwickler",
  stop: "neues Stoppbad",
  fixer: "neues Fixierbad",
  "wash-aid": "neue Wässerungshilfe",
  "wetting-agent": "neues Netzmittel",
  "paper-developer": "neuen Papierentwickler",
  "paper-stop": "neues Papier-Stoppbad",
  "paper-fixer": "neues Papierfixierbad",
  "paper-wash-aid": "neue Papier-Wässerungshilfe",
};
const OTHER: Record<BatchKind, string> = {
  developer: "ein anderer Entwickler",
  stop: "ein anderes Stoppbad",
  fixer: "ein anderes Fixierbad",
  "wash-aid": "eine andere Wässerungshilfe",
  "wetting-agent": "ein anderes Netzmittel",
  "paper-developer": "ein anderer Papierentwickler",
  "paper-stop": "ein anderes Papier-Stoppbad",
  "paper-fixer": "ein anderes Papierfixierbad",
  "paper-wash-aid": "eine andere Papier-Wässerungshilfe",
};
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const de: WarnWords = {
  open: (label) => `Weiter geht es mit ${label}.`,
  mixNew: (kind) => `Jetzt setzt eine Hilfskraft oder die Lehrkraft ${NEW[kind]} an (\`/batch mix\`).`,
  useInstead: (label) => `Nimm stattdessen **${label}**.`,
  intoSilver: "Das alte Bad kommt in die Silbersammlung, nie in den Ausguss (`/batch discard`).",
  away: "Das alte Bad wird entsorgt, wie es die Regeln am Ort sagen (`/batch discard`).",
  tired: (label, bath, left, clears, next) =>
    `**${label}: ${left}** (${bath}). Es lässt nach${clears === "" ? "" : `, ${clears}; neue Pläne fixieren entsprechend länger`}. ${next}`,
  lastFilms: (label, bath, left, next) => `**${label}: ${left}** (${bath}). ${next}`,
  notEnough: (label, bath, ml, next) =>
    `**In ${label} ist nicht genug für einen Film** (${bath}): ${ml}. ${next}`,
  exhausted: (label, bath, why) =>
    `**${label} ist verbraucht: nicht mehr nehmen.** ${capital(bath)}: ${why}.`,
  outOfDate: (label, bath, why) =>
    `**${label} ist abgelaufen: nicht mehr nehmen.** ${capital(bath)}: ${why}.`,
  soon: (label, bath, left, time, date) => {
    const when = "hours" in time ? `${time.hours} h` : time.days === 1 ? "1 Tag" : `${time.days} Tagen`;
    return `**${label} läuft in ${when} ab** (${bath}, ${left}), am ${date}. Zuerst verbrauchen.`;
  },
  testOverdue: (label, bath, rollsSince) =>
    `**${label} braucht eine Klärprobe** (${bath}): ${rollsSince === null ? "noch nie geprüft" : `${rollsSince} seit der letzten`}. Jetzt legt eine Hilfskraft oder die Lehrkraft bei Zimmerlicht einen Schnipsel unentwickelten Film in etwas davon und misst, bis er klar ist: \`/batch test batch:${label} clearing:0:45\`.`,
  rotate:
    "Jetzt setzt eine Hilfskraft oder die Lehrkraft eine frische Flasche an, und das zweite Bad rückt auf (`/batch rotate`).",
  replenishDue: (label, bath, ml) =>
    `**${ml} Regenerat für ${label}** (${bath}). Jetzt gibt eine Hilfskraft oder die Lehrkraft es dazu, nimmt aus einer vollen Flasche vorher gebrauchtes Bad heraus und notiert es: \`/batch topup\`.`,
  replenished: (ml) => `${ml} sind drin`,
  mixed: (date, ml, rolls) => `Angesetzt am ${date}, ${ml}; seitdem ${rolls}`,
  fresh: (seconds) => `Klärzeit frisch ${seconds}`,
  toppedUp: (times) => `${times === 1 ? "einmal" : `${times}-mal`} aufgefüllt`,
  figures: (figures, source) => `_${figures}. Grenzen: ${source}. Der Kurs weiß Bescheid._`,
  see: (label) => `${label} ansehen`,
  collect: "In die Silbersammlung",
  movedUp: "aufgerückt, jetzt das erste Fixierbad",
  overEnd: (label) =>
    `**Mit deinem Film hat ${label} mehr Filme als erlaubt: Sag es jetzt der Lehrkraft.** Lass den Film darin, bis es geprüft ist; vielleicht braucht er danach ein anderes Fixierbad.`,
  dontPour: (old, why, kind) =>
    `**Gieß ${old} nicht ein.** ${capital(why)}, und ${OTHER[kind]} ist nicht bereit. Ist der Film schon im Wasser, lass ihn dort: Wasser schadet ihm nicht. Sag es der Lehrkraft.`,
  takeOther: (to, old, why, kind) =>
    `**Nimm ${to}, nicht ${old}**, wenn dieses Bad an der Reihe ist: ${batch.kind[kind]}. ${old}: ${why}. Dein Plan ist geändert.`,
};
