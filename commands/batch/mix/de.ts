import { de as batch } from "../words/batch.de.ts";
import type { MixWords } from "./en.ts";

export const de: MixWords = {
  notYet: "Dieser Tag kommt erst noch. Notiere eine Flasche, wenn sie angesetzt ist.",
  bottleTooSmall: (bottle, volume) =>
    `Eine Flasche von ${bottle} ist zu klein für ${volume}. Notiere jede Flasche für sich: Jede altert für sich.`,
  tabularAbove:
    "Flachkristallfilm belastet ein Fixierbad mehr als anderer Film: Seine Ergiebigkeit kann nicht höher sein. Gib auch `capacity:` an.",
  trayBath:
    "Ein Bad für Papier liegt in der Schale, für viele Abzüge: Lass `use:once` weg. Gezählt wird in Blatt, was hindurchgeht.",
  mixed: (label, ml, bath, kind, date) =>
    `**${label}**: Schreib das auf die Flasche. ${ml} ${bath}, ${batch.kind[kind]}, angesetzt am ${date}.`,
  sum: (concentrate, water, isStock) =>
    `**${water} Wasser, dann ${concentrate} ${isStock ? "Stammlösung" : "Konzentrat"}**.`,
  powder: (ml) => `Pulver zu ${ml} Stammlösung, wie es auf der Packung steht.`,
  goodFor: (rolls, ofPaper) => `reicht für ${batch.rolls(rolls, ofPaper)}`,
  orTabular: (rolls, ofPaper) =>
    ofPaper
      ? `oder ${batch.rolls(rolls, ofPaper)} Barytpapier`
      : `oder ${rolls} ${rolls === 1 ? "Film mit Flachkristallen" : "Filme mit Flachkristallen"}`,
  until: (date) => `haltbar bis ${date}`,
  partFull: (life) => ` (angebrochen: ${life})`,
  freshTested: (fresh) => `Frisch klärt es Film in ${fresh}; beim Doppelten ist es verbraucht.`,
  testNext: (label) =>
    `Jetzt eine Klärprobe: miss, wie lang ein Schnipsel unentwickelter Film darin klärt, und notiere es: \`/batch test batch:${label} clearing:0:45\`.`,
  concentrateShort: (taken, missing) =>
    `${taken} Konzentrat genommen, ${missing} mehr, als im Regal notiert. Stell das Regal mit \`/batch restock\` richtig.`,
  powderShort: (taken, missing) =>
    `Pulver für ${taken} genommen, für ${missing} mehr, als im Regal notiert. Stell das Regal mit \`/batch restock\` richtig.`,
  concentrateTaken: (taken, left) => `${taken} Konzentrat aus dem Regal genommen; noch da: ${left}.`,
  powderTaken: (taken, left) => `Pulver für ${taken} aus dem Regal genommen, es reicht noch für ${left}.`,
  wasRatio: "Das Verhältnis lese ich als Teile Konzentrat + Teile Wasser.",
  figures: (source) => `_Angaben: ${source}. Das Etikett der Packung geht vor._`,
};
