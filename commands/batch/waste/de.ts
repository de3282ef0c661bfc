import type { WasteWords } from "./en.ts";

export const de: WasteWords = {
  notYet: "Dieser Tag kommt erst noch. Notiere eine Abgabe, wenn sie geschehen ist.",
  nothingCollected:
    "Es ist kein gesammeltes Fixierbad notiert. Dahin kommt es mit `/batch discard to:silver` oder beim Auffüllen, wenn etwas herausgenommen wird.",
  notSoMuch: (ml) =>
    `Als gesammelt notiert: nur ${ml}. Ist mehr im Gefäß, notiere zuerst, was fehlt: \`/batch discard\`.`,
  caution:
    "Gebrauchtes Fixierbad enthält Silber: geschlossenes, beschriftetes Gefäß, keine Säure hinein, Handschuhe und Schutzbrille an, nie in den Ausguss. Was gesammelt, gelagert und abgegeben werden darf und wie, sagen die Regeln am Ort und das Sicherheitsdatenblatt.",
  gramsBetween: (low, high) => `${low} bis ${high} g`,
  measured: "mit Teststreifen gemessen",
  rule: "eine Faustregel, aus dem Gedächtnis: 0,1 bis 0,3 g je Film; verbrauchtes Fixierbad enthält nach Veröffentlichungen 3 bis 5 g/l (Harvard EHS; Merkblätter für Druckereien)",
  partly: (rule) => `zum Teil mit Teststreifen gemessen, sonst ${rule}`,
  collected: (ml, grams, basis) =>
    `**${ml}** gebrauchtes Fixierbad in der Sammlung, darin ${grams} Silber (${basis}).`,
  empty: "Zurzeit ist kein gebrauchtes Fixierbad in der Sammlung.",
  handovers: "Abgegeben:",
  handover: (date, ml, grams, to, by) => `- ${date}: ${ml}, ${grams} Silber, an ${to} (${by})`,
  handed: (ml, to, date, grams, basis) =>
    `**${ml}** gebrauchtes Fixierbad am ${date} abgegeben an ${to}, darin ${grams} Silber (${basis}).`,
  stays: (ml) => `Noch in der Sammlung: ${ml}.`,
  emptied: "Die Sammlung ist jetzt leer.",
  receipt: "Heb die Quittung auf: Die Regeln am Ort verlangen sie vielleicht.",
};
