import { z } from "zod";
import { defineCommand } from "../../define.ts";
import { whoMay } from "../../who.ts";
import { completePrint, findPrint, photoOfPrint } from "../find-print.ts";
import { shownReply } from "./reply.ts";

export const printShow = defineCommand({
  name: "print show",
  summary: "One print: its whole recipe, and what was thought of it",
  options: () => ({
    print: z.string().min(1).max(12).optional().describe("Which print, like V7; your newest if left out"),
  }),
  who: whoMay("print show"),
  visibility: "private",
  rest: "print",
  complete: { print: completePrint },
  handle({ print: text }, context) {
    const print = findPrint(context, text);
    return { ...shownReply(print), photo: photoOfPrint(context, print) };
  },
});
