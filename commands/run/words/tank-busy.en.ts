import { countOf, formatMl } from "../../speech/wording.ts";

export const en = {
  stopFirst: "Take another tank, or stop that run first.",
  waitsAlready: (run: string) => `**${run}** waits for it already: I call you when it is free.`,
  /** `free`: `4-6`. */
  takeAnother: (free: string, count: number) =>
    `**Take ${count === 1 ? "tank" : "one of tanks"} ${free}**: of the same size, and free.`,
  isItEmpty: "Is it really empty and yours? Else wait: I call you when it is free.",
  waitsNoMore: (runs: string, count: number) =>
    `${runs} ${count === 1 ? "waits" : "wait"} for a tank no longer, since you start here.`,
  tankKey: (tank: number) => `Take tank ${tank}`,
  waitKey: (tank: number) => `Wait for tank ${tank}`,
  isMine: "It is empty: my film is in",
  unknown: (typed: string) => `There is no tank ${typed}. See them with \`/tank list\`.`,
  unlike: (tank: number, reels: number, volumeMl: number) =>
    `Tank ${tank} is of another size (${countOf(reels, "reel")}, ${formatMl(volumeMl)}): make a plan for it with \`/plan\`.`,
};
export type TankBusyWords = typeof en;
