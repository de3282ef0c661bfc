import { countOf, formatMl, saySeconds } from "../../speech/wording.ts";
import type { Tank } from "../../../store/shapes/tank.ts";

const size = ({ reels, volumeMl, format }: Tank): string =>
  `${countOf(reels, "reel")}, ${formatMl(volumeMl)}, ${format === "any" ? "any format" : format}`;

/** `numbers`: of tanks, as they are written, `1-4, 7`. `use`: `R7, Mina: Developer`. */
export const en = {
  somebody: "somebody",
  tank: (tank: Tank) => `**Tank ${tank.number}**: ${size(tank)}`,
  cools: (seconds: number) => `cools 63 % of the way in ${saySeconds(seconds)}`,
  fault: (condition: string) => `fault: ${condition}`,
  free: "free",
  inUse: (use: string) => `in use by ${use}`,
  none: "The class has no tank yet. The teacher adds them: `/tank add numbers:1-12 reels:2 volume:500 ml`.",
  freeOf: (free: number, count: number) =>
    `**${free} of ${count}** tanks ${free === 1 ? "is" : "are"} free and in order.`,
  added: (count: number, numbers: string, each: Tank | undefined) =>
    `**${countOf(count, "tank")}**: ${numbers} (${each ? size(each) : ""}${count === 1 ? "" : " each"}).`,
  setAnew: (numbers: string) => `Of these ${numbers} were there already: set anew.`,
  removed: (number: number) => `Tank ${number} is gone from the list. The log keeps what went through it.`,
  reported: (number: number, condition: string) =>
    `Noted on **tank ${number}**: ${condition}. Every plan for it says so until an aide or the teacher clears it. Put the tank aside.`,
  nothingNoted: (number: number) => `Nothing was noted on tank ${number}. It is in order.`,
  cleared: (number: number, was: string) => `Tank ${number} is in order again. It was: ${was}.`,
  all: "All tanks",

  noNumbers: (typed: string) => `I can't read ${typed} as tank numbers. Write them like 1-12 or 1, 2, 5.`,
  numberRange: (typed: string, most: number) =>
    `${typed} is no range of tank numbers. They go from 1 to ${most}, the smaller one first.`,
  tooMany: (count: number, most: number) => `That would be ${count} tanks. Add at most ${most} at a time.`,
  unknownAndNone: (number: number) =>
    `There is no tank ${number}: the class has none yet. The teacher adds them with \`/tank add\`.`,
  unknown: (number: number, known: string) => `There is no tank ${number}. The class has ${known}.`,
  busy: (number: number, use: string) =>
    `Tank ${number} is in use by ${use}. Take it off the list when it is free.`,
};
export type ReplyWords = typeof en;
