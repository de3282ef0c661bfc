import type { Forms } from "../../define.ts";

const RUN = "Welcher Lauf, etwa R7; deiner, wenn du nur einen hast";
const SURE = "Ich weiß, was ich tue";

export const forms: Forms = {
  "run start": {
    summary: "Einen Lauf nach deinem Plan beginnen",
    options: {
      plan: "Welcher Plan, etwa P12; ohne Angabe dein neuester",
      tank: "Eine andere Dose, die gleich groß ist, etwa T4",
      wait: "Auf die Dose warten, obwohl eine andere frei ist, mit Signal",
    },
  },
  "run next": {
    summary: "Sagen, dass das nächste Bad drin ist (oder der Schritt getan)",
    options: {
      run: RUN,
      step: "Setzen die Knöpfe, damit ein alter erkannt wird",
      sure: SURE,
    },
  },
  "run status": {
    summary: "Wo dein Film gerade ist und was als Nächstes kommt",
    options: { run: RUN },
  },
  "run correct": {
    summary: "Berichtigen, wann du eingegossen hast, oder eine neue Temperatur angeben",
    options: {
      run: RUN,
      ago: "Vor wie langer Zeit du wirklich eingegossen hast: 20, 1:10",
      temp: "Temperatur in der Dose jetzt: 21,5",
    },
  },
  "run seen": {
    summary: "Sagen, dass das Bild zu erscheinen beginnt: Der Faktor bestimmt dann die Zeit",
    options: { run: RUN },
  },
  "run trial": {
    summary: "Einen ganzen Lauf mit 60-facher Geschwindigkeit probieren: ohne Film und Bad, nichts bleibt",
    options: {},
  },
  "run stop": {
    summary: "Einen Lauf endgültig abbrechen; im Filmbuch bleibt, was getan wurde",
    options: { run: RUN, reason: "Warum, für das Filmbuch", sure: SURE },
  },
};
