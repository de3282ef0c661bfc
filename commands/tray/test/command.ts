import { z } from "zod";
import { lampSchema } from "../../../store/shapes/lamp.ts";
import { defineCommand, UserError } from "../../define.ts";
import { textIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { lampPlan, USUAL_MINUTES } from "../lamp.ts";
import * as words from "./reply.ts";

const MOST_STEPS = 6;
const LONGEST_MINUTES = 60;

export const trayTest = defineCommand({
  name: "tray test",
  summary: "Test a safelight: coins on grey paper, called step by step",
  options: () => ({
    lamp: textIn(lampSchema.shape.name).default("1").describe("Which safelight: a name or number"),
    minutes: z.string().trim().min(1).max(40).optional().describe("Steps in minutes, like 1, 3, 7"),
  }),
  who: whoMay("tray test"),
  visibility: "private",
  handle({ lamp, minutes: text }, context) {
    const minutes = text === undefined ? USUAL_MINUTES : readMinutes(text);
    const plan = lampPlan(lamp, minutes);
    const { number } = context.stores.plans.add(context.class.id, context.person.id, plan, context.now);
    return words.testReply(number, plan);
  },
});

/** @throws UserError where they are no steps of a test. */
function readMinutes(text: string): number[] {
  const minutes = text
    .split(/[,; ]+/)
    .filter(Boolean)
    .map(Number);
  const isRead = minutes.every((each) => Number.isInteger(each) && each >= 1 && each <= LONGEST_MINUTES);
  if (!isRead || minutes.length === 0 || minutes.length > MOST_STEPS)
    throw new UserError("ERR_NO_LAMP_STEPS", words.noSteps(MOST_STEPS, LONGEST_MINUTES));
  return minutes;
}
