import { z } from "zod";
import { STEP_OF_KIND } from "../../../store/shapes/batch.ts";
import { EVERY_PRINT, type Print } from "../../../store/shapes/print.ts";
import { stateOf } from "../../batch/state.ts";
import { type Context, defineCommand, UserError } from "../../define.ts";
import { whoMay } from "../../who.ts";
import { completePrint, findPrint, ownPrint } from "../find-print.ts";
import { keptFault } from "../look-words.ts";
import { PRINT_LOOKS, type PrintLook } from "../looks.ts";
import { findCause } from "./causes.ts";
import { findingsOf, type Surroundings } from "./evidence.ts";
import * as words from "./reply.ts";
import { weighCauses } from "./weigh.ts";

/** What came out alike may have its cause in what everybody uses. */
const ALIKE_MS = 7 * 86_400_000;
const MOST_LOOKED_AT = 200;
const GOOD_RATING = 4;

export const printFault = defineCommand({
  name: "print fault",
  summary: "From what you see on the print to its cause, weighed by the print's own record",
  options: () => ({
    print: z.string().min(1).max(12).optional().describe("Which print, like V7; your newest if left out"),
    look: z
      .enum([...PRINT_LOOKS, "none"])
      .optional()
      .describe("What you see"),
    cause: z.string().trim().min(1).max(40).optional().describe("Which cause it was; or unknown"),
  }),
  who: whoMay("print fault"),
  visibility: "private",
  rest: "print",
  complete: { print: completePrint },
  handle({ print: text, look, cause }, context) {
    const { prints } = context.stores;
    if (look === undefined) return words.askLook(findPrint(context, text));
    if (look === "none") {
      const print = ownPrint(context, text);
      prints.blame(print.id, "", null);
      return words.clearedReply(print);
    }
    if (cause !== undefined) {
      const print = ownPrint(context, text);
      const code = cause === "unknown" ? null : cause;
      if (code !== null && !findCause(code))
        throw new UserError("ERR_UNKNOWN_CAUSE", words.unknownCause(cause));
      prints.blame(print.id, keptFault(look), code);
      return words.blamedReply(print, look, code);
    }
    const print = findPrint(context, text);
    return words.causesReply(print, look, weighCauses(look, findingsOf(print, around(context, print, look))));
  },
});

function around(context: Context, print: Print, look: PrintLook): Surroundings {
  const { stores, class: school } = context;
  const sameFrame = { ...EVERY_PRINT, roll: print.roll, frame: print.frame };
  const siblings =
    print.roll === null || print.frame === ""
      ? []
      : stores.prints.search(school.id, sameFrame, MOST_LOOKED_AT, 0).prints;
  const better = siblings
    .filter(
      ({ id, rating }) => id !== print.id && (rating ?? 0) >= Math.max(GOOD_RATING, (print.rating ?? 0) + 1),
    )
    .sort((a, b) => (b.rating ?? 0) - (a.rating ?? 0))[0];
  const days = { fromMs: print.madeAt - ALIKE_MS, untilMs: print.madeAt + ALIKE_MS };
  const alike = stores.prints
    .search(school.id, { ...EVERY_PRINT, isFaulty: true, ...days }, MOST_LOOKED_AT, 0)
    .prints.filter(({ personId, fault }) => personId !== print.personId && fault === keptFault(look));
  return { developer: developerOf(context, print), better: better ?? null, othersAlike: alike.length };
}

/** How the bottle stood, where the developer was named by its label. */
function developerOf({ stores, class: { id } }: Context, { body, madeAt }: Print): Surroundings["developer"] {
  const number = Number(/\bB(\d{1,6})\b/i.exec(body.developer ?? "")?.[1]);
  const batch = Number.isInteger(number) ? stores.batches.find(id, number) : undefined;
  if (!batch || STEP_OF_KIND[batch.kind] !== "develop") return null;
  const lines = stores.batches.lines(batch.id).filter((line) => line.atMs <= madeAt);
  return { label: `B${number}`, standing: stateOf(batch, lines, madeAt).standing };
}
