import { saySeconds } from "../../speech/wording.ts";

/** What a page shows: a few words each. */
export const en = {
  finished: "Done. The roll is in the log.",
  stopped: "Stopped.",
  wait: "Wait.",
  keepMoving: "Keep it moving.",
  letStand: "Let it stand.",
  agitateFor: (seconds: number) => `Agitate ${saySeconds(seconds)}`,
  getReady: (next: string | null) => (next === null ? "Get ready" : `Get ready for ${next}`),
  pourOut: "Pour out",
  done: "Done",
  stopThis: "Stop this run",
  /** Of prints in trays. */
  tray: {
    finished: "Done.",
    keepMoving: "Keep rocking the tray.",
    letStand: "Let it lie.",
    agitateFor: (seconds: number) => `Rock the tray ${saySeconds(seconds)}`,
    pourOut: "Lift it out",
  },
};
export type ViewWords = typeof en;
