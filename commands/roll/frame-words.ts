import { FRAME_MARKS, type FrameMark, type MarkedFrame } from "../../store/shapes/roll.ts";
import { inEach } from "../speech/language.ts";
import { formatFrames } from "./frame-list.ts";
import { de } from "./words/frame.de.ts";
import { en } from "./words/frame.en.ts";

/* The words for marks on frames. */

const words = inEach({ en, de });

export const markWord = (mark: FrameMark): string => words().marks[mark];

/** `best 7, 12; to print 3`. */
export function marksOf(marks: readonly MarkedFrame[]): string {
  return FRAME_MARKS.flatMap((mark) => {
    const frames = marks.filter((each) => each.mark === mark).map(({ frame }) => frame);
    return frames.length === 0 ? [] : [`${markWord(mark)} ${formatFrames(frames)}`];
  }).join("; ");
}

export const framesLine = (marks: readonly MarkedFrame[]): string => words().frames(marksOf(marks));
