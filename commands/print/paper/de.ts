import type { PaperWords } from "./en.ts";

export const de: PaperWords = {
  noName: (paper) =>
    `Eine Schachtel ${paper} gibt es noch nicht. Sag, was darauf steht: \`name:\`, \`kind:\` und \`size:\`.`,
  check:
    "Was du weggelassen hast, steht auf dem Üblichen: PE-Papier, 18x24 cm. Gib es an, wenn das nicht stimmt.",
  newLot:
    "Eine neue Charge: Was an der alten gemessen wurde, zählt nicht mehr. Mach auf beiden einen Teststreifen, und sag es mir mit `/print measure`.",
  removed: (paper) =>
    `Schachtel ${paper} ist von der Liste. Bei Abzügen, die darauf gemacht sind, bleibt sie stehen.`,
};
