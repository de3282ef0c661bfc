import type { EnlargerWords } from "./en.ts";

export const de: EnlargerWords = {
  nameless: (number) => `Vergrößerer ${number}`,
  check:
    "Was du weggelassen hast, steht auf dem Üblichen: Kondensor, 50 mm, Schritte von 0,5 s. Gib es an, wenn das nicht stimmt.",
  removed: (name) =>
    `Vergrößerer ${name} ist von der Liste. Bei Abzügen, die mit ihm gemacht sind, bleibt er stehen.`,
};
