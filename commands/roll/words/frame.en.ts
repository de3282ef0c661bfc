import type { FrameMark } from "../../../store/shapes/roll.ts";

export const en = {
  marks: {
    best: "best",
    print: "to print",
    unsharp: "not sharp",
    lost: "lost",
  } satisfies Record<FrameMark, string> as Record<FrameMark, string>,
  frames: (marks: string) => `Frames: ${marks}.`,
};
export type FrameWords = typeof en;
