import { z } from "zod";
import { whoMay } from "../../who.ts";
import { type Context, defineCommand, UserError } from "../../define.ts";
import { findCause } from "./causes.ts";
import { bathBefore } from "../bath-before.ts";
import { completeRoll, findRoll, ownRoll } from "../options.ts";
import { findingsOf, type Surroundings } from "./evidence.ts";
import * as words from "./reply.ts";
import { keptFault } from "../look-words.ts";
import { EDGES, LOOK_GROUP_NAMES, LOOKS, MARGINS, EXTENTS, questionFor } from "../looks.ts";
import type { Roll } from "../../../store/shapes/roll.ts";
import { weighCauses } from "./weigh.ts";

export const rollFault = defineCommand({
  name: "roll fault",
  summary: "From what you see on the negative to its cause, weighed by the roll's own record",
  options: () => ({
    roll: z.string().min(1).max(12).optional().describe("Which roll, like L12; your newest if left out"),
    kind: z.enum(LOOK_GROUP_NAMES).optional().describe("Roughly what you see"),
    look: z
      .enum([...LOOKS, "none"])
      .optional()
      .describe("What you see"),
    edge: z.enum(EDGES).optional().describe("The maker's names and numbers on the border"),
    margin: z.enum(MARGINS).optional().describe("The border outside and between the frames"),
    place: z.enum(EXTENTS).optional().describe("Where you see it"),
    sure: z.enum(["yes", "no"]).default("yes").describe("no: don't ask further"),
    cause: z.string().trim().min(1).max(40).optional().describe("Which cause it was; or unknown"),
  }),
  who: whoMay("roll fault"),
  visibility: "private",
  rest: "roll",
  complete: { roll: completeRoll },
  handle({ roll: text, kind, look, edge, margin, place, sure, cause }, context) {
    if (look === "none") {
      const roll = ownRoll(context, text);
      context.stores.rolls.blame(roll.id, "", null);
      return words.clearedReply(roll);
    }
    if (look === undefined)
      return kind === undefined
        ? words.askKind(findRoll(context, text))
        : words.askLook(findRoll(context, text), kind);
    if (cause !== undefined) {
      const roll = ownRoll(context, text);
      const code = cause === "unknown" ? null : cause;
      if (code !== null && !findCause(code))
        throw new UserError("ERR_UNKNOWN_CAUSE", words.unknownCause(cause));
      context.stores.rolls.blame(roll.id, keptFault(look), code);
      return words.blamedReply(roll, look, code);
    }
    const roll = findRoll(context, text);
    const answers = { look, edge: edge ?? null, margin: margin ?? null, place: place ?? null };
    const question = sure === "yes" ? questionFor(answers) : undefined;
    if (question) return words.askQuestion(roll, answers, question);
    return words.causesReply(roll, answers, weighCauses(answers, findingsOf(roll, around(context, roll))));
  },
});

function around(context: Context, roll: Roll): Surroundings {
  const { stores, class: school } = context;
  const tank = roll.tank === null ? undefined : stores.tanks.find(school.id, roll.tank);
  return {
    developer: bathBefore(context, roll, "developer"),
    fixer: bathBefore(context, roll, "fixer"),
    tankCondition: tank?.condition ?? null,
  };
}
