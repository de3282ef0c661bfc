import { de as batch } from "../words/batch.de.ts";
import type { ChangeWords } from "./en.ts";

export const de: ChangeWords = {
  fault: {
    discarded: (label) =>
      `${label} ist entsorgt: Da kommt nichts mehr dazu. War das ein Versehen, nimm die Zeile mit \`/batch correct\` zurück.`,
    noReading: "Sag, was du gemessen hast: `clearing:0:45`, `ph:5,5`, `silver:3,5` oder eine `note:`.",
    notAFixer: (name, kind) =>
      `${name} (${batch.kind[kind]}) hat keine Klärzeit, nur ein Fixierbad hat eine. Gib \`ph:\` oder eine \`note:\` an.`,
    notSoMuch: (label, ml) =>
      `Laut Flaschenbuch enthält ${label} ${ml}. Ist es mehr, stell das zuerst mit \`/batch correct\` richtig.`,
    whereTo:
      "Sag, wohin das gebrauchte Bad kam: `to:silver` (Silbersammlung, nur Fixierbad), `to:drain` (Ausguss), `to:waste` (eigener Kanister) oder `to:supplier` (Lieferant).",
    overflow: (label, bottle, left, tooMuchMl, to) =>
      `Die Flasche von ${label} fasst ${bottle}; darin: ${left}. Nimm zuerst gebrauchtes Bad heraus: \`remove:${tooMuchMl} ml to:${to}\`.`,
    notReplenished: (label) =>
      `${label} wird nicht regeneriert: beim Ansetzen hat niemand gesagt, wie viel ein Film braucht (\`/batch mix replenish:70 ml\`). Notiere, was dazukam, mit \`as:fresh\`.`,
    correctedOverflow: (label, bottle, ml) =>
      `In die Flasche von ${label} passen ${bottle}, es können also nicht ${ml} darin sein. Miss noch einmal, oder nimm die falsche Zeile zurück (\`line:\`).`,
    nothingToCorrect:
      "Sag, was nicht stimmt: `line:4` nimmt diese Zeile zurück, `ml:-200` oder `rolls:2` kommen zu dem, was im Flaschenbuch steht.",
    belowZeroMl: (label, ml) =>
      `Laut Flaschenbuch enthält ${label} ${ml}: Mehr kann davon nicht abgehen. Miss noch einmal, oder nimm eine Zeile zurück (\`line:\`).`,
    belowZeroRolls: (label, rolls) =>
      `Laut Flaschenbuch ${rolls} durch ${label}: Mehr kann davon nicht abgehen. Zähl noch einmal, oder nimm eine Zeile zurück (\`line:\`).`,
    quarters: "Schreib Filme in Vierteln: Ein Planfilm 4x5 ist 0,25.",
    noSuchLine: (label, line, lines) =>
      `Im Flaschenbuch von ${label} gibt es keine Zeile ${line}, nur ${lines}. Du siehst sie mit \`/batch ledger batch:${label}\`.`,
    lineStays:
      "Diese Zeile bleibt: Ein Ansetzen nimmt `/batch discard` zurück, eine Korrektur eine weitere Korrektur.",
    takenBack: "Diese Zeile ist schon zurückgenommen. Es wurde nichts geändert.",
    notWorn: (label) => `${label} ist bereit: Dafür braucht niemand eine Erlaubnis.`,
    unknownPerson: (name) =>
      `In diesem Kurs gibt es niemanden namens ${name}. Schreib den Namen wie im Kurs.`,
  },
  fit: (name, state) => `${name}: ${state}.`,
  unfit: (name, standing, why) => `${name} ist ${standing}: ${why}.`,
  noted: (name) => `Notiert für ${name}.`,
  reckoned: (seconds) => ` Bis zur Probe hatte ich mit ${seconds} gerechnet.`,
  exhausted: (label, clearing, fresh, twice, thrice) =>
    `**${label} ist verbraucht: nicht mehr nehmen.** Es klärt in ${clearing}, frisch waren es ${fresh}: Beim Doppelten ist Schluss (US Navy NAVEDTRA 14209). Ein Film, der jetzt darin ist, braucht ${twice}, Flachkristallfilm ${thrice}. Es kommt in die Silbersammlung.`,
  longer: (films) =>
    films === 1
      ? "**1 laufender Film wird jetzt länger fixiert**, sein Besitzer weiß Bescheid."
      : `**${films} laufende Filme werden jetzt länger fixiert**, ihre Besitzer wissen Bescheid.`,
  again: (films) =>
    films === 1
      ? "**1 Film war zu kurz darin:** Sein Besitzer soll ihn noch einmal fixieren."
      : `**${films} Filme waren zu kurz darin:** Ihre Besitzer sollen sie noch einmal fixieren.`,
  silverOut: (label, grams, limit) =>
    `**${label} ist verbraucht: nicht mehr nehmen.** ${grams} g Silber im Liter, die Grenze liegt bei ${limit} g. Es kommt in die Silbersammlung.`,
  silverWithin: (label, grams, limit) =>
    `**${grams} g** Silber im Liter von ${label}; bei ${limit} g ist Schluss.`,
  silverSources:
    "_Die Quellen widersprechen sich: 2 g/l für Natrium- und 4 g/l für Ammoniumthiosulfat (ein Merkblatt für Druckereien), 8 bis 10 g/l bei Film (das Blatt eines Herstellers, aus dem Gedächtnis). Eine eigene Grenze setzt `/batch mix silver:`._",
  cleared: (label, clearing, twice, thrice, end) =>
    `**${clearing}** Klärzeit: Pläne mit ${label} fixieren ab jetzt mindestens ${twice}, Flachkristallfilm ${thrice}. Bei ${end} ist Schluss.`,
  topped: (label, now, before) =>
    `In ${label} jetzt **${now}**, vorher ${before}. Die Warnungen beginnen von vorn.`,
  stillToReplenish: (ml) => `${ml} Regenerat fehlen noch für den Film bisher.`,
  testNext: "Mach vor dem nächsten Film eine Klärprobe.",
  noRevival: "Frisches Bad belebt kein totes: im Zweifel neu ansetzen.",
  went: {
    silver: (ml, name) => `**${ml}** von ${name} in die Silbersammlung.`,
    drain: (ml, name) => `**${ml}** von ${name} in den Ausguss.`,
    waste: (ml, name) => `**${ml}** von ${name} in den eigenen Kanister.`,
    supplier: (ml, name) => `**${ml}** von ${name} zurück an den Lieferanten.`,
  },
  gone: (label) => ` ${label} gibt es nicht mehr; die Nummer wird nicht wieder vergeben.`,
  stillInTanks: (films) =>
    `**${films === 1 ? "1 Film ist" : `${films} Filme sind`} noch darin.** Sag es ihnen: Danach kommt dieses Bad dorthin, wo der Rest ist, in keine Flasche.`,
  stays: (ml) => ` Noch darin: ${ml}.`,
  cautions: {
    silver:
      "Sammelgefäß schließen und beschriften; keine Säure hinein. Was gesammelt ist, zeigt `/batch waste`.",
    drain: "Nur wo es die Regeln am Ort erlauben, mit viel Wasser und nie in eine Klärgrube.",
    waste:
      "Ein Kanister nur für diese Art: schließen, beschriften, nie Fixierbad oder Säure dazu. Ihn nimmt, wer den Sonderabfall der Schule abholt.",
    supplier: "Frag den Lieferanten, wie es zu verpacken ist.",
  },
  rulesFirst: "Etikett, Sicherheitsdatenblatt und die Regeln am Ort gehen vor.",
  corrected: "Mit einer neuen Zeile richtiggestellt; was da stand, bleibt zu lesen.",
  beforeAndNow: (before, now) => `Vorher: ${before}. Jetzt: ${now}`,
  allowed: (person, label, why) =>
    `**${person}** darf ${label} trotzdem für eine Dose nehmen (${why}). Wer es erlaubt hat, steht im Flaschenbuch.`,
  fixLonger:
    "Fixiere doppelt so lang, wie es klärt, und danach noch einmal in frischem Fixierbad, sobald es welches gibt.",
};
