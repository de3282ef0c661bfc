import { de as batch } from "../words/batch.de.ts";
import type { ChangeWords } from "./en.ts";

export const de: ChangeWords = {
  fault: {
    discarded: (label) =>
      `${label} ist entsorgt: da kommt nichts mehr dazu. War das ein Versehen, nimm die Zeile mit \`/batch correct\` zurück.`,
    noReading: "Sag, was du gemessen hast: `clearing:0:45`, `ph:5.5`, `silver:3.5` oder eine `note:`.",
    notAFixer: (name, kind) =>
      `${name} (${batch.kind[kind]}) hat keine Klärzeit, nur ein Fixierbad hat eine. Gib \`ph:\` oder eine \`note:\` an.`,
    notSoMuch: (label, ml) =>
      `In ${label} sind laut Buch ${ml}. Ist es mehr, stell das zuerst mit \`/batch correct\` richtig.`,
    whereTo:
      "Sag, wohin das gebrauchte Bad kam: `to:silver` (Silbersammlung), `to:drain` (Ausguss) oder `to:supplier` (Lieferant).",
    overflow: (label, bottle, left) =>
      `In die Flasche von ${label} passen ${bottle}, und ${left} sind darin. Nimm zuerst gebrauchtes Bad heraus: \`remove:300 ml to:silver\`.`,
    silverDrain: (label) =>
      `**Nicht in den Ausguss**: gebrauchtes Fixierbad enthält Silber. Sammle ${label} (\`to:silver\`) oder gib es dem Lieferanten zurück (\`to:supplier\`).`,
    nothingToCorrect:
      "Sag, was nicht stimmt: `line:4` nimmt diese Zeile zurück, `ml:-200` oder `rolls:2` kommen zu dem, was im Buch steht.",
    quarters: "Schreib Filme in Vierteln: ein Planfilm 4x5 ist 0.25.",
    noSuchLine: (label, line, lines) =>
      `Im Buch von ${label} gibt es keine Zeile ${line}: es hat ${lines}. Du siehst sie mit \`/batch ledger batch:${label}\`.`,
    lineStays:
      "Diese Zeile bleibt: ein Ansetzen nimmt `/batch discard` zurück, eine Korrektur eine weitere Korrektur.",
    takenBack: "Diese Zeile ist schon zurückgenommen. Nichts ist geändert.",
    notWorn: (label) => `${label} ist bereit: dafür braucht niemand eine Erlaubnis.`,
    unknownPerson: (name) =>
      `In diesem Kurs kenne ich niemanden namens ${name}. Schreib den Namen wie im Kurs.`,
  },
  fit: (name, state) => `${name}: ${state}.`,
  unfit: (name, standing, why) => `${name} ist ${standing}: ${why}.`,
  noted: (name) => `Notiert für ${name}.`,
  reckoned: (seconds) => ` Bis zur Probe hatte ich mit ${seconds} gerechnet.`,
  exhausted: (label, clearing, fresh) =>
    `**${label} ist verbraucht: nicht mehr nehmen.** Es klärt in ${clearing}, frisch waren es ${fresh}: beim Doppelten ist Schluss (US Navy NAVEDTRA 14209). Es kommt in die Silbersammlung.`,
  cleared: (label, clearing, twice, thrice, end) =>
    `**${clearing}** Klärzeit: Pläne mit ${label} fixieren ab jetzt mindestens ${twice}, Flachkristallfilm ${thrice}. Bei ${end} ist Schluss.`,
  topped: (label, now, before) =>
    `**${now}** sind jetzt in ${label}, vorher ${before}. Die Warnungen beginnen von vorn.`,
  testNext: "Mach vor dem nächsten Film eine Klärprobe.",
  noRevival: "Frisches Bad belebt kein totes: im Zweifel neu ansetzen.",
  went: {
    silver: (ml, name) => `**${ml}** von ${name} in die Silbersammlung.`,
    drain: (ml, name) => `**${ml}** von ${name} in den Ausguss.`,
    supplier: (ml, name) => `**${ml}** von ${name} zurück an den Lieferanten.`,
  },
  gone: (label) => ` ${label} gibt es nicht mehr; die Nummer wird nicht wieder vergeben.`,
  stays: (ml) => ` ${ml} sind noch darin.`,
  cautions: {
    silver:
      "Sammelgefäß schließen und beschriften; keine Säure hinein. Was gesammelt ist, zeigt `/batch waste`.",
    drain: "Nur wo es die Regeln am Ort erlauben, mit viel Wasser und nie in eine Klärgrube.",
    supplier: "Frag den Lieferanten, wie es zu verpacken ist.",
  },
  rulesFirst: "Etikett, Sicherheitsdatenblatt und die Regeln am Ort gehen vor.",
  corrected: "Mit einer neuen Zeile richtiggestellt; was da stand, bleibt zu lesen.",
  beforeAndNow: (before, now) => `Vorher: ${before}. Jetzt: ${now}`,
  allowed: (person, label, why) =>
    `**${person}** darf ${label} trotzdem für eine Dose nehmen (${why}). Wer es erlaubt hat, steht im Buch.`,
  fixLonger:
    "Fixiere doppelt so lang, wie es klärt, und danach noch einmal in frischem Fixierbad, sobald es welches gibt.",
};
