import { saySeconds } from "../../speech/wording.ts";
import type { ViewWords } from "./view.en.ts";

export const de: ViewWords = {
  finished: "Fertig. Die Negative stehen im Buch.",
  stopped: "Abgebrochen.",
  pourOutNow: (leaving) => `Jetzt ausgießen. ${leaving}`,
  wait: "Warten.",
  keepMoving: "Ständig bewegen.",
  agitate: "Bewegen.",
  letStand: "Ruhen lassen.",
  agitateFor: (seconds) => `${saySeconds(seconds)} bewegen`,
  getReady: (next) => (next === null ? "Bereitstellen" : `Bereitstellen: ${next}`),
  pourOut: "Ausgießen",
  done: "Fertig",
  stopThis: "Lauf abbrechen",
};
