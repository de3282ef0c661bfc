import type { TurnWords } from "./turn.en.ts";

export const de: TurnWords = {
  atSink: { does: "Du bist dran: Gieß jetzt ein.", how: "Am Becken ist ein Platz frei." },
  atTrays: { does: "Du bist dran: Leg ihn jetzt ein.", how: "In den Schalen ist Platz." },
  atTank: {
    does: (tank) => `Du bist dran: Dose ${tank} ist frei.`,
    how: "Spül sie, trockne die Spirale und spul deinen Film im Dunkeln ein.",
  },
  brief: "Du bist dran",
  wait: "Warte: Du bekommst ein Signal, wenn du dran bist.",
};
