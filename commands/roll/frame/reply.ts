import { FRAME_MARKS, type FrameMark, type Roll } from "../../../store/shapes/roll.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { makeNumber, plain, quoted } from "../../speech/wording.ts";
import { formatFrames } from "../frame-list.ts";
import { marksOf, markWord } from "../frame-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });
const MOST_SHOWN = 20;

export const whichFrames = (): string => words().whichFrames;
export const noFrames = (typed: string): string => words().noFrames(quoted(plain(typed)));
export const frameRange = (roll: Roll, frames: number): string =>
  words().frameRange(makeNumber("roll", roll.number), frames);

export function askMark(roll: Roll, frames: readonly number[]): Reply {
  const label = makeNumber("roll", roll.number);
  const frame = formatFrames(frames);
  return {
    text: words().ask(label, frame),
    fields: { roll: roll.number, frames: [...frames] },
    actions: FRAME_MARKS.map((mark) => ({
      label: markWord(mark),
      line: makeLine("roll frame", { roll: label, frame, mark }),
    })),
  };
}

export function markedReply(roll: Roll, frames: readonly number[], mark: FrameMark | "none"): Reply {
  const label = makeNumber("roll", roll.number);
  const list = formatFrames(frames);
  const all = marksOf(roll.body.frameMarks);
  return {
    text: [
      mark === "none" ? words().unmarked(label, list) : words().marked(label, list, markWord(mark)),
      all === "" ? "" : words().all(label, all),
    ]
      .filter(Boolean)
      .join("\n"),
    fields: { roll: roll.number, frameMarks: roll.body.frameMarks.map((each) => ({ ...each })) },
    actions: [{ label: words().contact, line: makeLine("contact sheet", { roll: label }) }],
  };
}

/** Each roll with its marked frames; `mark` null: whatever the mark. */
export function foundReply(rolls: readonly Roll[], mark: FrameMark | null): Reply {
  const found = rolls.flatMap((roll) => {
    const marks = roll.body.frameMarks.filter((each) => mark === null || each.mark === mark);
    return marks.length === 0 ? [] : [{ roll, marks }];
  });
  if (found.length === 0)
    return { text: words().none(mark === null ? null : markWord(mark)), fields: { rolls: [] } };
  const frames = found.reduce((sum, { marks }) => sum + new Set(marks.map(({ frame }) => frame)).size, 0);
  const shown = found.slice(0, MOST_SHOWN);
  return {
    text: [
      words().found(frames, found.length, mark === null ? null : markWord(mark)),
      ...shown.map(
        ({ roll, marks }) =>
          `- **${makeNumber("roll", roll.number)}** ${plain(roll.personName)}, ${plain(roll.film)}: ${marksOf(marks)}`,
      ),
      found.length > shown.length ? words().more(found.length - shown.length) : "",
    ]
      .filter(Boolean)
      .join("\n"),
    fields: {
      rolls: found.map(({ roll, marks }) => ({
        roll: roll.number,
        person: roll.personName,
        frameMarks: marks.map((each) => ({ ...each })),
      })),
    },
    actions: shown.slice(0, 5).map(({ roll }) => ({
      label: makeNumber("roll", roll.number),
      line: makeLine("contact sheet", { roll: makeNumber("roll", roll.number) }),
    })),
  };
}
