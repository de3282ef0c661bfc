import type { UnreadableKind } from "../../../store/shapes/unreadable.ts";
import type { MendWords } from "./en.ts";

const ADVICE: Readonly<Record<UnreadableKind, string>> = {
  tank: "Gib sie mit `/tank add` neu an, oder leg sie beiseite.",
  sheet: "Lies es neu ein, oder leg es beiseite.",
  plan: "Wem er gehört, der macht einen neuen.",
  run: "Dafür kommen keine Signale: Diesen Film nach der Uhr zu Ende bringen.",
  batch: "Sie wird niemandem angeboten. Leg sie beiseite, wenn sie leer oder neu angesetzt ist.",
  roll: "Er fehlt im Filmbuch.",
  shelf: "Gib ihn mit `/batch restock` neu an.",
  handover: "Sie fehlt in der Liste.",
  enlarger: "Gib ihn mit `/print enlarger` neu an, oder leg ihn beiseite.",
  paper: "Gib es mit `/print paper` neu an, oder leg es beiseite.",
  print: "Er fehlt im Buch der Abzüge.",
  habit: "Bis du sie angibst, gilt der übliche Wert: `/class setup`.",
};

export const de: MendWords = {
  allReadable: "Alles im Kurs lässt sich lesen.",
  title: (count) =>
    count === 1
      ? "**1 Eintrag des Kurses lässt sich nicht lesen.** Alles andere geht weiter."
      : `**${count} Einträge des Kurses lassen sich nicht lesen.** Alles andere geht weiter.`,
  entry: (name, kind, why, advice) => `- **${name}** (${kind}): ${why}. ${advice}`,
  advice: (kind) => ADVICE[kind],
  more: (count) => `… und noch ${count}.`,
  wasAside:
    "Beim Wechsel auf diese Version beiseitegelegt, weil nichts es lesen konnte; was dort stand, bleibt aufgehoben:",
  asideEntry: (name, what) => `- **${name}**: ${what}. Gib es neu an.`,
  unknown: (typed) =>
    `Alles unter ${typed} lässt sich lesen. Was sich nicht lesen lässt, zeigt \`/class mend\`.`,
  toTeachers: (names, count) =>
    count === 1
      ? `**${names} lässt sich nicht lesen.** Alles andere geht weiter. \`/class mend\` sagt, warum, und legt es beiseite.`
      : `**${count} Einträge lassen sich nicht lesen**: ${names}. Alles andere geht weiter. \`/class mend\` sagt, warum, und legt sie beiseite.`,
  toOwner: (run) =>
    `**Für ${run} kommen keine Signale mehr**: Die Aufzeichnung lässt sich nicht lesen. Bring den Film nach der Uhr zu Ende oder frag die Lehrkraft.`,
  show: "Zeig, warum",
};
