import { z } from "zod";
import { defineCommand } from "../../define.ts";
import { FIRST_STEPS } from "../../../store/shapes/school.ts";
import { whoMay } from "../../who.ts";
import { firstDayFacts } from "../first-day.ts";
import { FIRST_DAY_COMMAND, sayFirstDay } from "../first-day-words.ts";
import * as words from "./reply.ts";

export const classFirstday = defineCommand({
  name: FIRST_DAY_COMMAND,
  summary: "What is to be done before the first film, ticked off as it is done",
  options: () => ({
    later: z
      .enum([...FIRST_STEPS, "none"])
      .optional()
      .describe("Puts one step off, or none any more"),
  }),
  who: whoMay(FIRST_DAY_COMMAND),
  visibility: "private",
  handle({ later }, { stores, class: { id, habits, demo } }) {
    if (later !== undefined) {
      const kept = later === "none" ? [] : [...new Set([...habits.later, later])];
      stores.classes.setHabits(id, { ...habits, later: kept });
    }
    const facts = firstDayFacts(stores, id);
    return facts ? words.firstDayReply(sayFirstDay(facts)) : words.pastReply(demo);
  },
});
