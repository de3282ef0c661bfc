import type { UnreadableKind } from "../../../store/shapes/unreadable.ts";
import type { UnreadableWords } from "./unreadable.en.ts";

const KINDS: Readonly<Record<UnreadableKind, string>> = {
  tank: "Dose",
  sheet: "Datenblatt",
  plan: "Plan",
  run: "Lauf",
  batch: "Flasche",
  roll: "Film im Filmbuch",
  shelf: "Vorrat",
  handover: "Abgabe",
  enlarger: "Vergrößerer",
  paper: "Schachtel Papier",
  print: "Abzug im Buch",
  habit: "Einstellung",
};

const FIELDS: Readonly<Record<string, string>> = {
  volumeMl: "Volumen",
  bottleMl: "Flaschengröße",
  timeConstantSeconds: "Abkühlzeit",
  roomTenthsC: "Raumtemperatur",
  tenthsC: "Temperatur",
  seconds: "Zeit",
  reels: "Zahl der Spiralen",
  rolls: "Zahl der Filme",
  capacitySqInPerLitre: "Kapazität",
};

export const de: UnreadableWords = {
  kind: (kind) => KINDS[kind],
  field: (field) => FIELDS[field] ?? (field === "" ? "Inhalt" : `\`${field}\``),
  handoverOf: (id) => `Abgabe ${id}`,
  below: (field, value, least) => `${field}: ${value}, es müssen mindestens ${least} sein`,
  above: (field, value, most) => `${field}: ${value}, es dürfen höchstens ${most} sein`,
  wrong: (field) => `${field}: nicht so, wie diese Version es speichert`,
  more: (count) => `und noch ${count}`,
  setAside: (name) =>
    `**${name} ist beiseitegelegt.** Es zählt nicht mehr mit; was dort stand, bleibt aufgehoben.`,
  freed: (name) =>
    `**${name} ist beiseitegelegt.** Der Lauf ist vorbei: Es kommen keine Signale mehr, und die Dose ist frei. Was dort stand, bleibt aufgehoben.`,
  refused: (name) =>
    `${name} gibt es, lässt sich aber nicht lesen; darum geschieht damit nichts. Warum, sieht die Lehrkraft mit \`/class mend\`.`,
  leftOut: (names, isOne) =>
    `${names} ${isOne ? "lässt" : "lassen"} sich nicht lesen und ${isOne ? "fehlt" : "fehlen"} hier. Warum, sagt \`/class mend\` (Lehrkraft).`,
  setAsideKey: (name) => `${name} beiseitelegen`,
};
