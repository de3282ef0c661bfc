import { z } from "zod";
import { defineCommand, type InputOf, UserError } from "../../define.ts";
import { limitsOf } from "../../speech/shaped.ts";
import { durationOption } from "../../speech/quantity.ts";
import type { Result } from "../../result.ts";
import { nextSitting } from "../../plan/bell.ts";
import * as words from "./reply.ts";
import { habitsSchema, type Habits, type PeriodFault } from "../../../store/shapes/school.ts";
import { clockFaultWords } from "../period-words.ts";
import { parseClock, parseDays } from "../periods.ts";
import { whoMay } from "../../who.ts";

const MOST_LEAD_MINUTES = limitsOf(habitsSchema.shape.digestLeadMinutes).most;

const options = () => ({
  before: durationOption
    .optional()
    .describe("How long before a period the class is told what is ready: 60 min"),
  day: z.string().min(1).max(20).optional().describe("Day of the week's figures: monday"),
  at: z.string().min(1).max(20).optional().describe("Their time of day: 8:00"),
  quietfrom: z.string().min(1).max(20).optional().describe("Warnings that can wait are not said from: 22:00"),
  quietto: z.string().min(1).max(20).optional().describe("... to: 7:00. Alike: never quiet"),
});

export const classDigest = defineCommand({
  name: "class digest",
  summary: "When the class is told what is ready, what is tired and how the week was",
  options,
  who: whoMay("class digest"),
  visibility: "private",
  handle(input, { stores, class: school, now }) {
    const changes = changesOf(input);
    const habits = { ...school.habits, ...changes };
    if (Object.keys(changes).length > 0) stores.classes.setHabits(school.id, habits);
    const next = nextSitting(habits.periods, school.zone, now);
    return words.digestReply(habits, school.zone, next, Object.keys(changes).length > 0);
  },
});

function changesOf(input: InputOf<typeof options>): Partial<Habits> {
  const minutes = input.before === undefined ? undefined : Math.round(input.before / 60);
  if (minutes !== undefined && minutes > MOST_LEAD_MINUTES)
    throw new UserError("ERR_LEAD_RANGE", words.leadRange(MOST_LEAD_MINUTES));
  const changes = {
    digestLeadMinutes: minutes,
    weekDigestWeekday: input.day === undefined ? undefined : unwrap(parseDays(input.day))[0],
    weekDigestMinute: minuteOf(input.at),
    silenceFrom: minuteOf(input.quietfrom),
    silenceTo: minuteOf(input.quietto),
  };
  return Object.fromEntries(Object.entries(changes).filter(([, value]) => value !== undefined));
}

/** 24:00 is the day's first minute here: these come every day. */
function minuteOf(typed: string | undefined): number | undefined {
  return typed === undefined ? undefined : unwrap(parseClock(typed)) % (24 * 60);
}

function unwrap<T>(result: Result<T, PeriodFault>): T {
  if (result.ok) return result.value;
  throw new UserError(result.fault.code, clockFaultWords(result.fault));
}
