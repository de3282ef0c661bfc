import type { FrameWords } from "./frame.en.ts";

export const de: FrameWords = {
  marks: { best: "bestes", print: "abziehen", unsharp: "unscharf", lost: "verloren" },
  frames: (marks) => `Bilder: ${marks}.`,
};
