import type { TurnWords } from "./turn.en.ts";

export const de: TurnWords = {
  atSink: "**Du bist dran: Gieß jetzt ein.** Am Becken ist ein Platz frei.",
  atTrays: "**Du bist dran: Leg ihn jetzt ein.** In den Schalen ist Platz.",
};
