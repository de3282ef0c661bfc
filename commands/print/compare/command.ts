import { z } from "zod";
import { defineCommand } from "../../define.ts";
import { whoMay } from "../../who.ts";
import { completePrint, findPrint } from "../find-print.ts";
import { comparedReply } from "./reply.ts";

export const printCompare = defineCommand({
  name: "print compare",
  summary: "Two prints side by side: what differs between them",
  options: () => ({
    print: z.string().min(1).max(12).optional().describe("The one, like V7; your newest if left out"),
    with: z.string().min(1).max(12).describe("The other, like V3"),
  }),
  who: whoMay("print compare"),
  visibility: "private",
  rest: "with",
  complete: { print: completePrint, with: completePrint },
  handle: ({ print, with: other }, context) =>
    comparedReply(findPrint(context, other), findPrint(context, print)),
});
