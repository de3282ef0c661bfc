import { z } from "zod";
import { FRAME_MARKS, type MarkedFrame, type Roll } from "../../../store/shapes/roll.ts";
import { type Context, defineCommand, type Reply, UserError } from "../../define.ts";
import { whoMay } from "../../who.ts";
import { parseFrames } from "../frame-list.ts";
import { completeRoll, findRoll, ownRoll } from "../options.ts";
import * as words from "./reply.ts";

/** As many marked rolls are looked through. */
const MOST_ROLLS = 500;

export const rollFrame = defineCommand({
  name: "roll frame",
  summary: "Mark frames of a roll, best, to print, not sharp, lost, and find marked ones again",
  options: () => ({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; to find: any, if left out"),
    frame: z
      .string()
      .trim()
      .min(1)
      .max(60)
      .optional()
      .describe("Which frames, like 7 or 3, 7-9; to find: none"),
    mark: z
      .enum([...FRAME_MARKS, "none"])
      .optional()
      .describe("Which mark; to find: those that have it"),
  }),
  who: whoMay("roll frame"),
  visibility: "private",
  complete: { roll: completeRoll },
  handle({ roll: text, frame, mark }, context) {
    if (frame !== undefined) return markFrames(context, text, frame, mark);
    if (mark === "none") throw new UserError("ERR_NO_FRAMES", words.whichFrames());
    const rolls =
      text === undefined
        ? context.stores.rolls.marked(context.class.id, MOST_ROLLS)
        : [findRoll(context, text)];
    return words.foundReply(rolls, mark ?? null);
  },
});

function markFrames(
  context: Context,
  rollText: string | undefined,
  typed: string,
  mark: (typeof FRAME_MARKS)[number] | "none" | undefined,
): Reply {
  const roll = mark === undefined ? findRoll(context, rollText) : ownRoll(context, rollText);
  const frames = parseFrames(typed, roll.body.frames);
  if (!frames.ok)
    throw new UserError(
      frames.fault,
      frames.fault === "ERR_NO_FRAMES" ? words.noFrames(typed) : words.frameRange(roll, roll.body.frames),
    );
  if (mark === undefined) return words.askMark(roll, frames.value);
  const marks = marksAfter(roll, frames.value, mark);
  context.stores.rolls.markFrames(roll.id, marks);
  return words.markedReply({ ...roll, body: { ...roll.body, frameMarks: marks } }, frames.value, mark);
}

/** A lost frame has no other mark; `none` takes all off. */
function marksAfter(
  { body }: Roll,
  frames: readonly number[],
  mark: (typeof FRAME_MARKS)[number] | "none",
): MarkedFrame[] {
  const isMeant = ({ frame }: MarkedFrame): boolean => frames.includes(frame);
  const stays = body.frameMarks.filter(
    (each) =>
      !isMeant(each) || (mark !== "none" && mark !== "lost" && each.mark !== mark && each.mark !== "lost"),
  );
  const added = mark === "none" ? [] : frames.map((frame) => ({ frame, mark }));
  return [...stays, ...added].sort((a, b) => a.frame - b.frame || a.mark.localeCompare(b.mark));
}
