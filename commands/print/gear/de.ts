import type { GearWords } from "./en.ts";

export const de: GearWords = {
  enlargers: "**Vergrößerer**",
  papers: "**Papierschachteln**",
  noEnlarger: "Der Kurs hat noch keinen Vergrößerer angegeben: `/print enlarger` (Lehrkraft).",
  noPaper: "Der Kurs hat noch keine Schachtel Papier angegeben: `/print paper` (Hilfskraft).",
};
