import { saySeconds } from "../../speech/wording.ts";
import type { StripStepWords } from "./strip-step.en.ts";

const moveCard: StripStepWords["moveCard"] = ({ way, from, to }) => {
  if (way === "cover") return from === 1 ? "Lass alle Felder offen" : `Deck Feld ${from - 1} ab`;
  return from === to ? `Deck alles außer Feld ${to} ab` : `Gib Feld ${from} frei`;
};

export const de: StripStepWords = {
  doing: {
    expose: (bars, seconds) =>
      `${moveCard(bars)}, dann Licht an für ${saySeconds(seconds)}. Drück auf den Knopf, wenn es an ist.`,
    judge: () =>
      "Entwickle den Streifen ganz aus und sieh ihn dir bei weißem Licht an. Drück auf den Knopf, dann auf das Feld, das stimmt.",
  },
  labels: { expose: "Licht ist an", judge: "Angesehen" },
  moveCard,
  lampOff: "Licht aus.",
  lampOffIn: (seconds) => `Licht aus in ${saySeconds(seconds)}.`,
  thenMove: (move) => `Danach: ${move}.`,
};
