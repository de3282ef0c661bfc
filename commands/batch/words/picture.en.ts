import { countOf } from "../../speech/wording.ts";
/* Words in the picture of the bottles: short, since they stand in columns. */

export const en = {
  bottle: "Bottle",
  leftAndAge: "Left, and age",
  clearing: "Clearing time over rolls",
  age: (days: number) => `${countOf(days, "day")} old`,
  keeps: (days: number) => `keeps ${days} more`,
  outOfDate: (days: number) => `out of date for ${days}`,
  partFull: "part-full",
  notTested: "not tested",
  exhaustedAt: (seconds: string) => `exhausted at ${seconds}`,
  rolls: (rolls: string) => `${rolls} rolls; a dot is a test`,
};
export type PictureWords = typeof en;
