import { defineCommand } from "../../define.ts";
import { whoMay } from "../../who.ts";
import { completePaper, paperFor, paperOption, readBy } from "../options.ts";
import { parseRange } from "../stops.ts";
import { gradedReply } from "./reply.ts";

export const printGrade = defineCommand({
  name: "print grade",
  summary: "Which filter or grade prints a negative of this range, by each source",
  options: () => ({
    range: readBy(parseRange).describe(
      "Density of the lightest tone less that of the darkest: 1.05; or 3 1/2 stops",
    ),
    paper: paperOption.optional().describe("Which box of paper, like 2 or X2"),
  }),
  who: whoMay("print grade"),
  visibility: "private",
  rest: "range",
  complete: { paper: completePaper },
  handle: ({ range, paper }, context) => gradedReply(range, paperFor(context, paper)),
});
