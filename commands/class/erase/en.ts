import { countOf } from "../../speech/wording.ts";
/* The class's name comes harmless, instants marked. */

export const en = {
  wrongName: "**That is not the class's name. Nothing is planned.**",
  ask: (days: number) =>
    `**This erases the class:** people, plans, runs, the log, bottles, messages, photos. It happens ${countOf(days, "day")} after you confirm; until then it can be taken back. Nothing brings it back afterwards but a backup.`,
  how: (className: string) => `To plan it, type \`/class erase name:${className}\`.`,
  takeLog: "Take the log along first",
  planned: (day: string, time: string, relative: string) =>
    `**Planned.** The class is erased on ${day} at ${time}, ${relative}. The class has been told.`,
  keep: "Keep the class after all",
  kept: "**The class stays.** The class has been told.",
  wasNotPlanned: "Nothing was planned: the class stays.",
  announcement: (day: string) =>
    `**This class and everything in it will be erased on ${day}.** Take your own things along first: \`/mine export\`.`,
  takenBack: "**The class stays after all:** nothing will be erased.",
};
export type EraseWords = typeof en;
