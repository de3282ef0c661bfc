import { countOf } from "../../speech/wording.ts";

export const en = {
  whichFrames: "Which frames lose their marks? Name them: `frame:7`.",
  noFrames: (typed: string) => `${typed} names no frames. Write them like 7 or 3, 7-9.`,
  frameRange: (roll: string, frames: number) => `${roll} has the frames 1 to ${frames}.`,
  ask: (roll: string, frames: string) => `**${roll}, frame ${frames}**: what is it?`,
  marked: (roll: string, frames: string, mark: string) => `**${roll}, frame ${frames}**: ${mark}.`,
  unmarked: (roll: string, frames: string) => `**${roll}, frame ${frames}**: marks taken off.`,
  all: (roll: string, marks: string) => `${roll} has now: ${marks}.`,
  found: (frames: number, rolls: number, mark: string | null) =>
    `**${countOf(frames, "frame")}${mark === null ? " marked" : ` marked ${mark}`}**, on ${countOf(rolls, "roll")}:`,
  none: (mark: string | null) =>
    `No frame is marked${mark === null ? "" : ` ${mark}`} yet. Mark one with \`/roll frame roll:L12 frame:7 mark:best\`.`,
  more: (rolls: number) => `…and ${countOf(rolls, "roll")} more.`,
  contact: "Contact sheet",
};
export type RollFrameWords = typeof en;
