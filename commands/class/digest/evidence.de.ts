import { de as batch } from "../../batch/words/batch.de.ts";
import type { EvidenceWords } from "./evidence.en.ts";

export const de: EvidenceWords = {
  share: (label, fault, faulty, rolls, otherFaulty, others) =>
    `**${faulty} von ${rolls} ${rolls === 1 ? "Film" : "Filmen"} durch ${label} ${faulty === 1 ? "zeigt" : "zeigen"} „${fault}“**; sonst sind es in diesen Wochen ${otherFaulty} von ${batch.rolls(others, false).replace("Filme", "Filmen")}.`,
  locale: "de-DE",
  rarest: "in weniger als einem von einer Million Fällen",
  rare: (odds) => `in etwa einem von ${odds} Fällen`,
  noProof: (label, rare) =>
    `Wäre ${label} wie die anderen, käme das durch Zufall nur ${rare} vor. Ein Beweis ist es nicht: Sieh nach, ob eine Dose, eine Person oder ein Tag dahintersteckt. Jetzt: Prüf ${label} und nimm die Flasche nicht, bis du es weißt.`,
  rollsThrough: (label) => `Filme durch ${label}`,
  see: (label) => `${label} ansehen`,
};
