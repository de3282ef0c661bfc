import type { Forms } from "../../define.ts";

const enlarger = "Welcher Vergrößerer; ohne Angabe der einzige des Kurses";

export const forms: Forms = {
  "contact sheet": {
    summary: "Ein Kontaktbogen: wie die Streifen auf dem Papier liegen und wie lange belichtet wird",
    options: {
      roll: "Welcher Film, etwa L12, oder mehrere: L12, L13; ohne Angabe dein neuester",
      sleeves: "Wo die Streifen beim Belichten liegen",
      paper: "Schachtel Papier, nach ihrer Nummer",
      size: "Format des Papiers, etwa 18x24 oder 24x30, wenn nicht das der Schachtel",
      enlarger,
      height: "Vom Negativhalter zum Papier, wenn es anders ist: 55 cm",
      aperture: "Die Blende, wenn sie anders ist: 11",
      grade: "Filter oder Gradation, wenn sie anders ist: 2",
    },
  },
  "contact exposure": {
    summary: "Die feste Belichtung eines Vergrößerers für Kontaktbögen: setzen, berichtigen, zeigen",
    options: {
      enlarger,
      seconds: "Die kürzeste Zeit, bei der klarer Filmrand schwarz wird, etwa 12,5",
      lighter: "Die längste Zeit, bei der der Rand noch heller als schwarz war, etwa 11",
      height: "Vom Negativhalter zum Papier, etwa 50 cm",
      aperture: "Die Blende, etwa 8",
      grade: "Filter oder Gradation, etwa 2",
      paper: "Schachtel Papier, auf dem probiert wurde",
    },
  },
};
