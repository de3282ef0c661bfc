import { saySeconds } from "../../speech/wording.ts";
import type { SetWords } from "./en.ts";

export const de: SetWords = {
  busy: (number) =>
    `In den Schalen der Reihe ${number} liegen Abzüge. Nimm die Reihe von der Liste, wenn die Schalen leer sind.`,
  noName: "Nenne den Papierentwickler dieser Reihe: `developer:`, wie auf der Packung.",
  tooMany: (most) => `Der Kurs hat schon ${most} Schalenreihen, mehr haben nicht Platz.`,
  removed: (number) => `Reihe ${number} ist von der Liste.`,
  notThere: (number) => `Eine Reihe ${number} gab es nicht.`,
  saved: (number, bath, rc, fibre, at) =>
    `**Schalen ${number}**: ${bath}, PE-Papier **${saySeconds(rc)}**, Barytpapier **${saySeconds(fibre)}** bei ${at}.`,
  places: ({ developPlaces, stopPlaces, fixPlaces, washPlaces, baths, stop, drainSeconds }) =>
    `Abzüge 20x25 cm auf einmal: Entwickler ${developPlaces}, ${stop === "acid" ? "Stoppbad" : "Zwischenwässerung"} ${stopPlaces}, ${baths === 2 ? "jedes der beiden Fixierbäder" : "Fixierbad"} ${fixPlaces}, Wässerung ${washPlaces}. Herausgehoben wird ${saySeconds(drainSeconds)} vor dem Ende, zum Abtropfen.`,
  per10: (factor) => `Die Zeit folgt der Temperatur mit einem Faktor von ${factor} je 10 °C.`,
  factor: (factor) => `Abzüge werden ${factor}-mal so lang entwickelt, wie das erste Erscheinen dauert.`,
  usual:
    "Das sind nur übliche Zeiten: Gib die des Herstellers an (`rc:`, `fibre:`), und such die kürzeste Zeit für volles Schwarz (`/tray black`).",
  next: "Als Nächstes die Bäder ansetzen, jedes mit seinem Etikett: `/batch mix kind:paper-developer`, `kind:paper-stop`, `kind:paper-fixer`.",
  makePlan: "Abzug planen",
};
