import type { CompareWords } from "./en.ts";

export const de: CompareWords = {
  rows: {
    title: "Bild",
    from: "Negativ",
    exposure: "Belichtung",
    grade: "Gradation",
    aperture: "Blende",
    head: "Kopf",
    size: "Format",
    locals: "nachbelichtet und abgewedelt",
    paper: "Papier",
    enlarger: "Vergrößerer",
    developer: "Entwickler",
    developed: "entwickelt",
    temperature: "Temperatur",
    rating: "Wertung",
    fault: "Fehler",
    note: "Notiz",
  },
  name: (print, person, on) => `**${print}** (${person}, ${on})`,
  head: (one, other) => `${one} und ${other}`,
  row: (name, one, other) => `${name}: ${one} / ${other}`,
  notSaid: "nicht angegeben",
  alike: "Nichts, was eingetragen ist, unterscheidet sie.",
  same: (rows) => `Gleich: ${rows}.`,
};
