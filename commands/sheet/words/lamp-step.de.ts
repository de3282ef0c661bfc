import type { LampStepWords } from "./lamp-step.en.ts";

const minutes = (count: number): string => `${count} min`;

export const de: LampStepWords = {
  doing: {
    lamp: (at) =>
      at === undefined
        ? "Licht an. Drück auf den Knopf, wenn es an ist."
        : at.fromMinutes === 0
          ? `Licht aus: Leg ein Blatt an deinen Platz, Schicht nach oben, einen Karton über die ${at.row === 1 ? "untere" : "obere"} Hälfte, die erste Münze auf die andere. Licht an. Drück auf den Knopf, wenn es an ist.`
          : `Leg die nächste Münze neben die letzte: Sie deckt, was ${minutes(at.fromMinutes)} Licht hatte. Das Licht bleibt an. Drück auf den Knopf, wenn sie liegt.`,
    grey: () =>
      "Licht aus, Münzen und Karton weg. Deck einen Streifen am Rand ab und belichte den Rest unter dem Vergrößerer zu einem hellen Grau. Drück auf den Knopf, wenn das getan ist.",
    read: () =>
      "Licht aus. Entwickle, stoppe und fixiere das Blatt im Dunkeln, trockne es, und such nach sichtbaren Münzen. Drück auf den Knopf, dann notiere, was du siehst.",
  },
  labels: {
    lamp: (at) => (at === undefined || at.fromMinutes === 0 ? "Licht ist an" : "Münze liegt"),
    grey: "Grau ist darauf",
    read: "Angesehen",
  },
  leaving: { lamp: "", grey: "", read: "" },
};
