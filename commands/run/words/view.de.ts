import { saySeconds } from "../../speech/wording.ts";
import type { ViewWords } from "./view.en.ts";

export const de: ViewWords = {
  finished: "Fertig. Der Film steht im Filmbuch.",
  stopped: "Abgebrochen.",
  wait: "Warten.",
  keepMoving: "Ständig bewegen.",
  letStand: "Ruhen lassen.",
  agitateFor: (seconds) => `${saySeconds(seconds)} bewegen`,
  getReady: (next) => (next === null ? "Vorbereiten" : `${next} vorbereiten`),
  pourOut: "Ausgießen",
  done: "Fertig",
  stopThis: "Lauf abbrechen",
  tray: {
    finished: "Fertig.",
    keepMoving: "Schale ständig schaukeln.",
    letStand: "Ruhen lassen.",
    agitateFor: (seconds) => `Schale ${saySeconds(seconds)} schaukeln`,
    pourOut: "Herausheben",
  },
};
