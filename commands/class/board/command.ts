import { z } from "zod";
import { type Context, defineCommand, type Reply, UserError } from "../../define.ts";
import { mayActAs } from "../../../store/shapes/person.ts";
import { DEFAULT_LANGUAGE } from "../../../store/shapes/language.ts";
import { speaking } from "../../speech/language.ts";
import { boardOf, type BoardRow } from "../board.ts";
import * as words from "../board-words.ts";
import { whoMay } from "../../who.ts";

export const classBoard = defineCommand({
  name: "class board",
  summary: "Every tank now: who, which step, until when, late or not",
  options: () => ({
    channel: z
      .enum(["here", "off"])
      .optional()
      .describe("Keep the board in this channel, in one message (teacher)"),
  }),
  who: whoMay("class board"),
  visibility: "private",
  handle({ channel }, context) {
    const { stores, class: school, now } = context;
    if (channel !== undefined) return place(context, channel);
    const rows = (): BoardRow[] =>
      boardOf(
        stores.runs.open(school.id),
        stores.members.list(school.id),
        now,
        stores.figures.unreached(school.id),
      );
    return words.boardReply(rows(), speaking(DEFAULT_LANGUAGE, rows));
  },
});

function place({ stores, class: school, role, here }: Context, channel: "here" | "off"): Reply {
  if (!mayActAs(role, "teacher")) throw new UserError("ERR_ROLE", words.boardIsTheTeachers());
  if (school.key.startsWith("room:")) throw new UserError("ERR_BOARD_HAS_A_PAGE", words.boardHasAPage());
  if (channel === "off") {
    stores.boards.remove(school.id);
    return { text: words.takenDown(), fields: { placed: false } };
  }
  const missing = here?.missingPermissions ?? [];
  if (here?.channelRef == null || missing.length > 0)
    throw new UserError("ERR_NO_CHANNEL", words.permissionWords(missing) || words.noChannel());
  stores.boards.place(school.id, here.channelRef);
  return { text: words.placed(), fields: { placed: true } };
}
